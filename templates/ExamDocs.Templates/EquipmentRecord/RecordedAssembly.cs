using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates.EquipmentRecord.Wording;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Templates.EquipmentRecord;

/// <summary>An item that is, or was, in one assembly with this one.</summary>
/// <param name="How">Fitted to it or it to this, now or before.</param>
/// <param name="Id">Its id.</param>
/// <param name="Description">Empty where the record has no such item.</param>
/// <param name="Outcome">Its own outcome; null where the record has no such item.</param>
public sealed record AssembledItem(string How, string Id, string Description, Outcome? Outcome);

/// <summary>Works out what was and is fitted to what, for print.</summary>
internal static class RecordedAssembly
{
    /// <summary>What is fitted now first, then what was taken off, each once.</summary>
    public static IReadOnlyList<AssembledItem> Of(DeterminedVisit visit, DeterminedItem item)
    {
        if (item.Item.Id is not { } id)
            return [];
        var words = EquipmentRecordPhrases.Current;
        var wholes = visit.Items.Where(w => w.Parts.Contains(id, StringComparer.Ordinal)).Select(w => w.Item.Id).OfType<string>().ToList();
        var taken = visit
            .Record.Renewals.Where(r => Same(r.Item, id))
            .Select(r => r.RemovedPart)
            .OfType<string>()
            .Except(item.Parts, StringComparer.Ordinal);
        var left = visit
            .Record.Renewals.Where(r => Same(r.RemovedPart, id))
            .Select(r => r.Item)
            .OfType<string>()
            .Except(wholes, StringComparer.Ordinal);
        return
        [
            .. item.Parts.Distinct(StringComparer.Ordinal).Select(p => Line(words.PartNow, p)),
            .. wholes.Distinct(StringComparer.Ordinal).Select(w => Line(words.WholeNow, w)),
            .. taken.Select(p => Line(words.PartBefore, p)),
            .. left.Select(w => Line(words.WholeBefore, w)),
        ];

        AssembledItem Line(string how, string other)
        {
            var known = visit.Items.Where(i => Same(i.Item.Id, other)).MaxBy(i => i.Outcome);
            return new AssembledItem(how, other, known is null ? "" : Printed.Text(known.Item.Description), known?.Outcome);
        }
    }

    private static bool Same(string? one, string? other) => string.Equals(one, other, StringComparison.Ordinal);
}
