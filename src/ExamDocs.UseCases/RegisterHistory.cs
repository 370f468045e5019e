using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Register;
using NodaTime;

namespace ExamDocs.UseCases;

/// <summary>
/// What a register knows of the items of a record from before. In doubt about identity an earlier withdrawal counts: an
/// item with the same id is taken for another only where it is another employer's and a particular differs.
/// </summary>
internal sealed class RegisterHistory(DocumentRegister register)
{
    private const string Withdrawn = "withdraw";

    private static readonly string[] Passing = ["fit", "fit-until"];

    public History Of(ExaminationRecord record)
    {
        var ids = record.Items.Select(i => i.Id).Concat(record.Examinations.Select(e => e.Item)).OfType<string>().Distinct(StringComparer.Ordinal);
        return new History([.. ids.SelectMany(id => Withdrawals(record, id))]);
    }

    private IEnumerable<PastWithdrawal> Withdrawals(ExaminationRecord record, string id)
    {
        var known = LatestVersions(register.Visits.OutcomesOf(id).Where(o => !IsOfThisVisit(o, record) && MayBe(o, record, id))).ToList();
        var open = known.Where(w => w.Outcome.Outcome is Withdrawn && !known.Exists(o => Ends(o, w))).ToList();
        foreach (var w in open.Where(w => !RestsOnAnotherAlone(w, open)))
        {
            yield return new PastWithdrawal(id, DocumentOf(w, record, id), Day(w), [.. w.Outcome.Codes.Where(c => c[0] == 'W')], w.Outcome.NeverReleasable)
            {
                Parts = w.Outcome.Parts,
            };
        }
    }

    /// <summary>Of the versions of one visit's record the latest that speaks of the item on that day.</summary>
    private static IEnumerable<PastOutcome> LatestVersions(IEnumerable<PastOutcome> outcomes) => outcomes
        .GroupBy(o => (Visit: o.Visit.Reference ?? $"#{o.Visit.Sha256}", o.Outcome.ExaminedOn))
        .Select(g => g.OrderBy(o => o.Visit.Visit).Last());

    /// <summary>Found fit later, by whoever knew of the withdrawal then: had it not been released, it would not have been.</summary>
    private static bool Ends(PastOutcome later, PastOutcome withdrawal) =>
        Passing.Contains(later.Outcome.Outcome, StringComparer.Ordinal) && Day(later) > Day(withdrawal) && later.Visit.Visit > withdrawal.Visit.Visit;

    /// <summary>It was withdrawn because another withdrawal was open, which is told by itself.</summary>
    private static bool RestsOnAnotherAlone(PastOutcome withdrawal, IReadOnlyList<PastOutcome> open) =>
        withdrawal.Outcome.Codes.Where(c => c[0] == 'W').All(c => c is "W10")
        && open.Any(o => Day(o) < Day(withdrawal) && o.Outcome.Codes.Any(c => c[0] == 'W' && c is not "W10"));

    private static LocalDate Day(PastOutcome outcome) => outcome.Outcome.ExaminedOn ?? outcome.Visit.ExaminedOn ?? outcome.Visit.StoredOn ?? LocalDate.MinIsoValue;

    private static bool IsOfThisVisit(PastOutcome outcome, ExaminationRecord record) =>
        outcome.Visit.Reference is { } reference && string.Equals(reference, record.Visit.Reference, StringComparison.Ordinal)
        && outcome.Visit.ExaminedOn == record.Visit.ExaminedOn;

    private static bool MayBe(PastOutcome outcome, ExaminationRecord record, string id)
    {
        if (AreAlike(outcome.Visit.Employer, record.Visit.Employer?.Name))
            return true;
        var items = record.Items.Where(i => string.Equals(i.Id, id, StringComparison.Ordinal)).ToList();
        return items.Count == 0 || items.Exists(i => AreAlike(i.Category, outcome.Category) && AreAlike(i.Maker, outcome.Maker)
            && AreAlike(i.Model, outcome.Model) && AreAlike(i.Serial, outcome.Serial));
    }

    /// <summary>Alike but for capitals and spaces, or one of them not known.</summary>
    private static bool AreAlike(string? one, string? other) => one is null || other is null || string.Equals(Folded(one), Folded(other), StringComparison.OrdinalIgnoreCase);

    private static string Folded(string text) => string.Concat(text.Where(char.IsLetterOrDigit));

    /// <summary>The document that a release names, where it is of this withdrawal; else the label that hangs on the item, else the notice, else the report.</summary>
    private string? DocumentOf(PastOutcome withdrawal, ExaminationRecord record, string id)
    {
        var visits = register.Visits.OutcomesOf(id).Select(o => o.Visit)
            .Where(v => v.Visit == withdrawal.Visit.Visit || (v.Reference is not null && string.Equals(v.Reference, withdrawal.Visit.Reference, StringComparison.Ordinal)))
            .Select(v => v.Visit).Distinct();
        var documents = visits.SelectMany(v => register.About(id, v)).Where(d => d.Kind is "quarantine-label" or "notice" or "report").ToList();
        var released = record.Releases.Where(r => string.Equals(r.Item, id, StringComparison.Ordinal)).Select(r => r.Document).ToHashSet(StringComparer.Ordinal);
        return (documents.FirstOrDefault(d => released.Contains(d.Number))
            ?? documents.OrderByDescending(d => d.IsCurrent).ThenBy(d => d.Kind switch { "quarantine-label" => 0, "notice" => 1, _ => 2 }).ThenByDescending(d => d.Number, StringComparer.Ordinal).FirstOrDefault())?.Number;
    }
}
