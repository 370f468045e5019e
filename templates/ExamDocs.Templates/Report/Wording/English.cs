using ExamDocs.Core.Determination.CaseForService;
using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Common;
using NodaTime;

namespace ExamDocs.Templates.Report.Wording;

/// <inheritdoc />
internal sealed class English : ReportPhrases
{
    public override string MadeFor => "Made for (employer)";
    public override string Premises => "Premises where made";
    public override string HiredFrom => "Owner hired or leased from";
    public override string ReportDate => "Date of the report";
    public override string ResultHeading => "Result";
    public override string DoNotUseHeading => "Not to be used";
    public override string UntilHeading => "Only until a date";
    public override string ScheduleHeading => "Schedule";
    public override string ItemsHeading => "Particulars of each item";
    public override string ReportItemHeading => "Particulars of the item";
    public override string ColumnNumber => "No.";
    public override string ColumnOutcome => "Outcome";
    public override string ColumnNotAfter => "Not to be used after";
    public override string ColumnNext => "Next by";
    public override string ColumnWhy => "Why";
    public override string NotReportedHeading => "On the record of this visit, but not in this report";

    public override string NotReported =>
        "These items are not reported on, because they were not examined, their record is incomplete or contradictory, "
        + "or it cannot be printed whole. They are not to be taken as fit.";

    public override string Identification => "Identification";
    public override string Basis => "Examined";
    public override string SafeToOperate => "Would be safe to operate";
    public override string ReasonsHeading => "Why";
    public override string DefectsHeading => "Defects";
    public override string NoDefects => "No defect that is, or could become, a danger to persons is recorded.";

    public override string NoDefectWritten =>
        "No defect of the item itself is written out in the record; the reasons above say why it is not to be used.";

    public override string NotInReport => "not in this report: do not use";
    public override string Tests => "Tests made";
    public override string NoTests => "none recorded";
    public override string CaseHeading => "case for service";
    public override string Photo => "photo on record:";

    public override string Exposure => "Use and exposure";
    public override string DiametersHeading => "diameter along the rope";
    public override string Position => "Position, mm";
    public override string Readings => "Readings, mm";
    public override string Mean => "Mean, mm";
    public override string RenewalsHeading => "parts renewed";
    public override string AuthorHeading => "Report made by";
    public override string AuthenticatedHeading => "Authenticated by";
    public override string Name => "Name";
    public override string Address => "Address";
    public override string Qualifications => "Qualifications";
    public override string SelfEmployed => "Self-employed";
    public override string EmployedBy => "Employed by";
    public override string EmploymentNotRecorded => "whether self-employed or employed: not recorded";
    public override string SignLead => "Authenticated by signature:";
    public override string LegendHeading => "How to read this report";

    public override IReadOnlyList<string> Legend { get; } =
    [
        "A letter and a number before a reason name the rule it rests on: W withdraws the item, D sets its last day of "
            + "use, U tells what the record leaves open.",
        "Decisive criteria end an item's service when a defect is found; judged criteria are weighed with the rest; "
            + "advisory criteria note normal wear. A doubt counts as a defect.",
        "“Not to be used after” a date: that date is the last day of use. It stands apart from the latest date for the "
            + "next examination, and the earlier of the two governs.",
        "The case for service sets out the evidence in the order in which it was argued. “Against” and “open” mark what "
            + "speaks against the item or leaves something open; a line without either supports it or weighs nothing by itself.",
        "“Not recorded” means that the record holds no such value; it does not mean that there is none.",
    ];

    public override IReadOnlyList<string> Cautions { get; } =
    [
        "This report speaks of each item as it was found on the date it was examined, and of no other item, part or day. "
            + "It does not replace the check before each use.",
        "An item that has arrested a fall, met a saw blade, heat or a chemical, or is in any doubt is taken out of use "
            + "and examined again, whatever this report says.",
    ];

    public override string Last(string examination) => $"Last {examination}";

    public override string Summary(int items) => items == 1 ? "1 item is reported on." : $"{Printed.Count(items)} items are reported on.";

    public override string CountLabel(Outcome outcome) =>
        outcome switch
        {
            Core.Records.Outcome.Withdraw => "not to be used",
            Core.Records.Outcome.FitUntil => "may stay in service until a date",
            Core.Records.Outcome.Undetermined => "not determined: do not use",
            _ => "may stay in service",
        };

    public override string MoreReasons(int more) => more == 1 ? "; and 1 more reason" : $"; and {Printed.Count(more)} more reasons";

    public override string ShortOutcome(Outcome outcome) =>
        outcome switch
        {
            Core.Records.Outcome.Withdraw => "Not to be used",
            Core.Records.Outcome.FitUntil => "Until a date",
            Core.Records.Outcome.Undetermined => "Do not use",
            _ => "May stay",
        };

    public override string PositionOf(int position, int of) => $"Item {Printed.Count(position)} of {Printed.Count(of)}";

    public override string SafeFit => "Yes: as examined, it would be safe to operate.";

    public override string SafeUntil(LocalDate? until) =>
        $"Yes: as examined, it would be safe to operate up to and including {Printed.Day(until)}.";

    public override string SafeInstalled => "Yes: it has been correctly installed and, as examined, would be safe to operate.";

    public override string SafeNo => "No: this statement is not made.";

    public override string Scheme(string? reference, string? author, int? months) =>
        $"scheme {Printed.Text(reference)}, drawn up by {Printed.Text(author)}, every "
        + $"{(months is { } m ? Printed.Count(m) : CommonPhrases.Languages.English.NotRecorded)} months";

    public override string Event(string? what, LocalDate? on) => $"{Printed.Text(what)}, on {Printed.Day(on)}";

    public override string CaseStep(Heading heading) =>
        heading switch
        {
            Heading.Identity => "Identity",
            Heading.History => "History",
            Heading.Decisive => "Decisive criteria",
            Heading.Judged => "Judged criteria",
            Heading.Advisory => "Advisory notes",
            Heading.Measurements => "Measurements",
            Heading.Limits => "Limits",
            _ => "Doubts, and what resolved them",
        };

    public override string Routine(ObservedState state) =>
        state switch
        {
            ObservedState.Clear => "Clear:",
            ObservedState.NoSign => "Nobody to ask; no sign found:",
            _ => "Not applicable:",
        };

    public override string CaseLine(Bearing bearing, string code, string text)
    {
        var word = bearing switch
        {
            Bearing.Against => "Against",
            Bearing.Open => "Open",
            _ => "",
        };
        var lead = Printed.Join(", ", word, code);
        return lead.Length == 0 ? text : $"{lead}: {text}";
    }
}
