using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using NodaTime;

namespace ExamDocs.Core.Rules.Renewals;

public sealed class RemovedPartIsOff : Rule<ItemCase>
{
    public RemovedPartIsOff()
        : base(
            new RuleInfo(
                "REN005",
                Severity.Error,
                "A part that a renewal took off does not say that it is still fitted",
                "A part that was taken off and still says so was put back, or was never off: its defects are the item's.",
                $"Clear fittedTo of the part where it is off; record the renewal that put it back where it is on.",
                "common practice, no source"
            )
        ) =>
        Each(i =>
            i.Item is { Id: { } part, FittedTo: { } whole } && TakenOffOn(i, part, whole) is { } day
                ? Reached(i, whole)
                    .Select(item => new Fault(
                        "/fittedTo",
                        $"{part} was taken off {whole} on {day}, but its own row says that it is still fitted there",
                        Item: item
                    ))
                : []
        );

    /// <summary>Ids of the part and of the item in question: until it is known whether the part is on, neither can be passed.</summary>
    private static IEnumerable<string?> Reached(ItemCase item, string whole) =>
        item.Context.ItemsSpeltLike(whole).Select(w => w.ItemId).Prepend(item.ItemId).Distinct(StringComparer.Ordinal);

    /// <summary>
    /// The day of the renewal that took it off, in this record or in another; null where none did, or where a later one put it back.
    /// </summary>
    private static LocalDate? TakenOffOn(ItemCase item, string part, string whole)
    {
        var record = item.Context.Record;
        string[] names =
        [
            part,
            .. item.Context.History.OtherNames.Where(n => string.Equals(n.Id, part, StringComparison.Ordinal)).Select(n => n.Name),
        ];
        if (Array.Exists(names, name => Assembly.IsRemoved(item.Context, name, whole)))
            return record
                .Renewals.Where(r => Array.Exists(names, name => Folded.Same(r.RemovedPart, name)) && Folded.Same(r.Item, whole))
                .Max(r => r.DoneOn)
                ?? record.Visit.ExaminedOn;
        var elsewhere = item
            .Context.History.Fittings.Where(f =>
                f.Word is FittingWord.TakenOff
                && string.Equals(f.Part, part, StringComparison.Ordinal)
                && Folded.Same(f.Whole, whole)
                && !(f.On > record.Visit.ExaminedOn)
            )
            .Max(f => (LocalDate?)f.On);
        return elsewhere is null || record.Renewals.Any(r => Folded.Same(r.FittedPart, part) && Folded.Same(r.Item, whole))
            ? null
            : elsewhere;
    }
}
