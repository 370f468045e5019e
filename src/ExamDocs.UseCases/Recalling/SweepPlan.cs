using System.Text;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Json;
using ExamDocs.UseCases.Registered;

namespace ExamDocs.UseCases.Recalling;

/// <summary>Decides what a sweep does about each item, by what earlier sweeps of the same notice did and what became of that.</summary>
internal static class SweepPlan
{
    /// <param name="notice">The notice.</param>
    /// <param name="items">What it says of each item.</param>
    /// <param name="earlier">The earlier sweeps of it.</param>
    public static IReadOnlyList<PlannedItem> Of(SafetyNotice notice, IReadOnlyList<RecalledItem> items, EarlierSweeps earlier)
    {
        var (key, text) = (SweepReference.NoticeOf(notice), SweepReference.TextOf(notice));
        var seen = new HashSet<string>(StringComparer.Ordinal);
        List<PlannedItem> plan =
        [
            // Every record with a row without an id gives it again, and so do earlier sweeps.
            .. items.Where(i => i.Item.Id is not null || seen.Add(RowKey(i.Item, i.Owner))).Select(i => Of(i, key, text, earlier)),
        ];
        while (plan.FindIndex(p => p.Action is SweepAction.IsReleased && HasNewPart(p, plan)) is >= 0 and var at)
            plan[at] = plan[at] with
            {
                Action = New(plan[at].Item),
                Said = $"withdrawn by an earlier sweep and released since; a part that is fitted to it now is affected or may be",
            };
        return plan;
    }

    /// <summary>Released with the part that it was withdrawn for, it goes out again with another one.</summary>
    private static bool HasNewPart(PlannedItem whole, List<PlannedItem> plan) =>
        whole.Item.Parts.Any(part => plan.Exists(p => p.IsNew && p.Item.Place == part));

    /// <summary>What tells rows apart that no visit decided about, as far as anything does.</summary>
    public static string RowKey(Item item, string? owner)
    {
        var row = JsonRecordWriter.Write(new ExaminationRecord { Items = [SweepRecord.Row(item)] });
        return $"{FirmName.Fold(owner)}\n{Encoding.UTF8.GetString(row)}";
    }

    private static PlannedItem Of(RecalledItem item, string key, string text, EarlierSweeps earlier)
    {
        if (item.Verdict is RecallVerdict.NotAffected)
            return new(item, SweepAction.None, null, []);
        // Nothing can be withdrawn under no id, nor found again: it gets a hold label.
        if (item.Item.Id is null)
            return new(item, earlier.HasRow(item) ? SweepAction.IsHeld : SweepAction.Hold, $"it has no id and can only be held", []);
        var sweeps = item
            .History.Select((visit, at) => (Visit: visit, At: at, Reference: RecallVisit.Read(visit.Reference)))
            .Where(s => string.Equals(s.Reference?.Notice, key, StringComparison.Ordinal) && s.Visit.Day is not null)
            .ToList();
        var withdrew = sweeps.Find(s => IsOf(s.Visit, Outcome.Withdraw));
        if (withdrew.Visit is { } withdrawal)
        {
            if (IsOut(item))
                return Done(item, SweepAction.IsWithdrawn, withdrawal, $"withdrawn by the sweep of {withdrawal.Day!.Value}");
            return withdrew.Reference!.Text.Equals(text[..withdrew.Reference.Text.Length], StringComparison.Ordinal)
                ? Done(
                    item,
                    SweepAction.IsReleased,
                    withdrawal,
                    $"withdrawn by the sweep of {withdrawal.Day!.Value}, released since and not withdrawn again"
                )
                : Done(
                    item,
                    New(item),
                    withdrawal,
                    $"withdrawn by the sweep of {withdrawal.Day!.Value} and released since; the notice has another text now"
                );
        }
        if (item.Verdict is RecallVerdict.CannotTell && sweeps.Find(s => IsOf(s.Visit, Outcome.Undetermined)) is { Visit: { } hold } held)
            return item.History.Take(held.At).Any(IsDecided)
                ? Done(item, SweepAction.Hold, hold, $"held by the sweep of {hold.Day!.Value} and examined since; it still cannot be told")
                : Done(item, SweepAction.IsHeld, hold, $"held by the sweep of {hold.Day!.Value}");
        return new(item, New(item), null, []);
    }

    /// <summary>Where it was taken out for its part alone, that part keeps it out.</summary>
    private static bool IsOut(RecalledItem item) =>
        item.IsWithdrawn || (item.Alone < item.Verdict && item.Standing is Standing.Withdrawn or Standing.Held);

    private static SweepAction New(RecalledItem item) => item.Verdict is RecallVerdict.Affected ? SweepAction.Withdraw : SweepAction.Hold;

    private static PlannedItem Done(RecalledItem item, SweepAction action, FoundVisit visit, Message said) =>
        new(item, action, said, [.. visit.Documents.Select(d => d.Number)]);

    private static bool IsOf(FoundVisit visit, Outcome outcome) => string.Equals(visit.Outcome, outcome.Word(), StringComparison.Ordinal);

    private static bool IsDecided(FoundVisit visit) => visit.Codes is not ["U0"];
}
