using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using ExamDocs.Register.Model;
using ExamDocs.Templates;
using ExamDocs.UseCases.Recalling;
using ExamDocs.UseCases.Registered;

namespace ExamDocs.UseCases.Company.Packing;

/// <summary>Finds what a pack is about. What an item is, and how it stands, is asked of the register as everywhere.</summary>
internal sealed class PackedThings
{
    private readonly PackQuestion _asked;
    private readonly RegisterThen _then;

    /// <param name="items">What is on record, as of the day of the pack.</param>
    /// <param name="then">What the register knew on that day.</param>
    /// <param name="asked">What the pack is asked to show.</param>
    public PackedThings(ItemsOnRecord items, RegisterThen then, PackQuestion asked)
    {
        (_asked, _then) = (asked, then);
        var all = items.Everything();
        Elsewhere =
        [
            .. all.Where(t => !IsHere(t.Thing.Rows[0]) && t.Thing.Entries.Any(IsHere))
                .Select(t => t.Shown.Id)
                .Order(StringComparer.Ordinal),
        ];
        Decided =
        [
            .. all.Where(t => asked.Asks(t.Shown.Employer, t.Thing.Rows[0].Record.Visit.Premises, t.Thing.Entries.Select(e => e.Item.Id)))
                .Select(t => new PackedThing(t.Thing, t.Shown, DocumentsOf(t.Shown)))
                .OrderBy(t => t.Shown.Id, StringComparer.OrdinalIgnoreCase)
                .ThenBy(t => t.Shown.Item.Serial, StringComparer.Ordinal),
        ];
        Undecided = [.. UndecidedOf(items.Undecided())];
    }

    public IReadOnlyList<PackedThing> Decided { get; }

    public IReadOnlyList<UndecidedThing> Undecided { get; }

    /// <summary>Ids of what was recorded for this employer and at these premises once, and last for another or elsewhere.</summary>
    public IReadOnlyList<string> Elsewhere { get; }

    /// <summary>Every document about them, once.</summary>
    public IReadOnlyList<DocumentStatus> Documents =>
        field ??= [.. Decided.SelectMany(t => t.Documents).DistinctBy(d => d.Number, StringComparer.Ordinal)];

    /// <summary>The visits of this employer in which any of them is recorded.</summary>
    public IReadOnlySet<int> Visits =>
        field ??= Decided.SelectMany(t => t.Thing.Entries).Where(e => _asked.IsOf(e.Visit.Employer)).Select(e => e.Visit.Visit).ToHashSet();

    /// <summary>The ids asked for that no item bears.</summary>
    public IReadOnlyList<string> NotFound =>
        [
            .. _asked.Items.Where(asked =>
                !Decided.Any(t => t.Thing.Entries.Any(e => Folded.Same(e.Item.Id, asked)))
                && !Undecided.Any(u => Folded.Same(u.Item.Id, asked))
            ),
        ];

    /// <summary>
    /// What this employer's visits issued about it and nothing replaced or ended. Of labels with the next date only the latest hangs on it.
    /// </summary>
    private IReadOnlyList<DocumentStatus> DocumentsOf(FoundItem shown)
    {
        var visits = shown.History.Where(v => _asked.IsOf(v.Employer)).ToList();
        var labelled = visits.Find(v => v.Documents.Any(IsDueLabel));
        return
        [
            .. visits
                .SelectMany(v => v.Documents.Where(d => d.IsCurrent && (v == labelled || !IsDueLabel(d))))
                .Select(d => _then.Find(d.Number))
                .OfType<DocumentStatus>()
                .DistinctBy(d => d.Number, StringComparer.Ordinal),
        ];
    }

    private static bool IsDueLabel(FoundDocument document) =>
        document.IsCurrent && string.Equals(document.Kind, DocumentTypes.DueLabel.Kind, StringComparison.Ordinal);

    private bool IsHere(ItemEntry entry) => _asked.IsOf(entry.Record.Visit.Employer?.Name) && _asked.IsAt(entry.Record.Visit.Premises);

    private IEnumerable<UndecidedThing> UndecidedOf(IReadOnlyList<UndecidedItem> named)
    {
        var ids = new FoldedIds();
        return named
            .Select(n => (n.Item, n.Record.Visit.Employer?.Name, At: n.Record.Visit.Premises, Premises: ItemEntry.PremisesOf(n.Record)))
            .Where(n => _asked.Asks(n.Name, n.At, [n.Item.Id]))
            .GroupBy(n => n.Item.Id is { } id ? ids.Of(id) : SweepPlan.RowKey(n.Item, n.Name), StringComparer.Ordinal)
            .Select(g => new UndecidedThing(g.Last().Item, g.Last().Premises))
            .OrderBy(u => u.Item.Id, StringComparer.OrdinalIgnoreCase);
    }
}
