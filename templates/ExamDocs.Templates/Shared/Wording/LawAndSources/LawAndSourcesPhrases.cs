using ExamDocs.Core.Regimes;
using NodaTime;

namespace ExamDocs.Templates.Shared.Wording.LawAndSources;

/// <summary>Words of the block that says what law a report was made under, and how surely it is known.</summary>
public abstract class LawAndSourcesPhrases
{
    public static InEachLanguage<LawAndSourcesPhrases> Languages { get; } = new(new English(), new German(), new French());

    /// <summary>In the language of the document that is being made.</summary>
    public static LawAndSourcesPhrases Current => Languages.Current;

    public abstract string Heading { get; }
    public abstract string Law { get; }
    public abstract string Interval { get; }
    public abstract string Keep { get; }
    public abstract string FromMemory { get; }
    public abstract string NotConfirmed { get; }
    public abstract string AddedByUser { get; }
    public abstract string KeepNotKnown { get; }

    /// <summary>Heading of the line that says which register of earlier records was asked.</summary>
    public abstract string EarlierRecords { get; }

    /// <param name="register">Identity of the register.</param>
    /// <param name="since">The day it was made; null where that is not known.</param>
    public abstract string Asked(string register, LocalDate? since);

    public abstract string Added(string file);

    /// <summary>Of a regime that the user added, in a few words; begins with a small letter.</summary>
    public abstract string UsersOwn { get; }

    public abstract string AddedShort(string file);

    public abstract string AddedCategory(string name, string file);

    public abstract string Confidence(Confidence confidence);

    public abstract string Sourced(string text, string source, Confidence confidence);

    /// <param name="months">Length of the interval.</param>
    /// <param name="lessThan">The corresponding date itself is outside it.</param>
    /// <param name="what">What it is for.</param>
    /// <param name="byBasis">It comes from the basis recorded, which has no source to be named.</param>
    /// <param name="source">The provision.</param>
    /// <param name="confidence">How surely it is known.</param>
    public abstract string IntervalLine(int months, bool lessThan, string what, bool byBasis, string source, Confidence confidence);

    /// <summary>The rest of the sentence after "Keep this report".</summary>
    /// <param name="keep">Until when.</param>
    /// <param name="rule">The rule in words.</param>
    /// <param name="source">The provision.</param>
    public abstract string KeepLine(KeepUntil keep, string rule, string source);

    public abstract string KeepNotFound(string rule, string source, Confidence confidence);

    public abstract string KeepThis(IReadOnlyList<string> lines);

    public abstract string ParticularsFromMemory(IEnumerable<string> sources);
    public abstract string Authority(Recipient whom, string source, Confidence confidence);
}
