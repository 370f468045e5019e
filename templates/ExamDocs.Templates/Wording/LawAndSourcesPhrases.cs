using ExamDocs.Core.Regimes;

namespace ExamDocs.Templates.Wording;

/// <summary>Words of the block that says what law a report was made under, and how surely it is known.</summary>
public abstract class LawAndSourcesPhrases
{
    public abstract string Heading { get; }
    public abstract string Law { get; }
    public abstract string Interval { get; }
    public abstract string Keep { get; }
    public abstract string FromMemory { get; }
    public abstract string NotConfirmed { get; }
    public abstract string AddedByUser { get; }
    public abstract string KeepNotKnown { get; }
    public abstract string Added(string file);

    public abstract string AddedShort(string file);

    public abstract string AddedCategory(string name, string file);

    public abstract string Confidence(Confidence confidence);

    public abstract string Sourced(string text, string source, Confidence confidence);

    public abstract string IntervalLine(ExaminationInterval interval);

    /// <summary>What is left after "Keep this report".</summary>
    public abstract string KeepLine(KeepUntil keep);

    public abstract string KeepNotFound(KeepUntil keep);

    public abstract string KeepThis(IReadOnlyList<string> lines);

    public abstract string ParticularsFromMemory(IEnumerable<string> sources);
}
