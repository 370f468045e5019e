using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Templates.AuthorityCopy.Wording;
using ExamDocs.Templates.Report;
using ExamDocs.Templates.Shared;

namespace ExamDocs.Templates.AuthorityCopy;

/// <summary>A defect that is an imminent risk, with its item.</summary>
/// <param name="Item">The item.</param>
/// <param name="Defect">The defect.</param>
public sealed record ImminentDefect(DeterminedItem Item, DefectEntry Defect);

/// <summary>The report that a copy is made of.</summary>
/// <param name="Number">Its document number.</param>
/// <param name="Sha256">Of its file; lower-case hexadecimal.</param>
public sealed record OriginalReport(string Number, string Sha256);

/// <summary>
/// A copy of an issued report with a cover to the enforcing authority. It has a number of its own, since one number is one
/// file, and names the report it is a copy of.
/// </summary>
public sealed class AuthorityCopyModel
{
    /// <param name="report">The same report, under this copy's own identity.</param>
    /// <param name="original">The report as issued.</param>
    /// <exception cref="ArgumentException">No item of it calls for a copy, or the original has no number of a report.</exception>
    public AuthorityCopyModel(ReportModel report, OriginalReport original)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(original);
        // The number goes into a style sheet; DocumentIdentity refuses one of another form.
        _ = new DocumentIdentity(report.Identity.Kind, original.Number, report.Identity.IssuedOn, report.Identity.SoftwareVersion);
        var owed = report.Items.Select(i => i.Determined).Where(i => AuthorityDuty.IsOwedFor(report.Determined, i)).ToList();
        if (owed.Count == 0)
            throw new ArgumentException("no item of this report calls for a copy to the enforcing authority", nameof(report));
        (Report, Original) = (report, original);
        Duty = AuthorityDuty.Of(report.Determined, owed[0])!;
        Risks = [.. owed.SelectMany(item => DefectEntry.Of(item).Where(d => d.ImminentRisk).Select(d => new ImminentDefect(item, d)))];
    }

    public ReportModel Report { get; }

    public OriginalReport Original { get; }

    public Duty Duty { get; }

    /// <summary>Why it is sent, at least one; in the order of the report.</summary>
    public IReadOnlyList<ImminentDefect> Risks { get; }

    public DocumentIdentity Identity => Report.Identity;

    public Visit Visit => Report.Visit;

    /// <summary>The authority in the words of the law.</summary>
    public string Authority => AuthorityDuty.Words(Duty, Report.Regime);

    /// <summary>In the margin of every page.</summary>
    public string RunningTitle => AuthorityCopyPhrases.Current.RunningTitle(Original.Number);
}
