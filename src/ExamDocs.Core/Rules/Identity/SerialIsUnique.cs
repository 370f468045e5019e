using System.Globalization;
using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;

namespace ExamDocs.Core.Rules.Identity;

public sealed class SerialIsUnique : Rule<VisitCase>
{
    private const int Named = 20;

    public SerialIsUnique()
        : base(
            new RuleInfo(
                "IDN002",
                Severity.Warning,
                "No two items of one maker and model share a serial number",
                "A shared number may be a batch number, or one item written down twice.",
                $"Check the marking; where it is a batch number, mark the items yourself and record that mark.",
                "common practice, no source"
            )
        ) =>
        Each(v =>
            v.Context.Items.Where(i => i.Item.Serial is not null)
                .GroupBy(i => (FirmName.Fold(i.Item.Maker), Key(i.Item.Model), Key(i.Item.Serial)))
                .Where(g => g.Key.Item3 is not "" && g.Skip(1).Any())
                .SelectMany(Shared)
        );

    private static string Key(string? text) => Folded.Keys(text) is { Count: > 0 } keys ? keys[0] : "";

    private static IEnumerable<Fault> Shared(IEnumerable<ItemCase> items)
    {
        var sharing = Sharing(items);
        return items.Select(i => new Fault(
            $"{i.Path}/serial",
            $"serial {i.Item.Serial} is shared by {sharing}",
            Item: i.Item.Id,
            Cause: AreOne(items) ? new PossibleCause($"{i.Path}/id", "IDN001") : null
        ));
    }

    /// <summary>All of one id: an item written down twice, which is said of its id.</summary>
    private static bool AreOne(IEnumerable<ItemCase> items) =>
        items.Select(i => i.ItemId).Distinct(StringComparer.Ordinal).Take(2).Count() == 1;

    /// <summary>At most twenty ids: the list is repeated in the finding of each item.</summary>
    private static Message Sharing(IEnumerable<ItemCase> items)
    {
        var ids = items.Select(o => o.Item.Id).ToList();
        return ids.Count <= Named
            ? Message.AsIs(string.Join(", ", ids))
            : $"{string.Join(", ", ids.Take(Named))} and {ids.Count - Named} more";
    }

    /// <summary>Empty, because the faults have whole pointers: the rule compares items with each other.</summary>
    protected override string PathOf(VisitCase subject) => "";
}
