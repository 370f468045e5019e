using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core;

/// <summary>
/// Which items a finding reaches: its item; the items whose examination, people or limits it is about; or all items, where it is
/// about the visit or the whole record. A finding about an item never reaches the parts on that item.
/// </summary>
internal static class FindingReach
{
    public static IEnumerable<ItemCase> Of(Finding finding, RecordContext context) =>
        ByPath(finding.Path, context).Concat(context.ItemsWithId(finding.Item)).Distinct();

    private static IEnumerable<ItemCase> ByPath(string path, RecordContext context)
    {
        if (RecordPointer.ToRow(path) is not var (list, row))
            return context.Items;
        return list switch
        {
            "items" => At(context.Items, row),
            "examinations" => At(context.Examinations, row).SelectMany(e => Examined(e, context)),
            "people" => At(context.People, row).SelectMany(p => UsersOf(p.Row, context)),
            "limits" => At(context.Limits, row)
                .SelectMany(l => context.Items.Where(i => i.Limits.Touching.Contains(l.Row, ReferenceEqualityComparer.Instance))),
            "renewals" => At(context.Renewals, row).SelectMany(r => Renewed(r.Row, context)),
            "remedies" => At(context.Remedies, row).SelectMany(r => context.ItemsWithId(r.ItemId)),
            "releases" => At(context.Releases, row).SelectMany(r => context.ItemsWithId(r.ItemId)),
            "disposals" => At(context.Disposals, row).SelectMany(r => context.ItemsWithId(r.ItemId)),
            _ => context.Items,
        };
    }

    private static IEnumerable<T> At<T>(IReadOnlyList<T> list, int row) => row < list.Count ? [list[row]] : [];

    /// <summary>
    /// The item examined. An adverse examination under an id that no item has may be of any item whose category has those criteria.
    /// It reaches all of them: one of them is the dangerous one.
    /// </summary>
    private static IEnumerable<ItemCase> Examined(ExaminationCase examination, RecordContext context) =>
        context.KnowsItem(examination.ItemId)
            ? context.ItemsWithId(examination.ItemId)
            : context.Items.Where(item =>
                examination.CouldBeOf(item) && (examination.IsAdverse || examination.MeasuresTooMuchOrLittleFor(item))
            );

    private static IEnumerable<ItemCase> UsersOf(Person person, RecordContext context)
    {
        bool Is(string? id) => id is not null && string.Equals(id, person.Id, StringComparison.Ordinal);
        var examined = context
            .Examinations.Where(e => Is(e.Examination.Examiner) || Is(e.AuthorId) || Is(e.AuthenticatedById))
            .Select(e => e.ItemId);
        var renewed = context.Record.Renewals.Where(r => Is(r.DoneBy) || Is(r.SupervisedBy)).Select(r => r.Item);
        var released = context.Record.Releases.Where(r => Is(r.By)).Select(r => r.Item);
        return examined.Concat(renewed).Concat(released).SelectMany(context.ItemsWithId);
    }

    /// <summary>The whole that was renewed; its parts only where the whole is not in the record.</summary>
    private static IEnumerable<ItemCase> Renewed(Renewal renewal, RecordContext context)
    {
        var whole = context.ItemsWithId(renewal.Item).ToList();
        return whole.Count > 0 ? whole : context.ItemsWithId(renewal.FittedPart).Concat(context.ItemsWithId(renewal.RemovedPart));
    }
}
