using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Common;
using NodaTime;

namespace ExamDocs.Templates.Report.Wording;

/// <inheritdoc />
internal sealed partial class English : ReportPhrases
{
    public override string MadeFor => "Made for (employer)";
    public override string Premises => "Premises where examined";
    public override string HiredFrom => "Owner from whom hired or leased";
    public override string ReportDate => "Date of the report";
    public override string ResultHeading => "Result";
    public override string DoNotUseHeading => "Not to be used";
    public override string UntilHeading => "Only until a date";
    public override string ReportItemHeading => "Particulars of the item";
    public override string ColumnNumber => "No.";
    public override string ColumnOutcome => "Outcome";
    public override string ColumnNext => "Next due by";
    public override string NotReportedHeading => "On the record of this visit, but not in this report";

    public override string NotReported =>
        "These items are not reported on, because they were not examined, their record is incomplete or contradictory, "
        + "or it cannot be printed whole. They are not to be taken as fit.";

    public override string Basis => "Examined";
    public override string SafeToOperate => "Would be safe to operate";
    public override string DefectsHeading => "Defects";
    public override string NoDefects => "none recorded that is or could become a danger";

    public override string NoDefectWritten =>
        "none of the item itself is written out in the record; the reasons above say why it is not to be used";

    public override string Tests => "Tests";
    public override string NoTests => "no tests recorded";
    public override string DiametersHeading => "diameter along the rope";
    public override string AuthorAndSignerHeading => "Report made and authenticated by";
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

    public override string Last(string examination) => $"Last {examination}";

    public override string MoreReasons(int more) => more == 1 ? "; and 1 more reason" : $"; and {Printed.Count(more)} more reasons";

    public override string ShortOutcome(Outcome outcome) =>
        outcome switch
        {
            Core.Records.Outcome.Withdraw => "Not to be used",
            Core.Records.Outcome.FitUntil => "Until a date",
            Core.Records.Outcome.Undetermined => "Do not use",
            _ => "In service",
        };

    public override string PositionOf(int position, int of) => $"Item {Printed.Count(position)} of {Printed.Count(of)}";

    public override string SafeFit => "yes, as examined";

    public override string SafeUntil(LocalDate? until) => $"yes, as examined, up to and including {Printed.Day(until)}";

    public override string SafeInstalled => "yes: correctly installed and, as examined, safe to operate";

    public override string Scheme(string? reference, string? author, int? months) =>
        $"scheme {Printed.Text(reference)}, drawn up by {Printed.Text(author)}, every "
        + $"{(months is { } m ? Printed.Count(m) : CommonPhrases.Languages.English.NotRecorded)} months";

    public override string Event(string? what, LocalDate? on) => $"{Printed.Text(what)}, on {Printed.Day(on)}";
}
