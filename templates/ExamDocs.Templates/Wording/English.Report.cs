using ExamDocs.Core.CaseForService;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared;
using NodaTime;

namespace ExamDocs.Templates.Wording;

public static partial class English
{
    /// <summary>Words of the report.</summary>
    public static partial class Report
    {
        public const string MadeFor = "Made for (employer)";
        public const string Premises = "Premises where made";
        public const string HiredFrom = "Owner hired or leased from";
        public const string ReportDate = "Date of the report";
        public const string VisitDate = "Examined on";
        public const string ResultHeading = "Result";
        public const string DoNotUseHeading = "Not to be used";
        public const string UntilHeading = "Only until a date";
        public const string ScheduleHeading = "Schedule";
        public const string ItemsHeading = "Particulars of each item";
        public const string ReportItemHeading = "Particulars of the item";
        public const string ColumnNumber = "No.";
        public const string ColumnItem = "Item";
        public const string ColumnDescription = "Description";
        public const string ColumnOutcome = "Outcome";
        public const string ColumnNotAfter = "Not to be used after";
        public const string ColumnNext = "Next by";
        public const string ColumnWhy = "Why";
        public const string NotReportedHeading = "On the record of this visit, but not in this report";
        public const string NotReported = "These items are not reported on, because they were not examined, or their record is incomplete or contradictory. They are not to be taken as fit.";
        public const string Identification = "Identification";
        public const string Category = "Kind";
        public const string Maker = "Maker";
        public const string Model = "Model";
        public const string PartNumber = "Part number";
        public const string Serial = "Serial or batch number";
        public const string OwnersMark = "Owner's mark";
        public const string Manufactured = "Date of manufacture";
        public const string FirstUsed = "First used";
        public const string NeverUsed = "never used";
        public const string Standards = "Standards marked";
        public const string FittedTo = "Fitted to";
        public const string Parts = "Parts fitted to it";
        public const string LastExamined = "Last thorough examination";
        public const string LastInspected = "Last inspection";
        public const string SafeWorkingLoad = "Safe working load";
        public const string MarkedStrength = "Marked strength";
        public const string Purpose = "Purpose";
        public const string Basis = "Examined";
        public const string SafeToOperate = "Would be safe to operate";
        public const string MakersLimits = "Maker's instructions used";
        public const string EndOfService = "End of service by recorded limits";
        public const string ReasonsHeading = "Why";
        public const string DefectsHeading = "Defects";
        public const string NoDefects = "No defect that is, or could become, a danger to persons is recorded.";
        public const string NoDefectWritten = "No defect of the item itself is written out in the record; the reasons above say why it is not to be used.";
        public const string NotInReport = "not in this report: do not use";
        public const string DefectPart = "Part and defect";
        public const string DefectDanger = "Danger";
        public const string DefectRemedy = "Repair, renewal or alteration needed";
        public const string DangerNow = "is a danger now: not to be used until rectified";
        public const string ImminentRisk = "existing or imminent risk of serious personal injury";
        public const string NextExamination = "Latest date for the next thorough examination";
        public const string NextInspection = "Latest date for the next inspection";
        public const string NoNext = "none set: the item is not to be used";
        public const string NotAfter = "Not to be used after";
        public const string NotAfterAnyDay = "not to be used at all";
        public const string NoNotAfter = "no earlier date set";
        public const string Tests = "Tests made";
        public const string NoTests = "none recorded";
        public const string ExaminedOn = "Date examined";
        public const string CaseHeading = "case for service";
        public const string Photo = "photo on record:";
        public const string Exposure = "Use and exposure";
        public const string DiametersHeading = "diameter along the rope";
        public const string Position = "Position, mm";
        public const string Readings = "Readings, mm";
        public const string Mean = "Mean, mm";
        public const string NoTolerance = "No maker's nominal diameter with a tolerance is recorded. The means are shown to be compared with one another; no limit is drawn.";
        public const string RenewalsHeading = "parts renewed";
        public const string AuthorHeading = "Report made by";
        public const string AuthenticatedHeading = "Authenticated by";
        public const string Name = "Name";
        public const string Address = "Address";
        public const string Qualifications = "Qualifications";
        public const string SelfEmployed = "Self-employed";
        public const string EmployedBy = "Employed by";
        public const string EmploymentNotRecorded = "whether self-employed or employed: not recorded";
        public const string SignLead = "Authenticated by signature:";
        public const string LegendHeading = "How to read this report";

        public static readonly IReadOnlyList<string> Legend =
        [
            "A letter and a number before a reason name the rule it rests on: W withdraws the item, D sets its last day of use, U tells what the record leaves open.",
            "Decisive criteria end an item's service when a defect is found; judged criteria are weighed with the rest; advisory criteria note normal wear. A doubt counts as a defect.",
            "“Not to be used after” a date: that date is the last day of use. It stands apart from the latest date for the next examination, and the earlier of the two governs.",
            "The case for service sets out the evidence in the order in which it was argued. “Against” and “open” mark what speaks against the item or leaves something open; a line without either supports it or weighs nothing by itself.",
            "“Not recorded” means that the record holds no such value; it does not mean that there is none.",
        ];

        public static readonly IReadOnlyList<string> Cautions =
        [
            "This report speaks of each item as it was found on the date it was examined, and of no other item, part or day. It does not replace the check before each use.",
            "An item that has arrested a fall, met a saw blade, heat or a chemical, or is in any doubt is taken out of use and examined again, whatever this report says.",
        ];

        public static string Summary(int items) => items == 1 ? "1 item is reported on." : $"{Printed.Count(items)} items are reported on.";

        public static string CountLabel(Outcome outcome) => outcome switch
        {
            Core.Determination.Outcome.Withdraw => "not to be used",
            Core.Determination.Outcome.FitUntil => "may stay in service until a date",
            Core.Determination.Outcome.Undetermined => "not determined: do not use",
            _ => "may stay in service",
        };

        public static string MoreReasons(int more) => more == 1 ? "; and 1 more reason" : $"; and {Printed.Count(more)} more reasons";

        /// <summary>The outcome as short as a table column.</summary>
        public static string ShortOutcome(Outcome outcome) => outcome switch
        {
            Core.Determination.Outcome.Withdraw => "Not to be used",
            Core.Determination.Outcome.FitUntil => "Until a date",
            Core.Determination.Outcome.Undetermined => "Do not use",
            _ => "May stay",
        };

        public static string PositionOf(int position, int of) => $"Item {Printed.Count(position)} of {Printed.Count(of)}";

        public static string SafeFit => "Yes: as examined, it would be safe to operate.";

        public static string SafeUntil(LocalDate? until) => $"Yes: as examined, it would be safe to operate up to and including {Printed.Day(until)}.";

        public static string SafeInstalled => "Yes: it has been correctly installed and, as examined, would be safe to operate.";

        public const string SafeNo = "No: this statement is not made.";

        /// <summary>Followed by the date.</summary>
        public const string DangerLater = "could become a danger by";

        public static string Scheme(string? reference, string? author, int? months) =>
            $"scheme {Printed.Text(reference)}, drawn up by {Printed.Text(author)}, every {(months is { } m ? Printed.Count(m) : NotRecorded)} months";

        public static string Event(string? what, LocalDate? on) => $"{Printed.Text(what)}, on {Printed.Day(on)}";

        public static string Tolerance(string nominal, string tolerance, string low, string high, string source) =>
            $"Maker's nominal {nominal} mm with a tolerance of {tolerance} % to either side, {low} to {high} mm inclusive (shaded). Source: {source}.";

        public static string NominalOnly(string nominal, string source) =>
            $"Maker's nominal {nominal} mm (dashed), no tolerance recorded: no limit is drawn. Source: {source}.";

        public static string Document(string? title, string? revision, string? page) =>
            $"{Printed.Text(title)}, revision {Printed.Text(revision)}, page {Printed.Text(page)}";

        public static string Renewal(string removed, string fitted, string reason, string doneBy, string supervisedBy, string on) =>
            $"{on}: {removed} taken off, {fitted} fitted. Reason: {reason}. Done by {doneBy}, supervised by {supervisedBy}.";

        public static string Removal(string removed, string reason, string doneBy, string supervisedBy, string on) =>
            $"{on}: {removed} taken off, nothing fitted in its place. Reason: {reason}. Done by {doneBy}, supervised by {supervisedBy}.";

        /// <summary>The steps of the argument, in the first column of the case for service.</summary>
        public static string CaseStep(Heading heading) => heading switch
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

        /// <summary>The answer under which criteria with nothing more to say are drawn together.</summary>
        public static string Routine(ObservedState state) => state switch
        {
            ObservedState.Clear => "Clear:",
            ObservedState.NoSign => "Nobody to ask; no sign found:",
            _ => "Not applicable:",
        };

        /// <summary>A line with the way it points, where it points any, and the rule behind it.</summary>
        public static string CaseLine(Bearing bearing, string code, string text)
        {
            var word = bearing switch { Bearing.Against => "Against", Bearing.Open => "Open", _ => "" };
            var lead = Printed.Join(", ", word, code);
            return lead.Length == 0 ? text : $"{lead}: {text}";
        }

        public static string PlotTitle(string item) => $"Mean diameter at each station along {item}";
    }
}
