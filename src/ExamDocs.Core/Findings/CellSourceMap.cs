namespace ExamDocs.Core.Findings;

/// <summary>An input made of cells: a place of the record has a cell, or the nearest place around it has one.</summary>
/// <param name="file">The input as the user named it.</param>
/// <param name="divider">Sign between its name and the cell.</param>
/// <param name="cells">Pointer to cell.</param>
/// <param name="headings">Pointer to what stands above its cell; null where none is known.</param>
internal abstract class CellSourceMap(
    string file,
    string divider,
    IReadOnlyDictionary<string, string> cells,
    Func<string, string?>? headings
) : SourceMap(file)
{
    public override string Locate(string pointer) => Nearest(pointer) is var (_, cell) ? $"{File}{divider}{cell}" : File;

    public override (string Sheet, string Cell)? CellOf(string pointer) =>
        Nearest(pointer) is var (_, place) && place.LastIndexOf('!') is > 0 and var mark ? (place[..mark], place[(mark + 1)..]) : null;

    public override SourcePlace PlaceOf(string pointer) =>
        CellOf(pointer) is var (sheet, cell) ? OfCell(sheet, cell) with { Heading = HeadingOf(pointer) } : new(File, null, "");

    public override bool IsOnSheet(string pointer) => true;

    public override string? HeadingOf(string pointer) => Nearest(pointer) is var (at, _) ? headings?.Invoke(at) : null;

    private (string Pointer, string Place)? Nearest(string pointer)
    {
        foreach (var at in RecordPointer.Enclosing(pointer))
        {
            if (cells.TryGetValue(at, out var cell))
                return (at, cell);
        }
        return null;
    }
}

/// <summary>A workbook: <c>file!Sheet!F12</c>.</summary>
internal sealed class WorkbookSourceMap(string file, IReadOnlyDictionary<string, string> cells, Func<string, string?>? headings)
    : CellSourceMap(file, "!", cells, headings);

/// <summary>A folder of files of separated values, each a sheet: <c>folder/People.csv!F12</c>.</summary>
internal sealed class FolderSourceMap(string folder, IReadOnlyDictionary<string, string> cells, Func<string, string?>? headings)
    : CellSourceMap(folder, Divider(folder), cells, headings)
{
    public override SourcePlace OfCell(string sheet, string cell) => new(File + Divider(File) + sheet, null, cell);

    private static string Divider(string folder) => folder.Length == 0 || folder.EndsWith('/') ? "" : "/";
}
