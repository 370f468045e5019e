using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Checking;

/// <summary>Decides every remembered record again with what it could see, and compares the outcomes with those stored.</summary>
internal sealed class DecidedAgain(RememberedVisits visits, RegisterCheckRequest request, VisitNumbers? only)
{
    private readonly List<string> _notes = [];

    private readonly List<(int Visit, string Words)> _ofVisits = [];

    public IReadOnlyList<string> Notes => _notes;

    /// <summary>Every difference, whether it is a fault or a note.</summary>
    public IReadOnlyList<(int Visit, string Words)> OfVisits => _ofVisits;

    /// <summary>Visits that another version had decided.</summary>
    public int ByOthers { get; private set; }

    public IEnumerable<string> Faults()
    {
        if (request.Decide is not { } decide)
            yield break;
        foreach (var visit in visits.Stream())
        {
            if (only?.Contains(visit.Visit) is false)
                continue;
            var isOther = !string.Equals(visit.Version, request.Version, StringComparison.Ordinal);
            ByOthers += isOther ? 1 : 0;
            if (Difference(visit, decide) is not { } difference)
                continue;
            var note =
                isOther ? $"{difference.Text} It was decided by version {visit.Version ?? "not recorded"}; this one decides otherwise."
                : difference.Caveat is { } caveat ? $"{difference.Text} {caveat}"
                : null;
            _ofVisits.Add((visit.Visit, note ?? difference.Text));
            if (note is not null)
                _notes.Add(note);
            else
                yield return difference.Text;
        }
    }

    private (string Text, string? Caveat)? Difference(RememberedVisit visit, Func<RememberedVisit, byte[], OutcomesAgain?> decide)
    {
        var name = FormattableString.Invariant($"Visit {visit.Visit}{(visit.Reference is { } reference ? $" ({reference})" : "")}");
        try
        {
            var (stored, again) = (visits.OutcomesOf(visit.Visit), decide(visit, visits.Record(visit.Visit)));
            if (again is not { Outcomes: var now })
                return ($"{name}: its record cannot be decided any more.", null);
            if (now.Count != stored.Count)
                return (
                    FormattableString.Invariant($"{name}: {stored.Count} outcomes are stored, deciding it again gives {now.Count}."),
                    again.Caveat
                );
            var differing = stored
                .Zip(now)
                .Where(p => !LoggedOutcome.IsSame(p.First, p.Second))
                .Select(p =>
                    $"of {p.First.Item ?? "an item without an id"} is stored {Shown(p.First)}; deciding it again gives {Shown(p.Second)}"
                )
                .ToList();
            return differing.Count == 0
                ? null
                : (
                    $"{name}: {string.Join(". Also ", differing.Take(5))}"
                        + $"{(differing.Count > 5 ? FormattableString.Invariant($", and {differing.Count - 5} more") : "")}.",
                    again.Caveat
                );
        }
        catch (Exception unreadable) when (unreadable is RegisterDamagedException or InvalidDataException)
        {
            return ($"{name}: {unreadable.Message}", null);
        }
    }

    private static string Shown(RememberedOutcome outcome) =>
        string.Concat(
            outcome.Outcome,
            outcome.Codes.Count == 0 ? "" : $" {string.Join(' ', outcome.Codes)}",
            outcome.Until is { } until ? $" until {StoredDay.Of(until)}" : "",
            outcome.NextBy is { } next ? $", next by {StoredDay.Of(next)}" : ""
        );
}
