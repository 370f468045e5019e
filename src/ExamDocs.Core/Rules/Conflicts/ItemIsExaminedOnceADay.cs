using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class ItemIsExaminedOnceADay : Rule<ItemCase>
{
    public ItemIsExaminedOnceADay()
        : base(
            new RuleInfo(
                "CON008",
                Severity.Error,
                "An item is examined once on a day",
                "The latest examination decides; of two on one day nobody can say which is the later. The worse holds.",
                $"Keep the later one; put what the earlier one found in its notes.",
                "common practice, no source"
            )
        ) =>
        Each(i =>
            i.Deciding.Skip(1)
                .Select(e => new Fault(
                    e.Path,
                    $"{i.Item.Id} is examined more than once on one day, or on a day that cannot be read",
                    Item: i.Item.Id,
                    Cause: CauseOf(i)
                ))
        );

    /// <summary>Of two items with one id each is examined once; of an unknown day nobody can say which it is.</summary>
    private static PossibleCause? CauseOf(ItemCase item) =>
        item.Context.ItemsWithId(item.ItemId).Skip(1).Any()
            ? new PossibleCause($"{item.Path}/id", "IDN001")
            : UnknownDay.CauseOf(item.Deciding);

    /// <summary>Empty, because the faults have whole pointers to the examinations.</summary>
    protected override string PathOf(ItemCase subject) => "";
}
