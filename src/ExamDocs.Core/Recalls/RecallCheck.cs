using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Recalls;

/// <summary>What a notice says of an item, and why.</summary>
/// <param name="Verdict">Affected, not affected, or not to be told.</param>
/// <param name="Reasons">For affected, what names it; for cannot tell, what is open; for not affected, what excludes it.</param>
public sealed record RecallAnswer(RecallVerdict Verdict, IReadOnlyList<Message> Reasons);

/// <summary>
/// Compares an item with a notice. It is not affected only where something on record excludes it, whatever else is missing: a gap, a
/// spelling or a number that has no place in the order leaves it open.
/// </summary>
public static class RecallCheck
{
    /// <param name="notice">The notice.</param>
    /// <param name="rows">Everything that was ever recorded of the item; where records disagree, each counts.</param>
    public static RecallAnswer Of(SafetyNotice notice, IReadOnlyList<Item> rows)
    {
        ArgumentNullException.ThrowIfNull(notice);
        ArgumentNullException.ThrowIfNull(rows);
        var maker = Particular.Of(
            rows.Select(r => r.Maker),
            typed => notice.AlsoCalled.Prepend(notice.Maker).Max(name => NameLikeness.Of(name, typed)),
            RecallWords.Maker
        );
        if (maker.Verdict is RecallVerdict.NotAffected)
            return Answer([maker]);
        var answers = notice.Affected.Select(kit => Answer([maker, .. Of(kit, rows)])).ToList();
        var worst = answers.Max(a => a.Verdict);
        return new(worst, [.. answers.Where(a => a.Verdict == worst).SelectMany(a => a.Reasons).Distinct()]);
    }

    private static IEnumerable<Particular> Of(NamedKit kit, IReadOnlyList<Item> rows)
    {
        var part = Particular.Of(rows.Select(r => r.PartNumber), typed => Any(kit.PartNumbers, typed, Marking), RecallWords.PartNumber);
        if (kit.Models.Count > 0)
        {
            var model = Particular.Of(rows.Select(r => r.Model), typed => Any(kit.Models, typed, NameLikeness.Of), RecallWords.Model);
            // A part number that is named tells more than the name of a model.
            yield return model.Verdict is RecallVerdict.NotAffected && kit.PartNumbers.Count > 0 && part.Verdict is RecallVerdict.Affected
                ? model with
                {
                    Verdict = RecallVerdict.CannotTell,
                }
                : model;
        }
        if (kit.PartNumbers.Count > 0)
            yield return part;
        if (kit.NamesSerials)
            yield return Particular.Of(rows.Select(r => r.Serial), typed => Serial(kit, typed), RecallWords.Serial);
        if (kit.Batches.Count > 0)
            yield return Batch(kit, rows);
        if (kit.ManufacturedFrom is not null || kit.ManufacturedTo is not null)
            yield return Particular.Of(rows.Select(r => r.Manufactured?.ToString()), typed => Made(kit, rows, typed), RecallWords.Made);
    }

    private static RecallVerdict Any(IReadOnlyList<string> named, string typed, Func<string, string, RecallVerdict> of) =>
        named.Select(n => of(n, typed)).DefaultIfEmpty(RecallVerdict.NotAffected).Max();

    /// <summary>A part number: built as the one named and yet another, or open.</summary>
    private static RecallVerdict Marking(string named, string typed) =>
        Folded.Same(named, typed) ? RecallVerdict.Affected : SerialOrder.Of(new(named, named), typed, 0);

    private static RecallVerdict Serial(NamedKit kit, string typed) =>
        new[]
        {
            kit.SerialRanges.Select(range => Ends(range, typed) ?? SerialOrder.Of(range, typed, kit.CheckCharacters)),
            kit.SerialPatterns.Select(pattern => SerialPattern.Of(pattern, typed, kit.CheckCharacters)),
            kit.Serials.Select(one => Ends(new(one, one), typed) ?? SerialOrder.Of(new(one, one), typed, kit.CheckCharacters)),
        }
            .SelectMany(v => v)
            .Max();

    private static RecallVerdict? Ends(SerialRange range, string typed) =>
        Folded.Same(range.From, typed) || Folded.Same(range.To, typed) ? RecallVerdict.Affected : null;

    /// <summary>A record has no member for a batch: where it is not the serial number, nobody knows which one it is of.</summary>
    private static Particular Batch(NamedKit kit, IReadOnlyList<Item> rows)
    {
        var bears = rows.SelectMany(r => new[] { r.Serial, r.PartNumber, r.OwnersMark })
            .FirstOrDefault(mark => kit.Batches.Any(b => Folded.Same(b, mark)));
        return bears is null
            ? new(RecallVerdict.CannotTell, null, RecallWords.Batch)
            : new(RecallVerdict.Affected, bears, RecallWords.Batch);
    }

    private static RecallVerdict Made(NamedKit kit, IReadOnlyList<Item> rows, string typed)
    {
        var made = rows.Select(r => r.Manufactured)
            .OfType<PartialDate>()
            .First(d => string.Equals(d.ToString(), typed, StringComparison.Ordinal));
        var (from, to) = (kit.ManufacturedFrom?.Earliest, kit.ManufacturedTo?.Latest);
        if (made.Latest < from || made.Earliest > to)
            return RecallVerdict.NotAffected;
        return (from is null || made.Earliest >= from) && (to is null || made.Latest <= to)
            ? RecallVerdict.Affected
            : RecallVerdict.CannotTell;
    }

    /// <summary>Everything has to hold: one that excludes it is enough, and one that is open leaves it open.</summary>
    private static RecallAnswer Answer(IReadOnlyList<Particular> particulars)
    {
        var least = particulars.Min(p => p.Verdict);
        return new(least, [.. particulars.Where(p => p.Verdict == least).Select(p => p.Reason)]);
    }
}
