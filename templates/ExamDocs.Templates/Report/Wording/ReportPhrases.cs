using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.Report.Wording;

/// <summary>Words of the report.</summary>
public abstract partial class ReportPhrases
{
    public static InEachLanguage<ReportPhrases> Languages { get; } = new(new English(), new German(), new French());

    /// <summary>In the language of the document that is being made.</summary>
    public static ReportPhrases Current => Languages.Current;

    public abstract string MadeFor { get; }
    public abstract string Premises { get; }
    public abstract string HiredFrom { get; }
    public abstract string ReportDate { get; }
    public abstract string ResultHeading { get; }
    public abstract string DoNotUseHeading { get; }
    public abstract string UntilHeading { get; }
    public abstract string ReportItemHeading { get; }
    public abstract string ColumnNumber { get; }
    public abstract string ColumnOutcome { get; }
    public abstract string ColumnNext { get; }
    public abstract string NotReportedHeading { get; }
    public abstract string NotReported { get; }
    public abstract string Basis { get; }
    public abstract string SafeToOperate { get; }
    public abstract string DefectsHeading { get; }
    public abstract string NoDefects { get; }
    public abstract string NoDefectWritten { get; }
    public abstract string Tests { get; }
    public abstract string NoTests { get; }

    public abstract string DiametersHeading { get; }

    /// <summary>Over one person who does both.</summary>
    public abstract string AuthorAndSignerHeading { get; }

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

    /// <param name="examination">What it is called in the law, for example thorough examination.</param>
    public abstract string Last(string examination);

    public abstract string MoreReasons(int more);

    /// <summary>The outcome as short as a table column.</summary>
    public abstract string ShortOutcome(Outcome outcome);

    public abstract string PositionOf(int position, int of);

    public abstract string SafeFit { get; }

    public abstract string SafeUntil(LocalDate? until);

    public abstract string SafeInstalled { get; }

    public abstract string Scheme(string? reference, string? author, int? months);

    public abstract string Event(string? what, LocalDate? on);
}
