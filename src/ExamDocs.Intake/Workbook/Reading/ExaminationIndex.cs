using System.Runtime.InteropServices;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>Finds the examination that a row of another sheet is about, by its item and date.</summary>
internal sealed class ExaminationIndex
{
    private readonly Dictionary<string, DraftObject> _inItemRow = new(StringComparer.Ordinal);
    private readonly Dictionary<ItemAndDay, DraftObject> _byDay = [];
    private readonly Dictionary<ItemAndDay, DraftObject> _carriers = [];
    private readonly Dictionary<(string List, string Criterion), DraftObject> _observations = [];

    /// <summary>The visit's date as typed, which holds where an item's row gives none.</summary>
    public string? VisitDay { get; set; }

    /// <summary>Adds the examination in an item's own row.</summary>
    /// <returns>False where the item has one of that day already.</returns>
    public bool AddInItemRow(string? item, DraftObject examination)
    {
        if (item is null)
            return true;
        _inItemRow.TryAdd(item, examination);
        return _byDay.TryAdd(new(item, examination.Text("examinedOn") ?? VisitDay), examination);
    }

    /// <inheritdoc cref="AddInItemRow"/>
    public bool AddEarlier(string? item, DraftObject examination) =>
        item is null || examination.Text("examinedOn") is not { } day || _byDay.TryAdd(new(item, day), examination);

    /// <param name="day">Null for the examination in the item's own row.</param>
    public DraftObject? Find(string? item, string? day)
    {
        if (item is null)
            return null;
        return day is null ? _inItemRow.GetValueOrDefault(item) : _byDay.GetValueOrDefault(new(item, day));
    }

    /// <summary>The examination made up to carry what belongs to none; made by the caller where it is not there yet.</summary>
    public DraftObject Carrier(string? item, string? day, Func<DraftObject> make)
    {
        ref var carrier = ref CollectionsMarshal.GetValueRefOrAddDefault(_carriers, new(item ?? "", day), out _);
        return carrier ??= make();
    }

    /// <summary>Remembers the first observation of a criterion.</summary>
    public void AddObservation(DraftList observations, string? criterion, DraftObject observation) =>
        _observations.TryAdd((observations.Pointer, criterion ?? ""), observation);

    public DraftObject? FindObservation(DraftList observations, string? criterion) =>
        _observations.GetValueOrDefault((observations.Pointer, criterion ?? ""));

    private sealed record ItemAndDay(string Item, string? Day);
}
