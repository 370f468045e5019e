using ExamDocs.Core.Determination.CaseForService;
using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Templates.Evidence.Wording;

/// <summary>Words of the evidence file.</summary>
public abstract class EvidencePhrases
{
    public static InEachLanguage<EvidencePhrases> Languages { get; } = new(new English(), new German(), new French());

    /// <summary>In the language of the document that is being made.</summary>
    public static EvidencePhrases Current => Languages.Current;

    public abstract string Title { get; }
    public abstract string Lead { get; }
    public abstract string Employer { get; }
    public abstract string Premises { get; }
    public abstract string Items { get; }
    public abstract string NotInThisFile { get; }
    public abstract string Purchased { get; }
    public abstract string LastExamined { get; }
    public abstract string Examiner { get; }
    public abstract string Law { get; }
    public abstract string Exposure { get; }
    public abstract string ColumnRule { get; }
    public abstract string ColumnReason { get; }
    public abstract string ColumnSource { get; }
    public abstract string ColumnStep { get; }
    public abstract string ColumnBearing { get; }
    public abstract string ColumnEvidence { get; }
    public abstract string ColumnCriterion { get; }
    public abstract string ColumnClass { get; }
    public abstract string Position { get; }
    public abstract string Readings { get; }
    public abstract string Mean { get; }
    public abstract string Uncertainty { get; }
    public abstract string Differ { get; }
    public abstract string Remark { get; }
    public abstract string Series { get; }
    public abstract string Points { get; }
    public abstract string PerYear { get; }
    public abstract string Limit { get; }
    public abstract string ByLine { get; }
    public abstract string ByBand { get; }
    public abstract string Smallest { get; }
    public abstract string Largest { get; }
    public abstract string SourcesHeading { get; }
    public abstract string LawHeading { get; }
    public abstract string RulesHeading { get; }
    public abstract string LegendHeading { get; }
    public abstract IReadOnlyList<string> Legend { get; }
    public abstract IReadOnlyList<string> Cautions { get; }

    public abstract string ReasonsHeading(string item);

    public abstract string CaseHeading(string item);

    public abstract string DiametersHeading(string item);

    public abstract string TrendHeading(string item);

    public abstract string CriteriaHeading(string category);

    /// <summary>The steps of the argument, in the first column of the case for service.</summary>
    public abstract string Step(Heading heading);

    /// <summary>Which way a piece of evidence points.</summary>
    public abstract string Bearing(Bearing bearing);

    /// <summary>The answer that criteria with nothing more to say share.</summary>
    public abstract string Routine(ObservedState state);

    /// <summary>What is to be said of one place that was measured; empty where nothing is.</summary>
    public string Remarks(bool outside, bool standsOut, bool tooClose) =>
        Printed.Join(", ", outside ? Outside : null, standsOut ? StandsOut : null, tooClose ? TooClose : null);

    protected abstract string Outside { get; }

    protected abstract string StandsOut { get; }

    protected abstract string TooClose { get; }
}
