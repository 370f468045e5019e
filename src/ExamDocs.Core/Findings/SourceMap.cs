namespace ExamDocs.Core.Findings;

/// <summary>
/// Says where in the user's input a place of the record was typed: <c>file#/items/3/serial</c> for JSON,
/// <c>file!Sheet!F12</c> for a workbook.
/// </summary>
public sealed class SourceMap
{
    private readonly IReadOnlyDictionary<string, string> _cells;

    private string _within = "!";

    private SourceMap? _otherwise;

    private IReadOnlyDictionary<string, (SourceMap Source, string Pointer)> _merged = new Dictionary<string, (SourceMap, string)>(
        StringComparer.Ordinal
    );

    private SourceMap(string file, IReadOnlyDictionary<string, string> cells, bool pointers) =>
        (File, _cells, IsJson) = (file, cells, pointers);

    public string File { get; }

    public bool IsJson { get; }

    public static SourceMap ForJson(string file) => new(file, new Dictionary<string, string>(StringComparer.Ordinal), true);

    /// <param name="file">File name as the user gave it.</param>
    /// <param name="cells">Pointer to place within the workbook, for example <c>/items/3/serial</c> to <c>Sheet!F12</c>.</param>
    public static SourceMap ForWorkbook(string file, IReadOnlyDictionary<string, string> cells) => new(file, cells, false);

    /// <param name="folder">The folder as the user gave it; empty for the current one.</param>
    /// <param name="cells">Pointer to file and cell, for example <c>/items/3/serial</c> to <c>People.csv!F12</c>.</param>
    public static SourceMap ForFolder(string folder, IReadOnlyDictionary<string, string> cells) =>
        new(folder, cells, false) { _within = folder.Length == 0 || folder.EndsWith('/') ? "" : "/" };

    /// <param name="otherwise">The input whose places are the same in the merged record, unless said otherwise.</param>
    /// <param name="places">Pointer into the merged record to the input it came from and the pointer there.</param>
    public static SourceMap ForMerged(SourceMap otherwise, IReadOnlyDictionary<string, (SourceMap Source, string Pointer)> places)
    {
        ArgumentNullException.ThrowIfNull(otherwise);
        return new(otherwise.File, otherwise._cells, false) { _merged = places, _otherwise = otherwise };
    }

    /// <summary>The place typed, or the nearest enclosing one that has a place.</summary>
    public string Locate(string pointer)
    {
        if (_otherwise is not null)
            return Enclosing(pointer)
                .Where(_merged.ContainsKey)
                .Select(at => _merged[at].Source.Locate(_merged[at].Pointer + pointer[at.Length..]))
                .FirstOrDefault()
                ?? _otherwise.Locate(pointer);
        if (IsJson)
            return $"{File}#{pointer}";
        return Nearest(pointer) is { } cell ? $"{File}{_within}{cell}" : File;
    }

    /// <summary>
    /// Sheet and cell of the same place, for example <c>Rope bridges</c> and <c>F12</c>; null where it has none, and in a
    /// record merged from several inputs.
    /// </summary>
    public (string Sheet, string Cell)? CellOf(string pointer) =>
        _otherwise is null && Nearest(pointer) is { } place && place.LastIndexOf('!') is > 0 and var mark
            ? (place[..mark], place[(mark + 1)..])
            : null;

    private string? Nearest(string pointer)
    {
        foreach (var at in Enclosing(pointer))
        {
            if (_cells.TryGetValue(at, out var cell))
                return cell;
        }
        return null;
    }

    /// <summary>The pointer itself, then each that it lies within, but for the whole.</summary>
    private static IEnumerable<string> Enclosing(string pointer)
    {
        for (var at = pointer; at.Length > 0; at = at[..at.LastIndexOf('/')])
            yield return at;
    }
}
