namespace ExamDocs.Core.Findings;

/// <summary>
/// Says where in the user's input a place of the record was typed: <c>file#/items/3/serial</c> for JSON,
/// <c>file!Sheet!F12</c> for a workbook. There is one kind for each kind of input.
/// </summary>
public abstract class SourceMap
{
    private protected SourceMap(string file) => File = file;

    /// <summary>The input as the user named it; of several the first.</summary>
    public string File { get; }

    public static SourceMap ForJson(string file) => new JsonSourceMap(file);

    /// <param name="file">File name as the user gave it.</param>
    /// <param name="cells">Pointer to place within the workbook, for example <c>/items/3/serial</c> to <c>Sheet!F12</c>.</param>
    public static SourceMap ForWorkbook(string file, IReadOnlyDictionary<string, string> cells) => new WorkbookSourceMap(file, cells);

    /// <param name="folder">The folder as the user gave it; empty for the current one.</param>
    /// <param name="cells">Pointer to file and cell, for example <c>/items/3/serial</c> to <c>People.csv!F12</c>.</param>
    public static SourceMap ForFolder(string folder, IReadOnlyDictionary<string, string> cells) => new FolderSourceMap(folder, cells);

    /// <param name="otherwise">The input whose places are the same in the merged record, unless said otherwise.</param>
    /// <param name="places">Pointer into the merged record to the input it came from and the pointer there.</param>
    public static SourceMap ForMerged(SourceMap otherwise, IReadOnlyDictionary<string, (SourceMap Source, string Pointer)> places)
    {
        ArgumentNullException.ThrowIfNull(otherwise);
        return new MergedSourceMap(otherwise, places);
    }

    /// <summary>Where it was typed; where that is not known, the nearest place around it.</summary>
    public abstract string Locate(string pointer);

    /// <summary>
    /// Sheet and cell of the same place, for example <c>Rope bridges</c> and <c>F12</c>; null where it has none, and in a
    /// record merged from several inputs.
    /// </summary>
    public virtual (string Sheet, string Cell)? CellOf(string pointer) => null;

    /// <summary>The pointer itself, then each pointer around it, from the inside out; without the whole record.</summary>
    private protected static IEnumerable<string> Enclosing(string pointer)
    {
        for (var at = pointer; at.Length > 0; at = at[..at.LastIndexOf('/')])
            yield return at;
    }
}
