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
    /// <param name="headings">What stands above the cell of a pointer, as typed; left out, no heading is known.</param>
    public static SourceMap ForWorkbook(string file, IReadOnlyDictionary<string, string> cells, Func<string, string?>? headings = null) =>
        new WorkbookSourceMap(file, cells, headings);

    /// <param name="folder">The folder as the user gave it; empty for the current one.</param>
    /// <param name="cells">Pointer to file and cell, for example <c>/items/3/serial</c> to <c>People.csv!F12</c>.</param>
    /// <param name="headings">What stands above the cell of a pointer, as typed; left out, no heading is known.</param>
    public static SourceMap ForFolder(string folder, IReadOnlyDictionary<string, string> cells, Func<string, string?>? headings = null) =>
        new FolderSourceMap(folder, cells, headings);

    /// <param name="otherwise">The input whose places are the same in the merged record, unless said otherwise.</param>
    /// <param name="places">Pointer into the merged record to the input it came from and the pointer there.</param>
    public static SourceMap ForMerged(SourceMap otherwise, IReadOnlyDictionary<string, (SourceMap Source, string Pointer)> places)
    {
        ArgumentNullException.ThrowIfNull(otherwise);
        return new MergedSourceMap(otherwise, places);
    }

    /// <summary>Where it was typed; where that is not known, the nearest place around it.</summary>
    public abstract string Locate(string pointer);

    /// <summary>A cell of the input, for an input that has cells.</summary>
    /// <param name="sheet">Its sheet, or its file where each sheet is one.</param>
    /// <param name="cell">For example F12.</param>
    public virtual SourcePlace OfCell(string sheet, string cell) => new(File, sheet, cell);

    /// <summary>Whether the place was typed on a sheet: who typed it knows headings, and no names of members.</summary>
    public virtual bool IsOnSheet(string pointer) => false;

    /// <summary>What stands above the cell of a place, as typed; null where nothing does, or it has no cell of its own.</summary>
    public virtual string? HeadingOf(string pointer) => null;

    /// <summary>The same place in its parts.</summary>
    public abstract SourcePlace PlaceOf(string pointer);

    /// <summary>
    /// Sheet and cell of the same place, for example <c>Rope bridges</c> and <c>F12</c>; null where it has none, and in a
    /// record merged from several inputs.
    /// </summary>
    public virtual (string Sheet, string Cell)? CellOf(string pointer) => null;
}
