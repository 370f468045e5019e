using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Items;
using NodaTime;

namespace ExamDocs.Templates.Report.Wording;

/// <summary>Words of the counts, blocks, groups and lines, and of the last page.</summary>
public abstract partial class ReportPhrases
{
    /// <summary>Between a label and its value.</summary>
    public virtual string Colon => ": ";

    public virtual string Semicolon => "; ";

    public virtual string Comma => ", ";

    public abstract string ColumnMarking { get; }
    public abstract string ColumnMade { get; }
    public abstract string ColumnLast { get; }
    public abstract string ColumnUseUntil { get; }
    public abstract string ColumnNote { get; }
    public abstract string Position { get; }
    public abstract string Readings { get; }
    public abstract string Mean { get; }
    public abstract string NotKnown { get; }

    /// <summary>Instead of the day of the last examination.</summary>
    public abstract string First { get; }

    public abstract string SafeNo { get; }
    public abstract string Purchased { get; }
    public abstract string DeclarationLabel { get; }
    public abstract string Scope { get; }
    public abstract string Laws { get; }
    public abstract string ExaminedBy { get; }
    public abstract string AnnexToRegister { get; }
    public abstract string NoSign { get; }
    public abstract string PlacesHeading { get; }
    public abstract string LawHeading { get; }

    /// <summary>Over what of the law was not read in its source.</summary>
    public abstract string NotReadHeading { get; }

    public abstract IReadOnlyList<string> Legend { get; }

    public abstract IReadOnlyList<string> Cautions { get; }

    public abstract string CountLabel(Outcome outcome, int count);

    public abstract string NotInReport(int count);

    /// <summary>Which of the visit's reports it is.</summary>
    public abstract string Part(int number, int of);

    public abstract string BlocksHeading(BlockKind kind, int items);

    public abstract string LinesHeading(int items);

    public abstract string Items(int count);

    /// <summary>Behind the name of a group that began before.</summary>
    public abstract string Continued(int from, int to, int of);

    /// <summary>What the item is for.</summary>
    public string Use(Purpose? purpose) =>
        purpose is null ? ItemPhrases.Current.Purpose + Colon + Phrases.Common.NotRecorded : Phrases.Common.Purpose(purpose);

    /// <summary>The day on which a group was examined, behind its name.</summary>
    public abstract string ExaminedOn(string day);

    public abstract string Mark(string mark);

    /// <summary>The maker's limits that are drawn in the plot, or that none are.</summary>
    public string DiameterLimits(DiameterProfile profile) =>
        profile is { Nominal: { } nominal, Tolerance: { } tolerance, Low: { } low, High: { } high }
            ? Tolerated(Printed.Number(nominal), Printed.Number(tolerance), Printed.Millimetres(low), Printed.Millimetres(high))
            : NoTolerance;

    protected abstract string Tolerated(string nominal, string tolerance, string low, string high);

    protected abstract string NoTolerance { get; }

    public abstract string Declaration(string? reference, LocalDate? on);

    public abstract string Remedy(string? what, LocalDate? on);

    public abstract string Release(LocalDate? on, string by, bool inError, string? grounds);

    public abstract string TrendProposal(LocalDate on);

    public abstract string Place(ParagraphPlace place, bool isSchedule);

    /// <summary>Blocks and lines, which add up to the items.</summary>
    public abstract string AddUp(int blocks, int lines, int groups);

    /// <param name="number">Of the evidence file; null where none was issued.</param>
    public abstract string Evidence(string? number);

    /// <param name="count">How many photos of an item in a line are not in the report.</param>
    public abstract string PhotosElsewhere(int count);
}
