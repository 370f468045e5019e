using ExamDocs.Core.Cases;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Renewals;

/// <summary>Finds the parts that a renewal fitted and that are still on.</summary>
internal static class FittedParts
{
    /// <summary>The part fitted, with the item it is on; none where a later renewal took it off again.</summary>
    public static IEnumerable<(ItemCase Part, ItemCase Whole)> FittedNow(this RowCase<Renewal> renewal) =>
        from part in renewal.Context.ItemsWithId(renewal.Row.FittedPart)
        from whole in renewal.Context.ItemsWithId(renewal.Row.Item)
        where part.Wholes.Contains(whole)
        select (part, whole);
}
