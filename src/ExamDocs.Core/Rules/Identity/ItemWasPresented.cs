using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Identity;

public sealed class ItemWasPresented : Rule<ItemCase>
{
    public ItemWasPresented()
        : base(
            new RuleInfo(
                "IDN006",
                Severity.Warning,
                "Every item of the record was examined",
                "An item on the list that nobody has looked at is not covered by the report.",
                $"Examine it, or leave it out of the record; until then it is undetermined.",
                "SI 1998/2307 reg 9(3)"
            )
        ) => Each(i => i.Deciding.Count == 0 ? [new Fault("", Words(i.Item.Status), Cause: CauseOf(i))] : []);

    /// <summary>It has no id to be named by; or there is an examination under an id that no item has, and that is nearly its own.</summary>
    private static PossibleCause? CauseOf(ItemCase item) =>
        item.ItemId is not { } id ? new PossibleCause($"{item.Path}/id")
        : item.Context.OfNoItem.FirstOrDefault(e => IsNearly(e.ItemId, id)) is { } astray
            ? new PossibleCause($"{astray.Path}/item", "CON002")
        : null;

    private static bool IsNearly(string? typed, string id) => typed is not null && SpellingSuggestion.Of(typed, [id]) is not null;

    private static Message Words(ItemStatus? status) =>
        status is null or ItemStatus.InUse or ItemStatus.Stored
            ? (Message)$"it was not examined at this visit"
            : $"it was not examined at this visit ({Records.Words.Statuses.WordFor(status.Value)})";
}
