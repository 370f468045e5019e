namespace ExamDocs.Core.Findings;

/// <summary>An input made of cells: a place of the record has a cell, or the nearest place around it has one.</summary>
/// <param name="file">The input as the user named it.</param>
/// <param name="divider">Sign between its name and the cell.</param>
/// <param name="cells">Pointer to cell.</param>
internal abstract class CellSourceMap(string file, string divider, IReadOnlyDictionary<string, string> cells) : SourceMap(file)
{
    public override string Locate(string pointer) => Nearest(pointer) is { } cell ? $"{File}{divider}{cell}" : File;

    public override (string Sheet, string Cell)? CellOf(string pointer) =>
        Nearest(pointer) is { } place && place.LastIndexOf('!') is > 0 and var mark ? (place[..mark], place[(mark + 1)..]) : null;

    private string? Nearest(string pointer)
    {
        foreach (var at in Enclosing(pointer))
        {
            if (cells.TryGetValue(at, out var cell))
                return cell;
        }
        return null;
    }
}

/// <summary>A workbook: <c>file!Sheet!F12</c>.</summary>
internal sealed class WorkbookSourceMap(string file, IReadOnlyDictionary<string, string> cells) : CellSourceMap(file, "!", cells);

/// <summary>A folder of files of separated values, each a sheet: <c>folder/People.csv!F12</c>.</summary>
internal sealed class FolderSourceMap(string folder, IReadOnlyDictionary<string, string> cells)
    : CellSourceMap(folder, folder.Length == 0 || folder.EndsWith('/') ? "" : "/", cells);
