using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Shape;
using ExamDocs.Intake.Workbook.Writing;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>Which column of a sheet holds what, from its row of headings; the order of columns does not matter.</summary>
internal sealed class HeadingMap
{
    private readonly Dictionary<int, string> _typed = [];
    private readonly List<(int Index, Column Column)> _known = [];
    private readonly SheetShape _shape;
    private Column?[] _columns = [];
    private readonly Dictionary<int, ForeignHeading> _foreign = [];
    private readonly HashSet<Column> _misspelt = [];
    private HashSet<string>? _notes;
    private bool? _hasLists;

    private HeadingMap(SheetShape shape, int row) => (_shape, Row) = (shape, row);

    /// <summary>The row of the headings, counted from 1.</summary>
    public int Row { get; }

    /// <summary>The columns that the sheet's shape has, from left to right.</summary>
    public List<(int Index, Column Column)> Known => _known;

    /// <summary>
    /// Where the state and the note of each criterion stand, in the order of their columns; notes without a state come last.
    /// </summary>
    public IReadOnlyList<CriterionColumns> Criteria => field ??= [.. CriterionColumns.Of(_known)];

    /// <summary>That of a sheet without headings.</summary>
    public static HeadingMap None(SheetShape shape) => new(shape, 1);

    /// <param name="row">The row of the headings.</param>
    /// <param name="shape">The sheet.</param>
    /// <param name="words">What headings may be called.</param>
    public static HeadingMap Of(SheetRow row, SheetShape shape, HeadingWords words)
    {
        var map = new HeadingMap(shape, row.Number);
        foreach (var cell in row.Cells)
        {
            map._typed[cell.Column] = cell.Raw;
            if (cell.Kind is CellKind.Text && words.Find(shape, cell.Raw) is { } column)
                map._known.Add((cell.Column, column));
        }
        map._columns = new Column?[map._known.Select(k => k.Index + 1).DefaultIfEmpty().Max()];
        foreach (var (index, column) in map._known)
            map._columns[index] = column;
        return map;
    }

    /// <summary>
    /// Headings that every row needs and the sheet lacks; those of an examination only where the sheet has any of one, for
    /// an item may stand there without.
    /// </summary>
    public IEnumerable<string> Missing =>
        _shape
            .Columns.Where(c => c.IsNeeded && (c.Group is ColumnGroup.Item || _known.Exists(k => k.Column.Group is not ColumnGroup.Item)))
            .Where(c => !_known.Exists(k => k.Column == c) && !_misspelt.Contains(c))
            .Select(c => c.Heading);

    /// <summary>
    /// The column of the sheet that a mistyped heading most resembles; null where none is near. It is not said to be missing besides.
    /// </summary>
    public Column? Misspelt(string typed)
    {
        if (HeadingWords.NearColumn(_shape.Columns, typed) is not { } column)
            return null;
        _misspelt.Add(column);
        return column;
    }

    /// <summary>Whether a comment is the program's own on a heading of the sheet, wherever that stands by now.</summary>
    public bool IsNoteOnHeading(string text) =>
        (_notes ??= [.. _shape.Columns.Select(c => Seal.Of(HeadingStyle.NoteOn(c)))]).Contains(Seal.Of(text));

    public bool Knows(int column) => ColumnAt(column) is not null;

    /// <summary>What stands in a column; null where no known heading stands above it.</summary>
    public Column? ColumnAt(int column) => column < _columns.Length ? _columns[column] : null;

    /// <summary>Whether columns of the sheet make up a list together, which is there where none of them is filled.</summary>
    public bool HasLists => _hasLists ??= _known.Exists(k => k.Column.Kind is ColumnKind.NumberInList);

    /// <summary>What the heading of a column is, where it is none of the sheet's.</summary>
    public ForeignHeading Foreign(int column) =>
        _foreign.TryGetValue(column, out var known) ? known : _foreign[column] = ForeignHeadings.Of(Typed(column) ?? "", _shape);

    /// <summary>What stands above a column; null where nothing does.</summary>
    public string? Typed(int column) => _typed.GetValueOrDefault(column);
}
