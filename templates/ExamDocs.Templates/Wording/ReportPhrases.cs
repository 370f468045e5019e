using ExamDocs.Core.Determination.CaseForService;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Templates.Wording;

/// <summary>Words of the report.</summary>
public abstract partial class ReportPhrases
{
    public abstract string MadeFor { get; }
    public abstract string Premises { get; }
    public abstract string HiredFrom { get; }
    public abstract string ReportDate { get; }
    public abstract string VisitDate { get; }
    public abstract string ResultHeading { get; }
    public abstract string DoNotUseHeading { get; }
    public abstract string UntilHeading { get; }
    public abstract string ScheduleHeading { get; }
    public abstract string ItemsHeading { get; }
    public abstract string ReportItemHeading { get; }
    public abstract string ColumnNumber { get; }
    public abstract string ColumnItem { get; }
    public abstract string ColumnDescription { get; }
    public abstract string ColumnOutcome { get; }
    public abstract string ColumnNotAfter { get; }
    public abstract string ColumnNext { get; }
    public abstract string ColumnWhy { get; }
    public abstract string NotReportedHeading { get; }
    public abstract string NotReported { get; }
    public abstract string Identification { get; }
    public abstract string Category { get; }
    public abstract string Maker { get; }
    public abstract string Model { get; }
    public abstract string PartNumber { get; }
    public abstract string Serial { get; }
    public abstract string OwnersMark { get; }
    public abstract string Manufactured { get; }
    public abstract string FirstUsed { get; }
    public abstract string NeverUsed { get; }
    public abstract string Standards { get; }
    public abstract string FittedTo { get; }
    public abstract string Parts { get; }
    public abstract string SafeWorkingLoad { get; }
    public abstract string MarkedStrength { get; }
    public abstract string Purpose { get; }
    public abstract string Basis { get; }
    public abstract string SafeToOperate { get; }
    public abstract string MakersLimits { get; }
    public abstract string EndOfService { get; }
    public abstract string ReasonsHeading { get; }
    public abstract string DefectsHeading { get; }
    public abstract string NoDefects { get; }
    public abstract string NoDefectWritten { get; }
    public abstract string NotInReport { get; }
    public abstract string DefectPart { get; }
    public abstract string DefectDanger { get; }
    public abstract string DefectRemedy { get; }
    public abstract string DangerNow { get; }
    public abstract string ImminentRisk { get; }
    public abstract string NoNext { get; }
    public abstract string NotAfter { get; }
    public abstract string NotAfterAnyDay { get; }
    public abstract string NoNotAfter { get; }
    public abstract string Tests { get; }
    public abstract string NoTests { get; }
    public abstract string ExaminedOn { get; }
    public abstract string CaseHeading { get; }
    public abstract string Photo { get; }

    /// <param name="number">Of the item's photos, from 1.</param>
    /// <param name="criterion">As printed.</param>
    /// <param name="state">The answer; null where there is none.</param>
    /// <param name="note">As typed.</param>
    public abstract string PhotoCaption(int number, string criterion, ObservedState? state, string? note);

    public abstract string Exposure { get; }
    public abstract string DiametersHeading { get; }
    public abstract string Position { get; }
    public abstract string Readings { get; }
    public abstract string Mean { get; }
    public abstract string NoTolerance { get; }
    public abstract string RenewalsHeading { get; }
    public abstract string AuthorHeading { get; }
    public abstract string AuthenticatedHeading { get; }
    public abstract string Name { get; }
    public abstract string Address { get; }
    public abstract string Qualifications { get; }
    public abstract string SelfEmployed { get; }
    public abstract string EmployedBy { get; }
    public abstract string EmploymentNotRecorded { get; }
    public abstract string SignLead { get; }
    public abstract string LegendHeading { get; }
    public abstract IReadOnlyList<string> Legend { get; }

    public abstract IReadOnlyList<string> Cautions { get; }

    /// <param name="examination">What it is called in the law, for example thorough examination.</param>
    public abstract string Last(string examination);

    /// <param name="examination">What it is called in the law, for example thorough examination.</param>
    public abstract string Next(string examination);

    public abstract string Summary(int items);

    public abstract string CountLabel(Outcome outcome);

    public abstract string MoreReasons(int more);

    /// <summary>The outcome as short as a table column.</summary>
    public abstract string ShortOutcome(Outcome outcome);

    public abstract string PositionOf(int position, int of);

    public abstract string SafeFit { get; }

    public abstract string SafeUntil(LocalDate? until);

    public abstract string SafeInstalled { get; }

    public abstract string SafeNo { get; }

    /// <summary>Followed by the date.</summary>
    public abstract string DangerLater { get; }
    public abstract string Scheme(string? reference, string? author, int? months);

    public abstract string Event(string? what, LocalDate? on);

    public abstract string Tolerance(string nominal, string tolerance, string low, string high, string source);

    public abstract string NominalOnly(string nominal, string source);

    public abstract string Document(string? title, string? revision, string? page);

    public abstract string Renewal(string removed, string fitted, string reason, string doneBy, string supervisedBy, string on);

    public abstract string Removal(string removed, string reason, string doneBy, string supervisedBy, string on);

    /// <summary>The steps of the argument, in the first column of the case for service.</summary>
    public abstract string CaseStep(Heading heading);

    /// <summary>The answer under which criteria with nothing more to say are drawn together.</summary>
    public abstract string Routine(ObservedState state);

    /// <summary>A line with the way it points, where it points any, and the rule behind it.</summary>
    public abstract string CaseLine(Bearing bearing, string code, string text);

    public abstract string PlotTitle(string item);
}
