using System.Globalization;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Annotating;

/// <summary>
/// Fills the marked cells of a sheet, makes those that are missing, and names the drawing of its notes where it named
/// none. Cells and rows that carry no address are counted by their place.
/// </summary>
/// <param name="marks">What to mark.</param>
/// <param name="styles">Gives each marked cell its filled style.</param>
/// <param name="links">Namespace of links to other parts.</param>
/// <param name="drawing">Link to the notes' drawing to be named; null where the one named already serves.</param>
/// <param name="formulas">Where the sheet has formulas, which are left out.</param>
internal sealed class SheetPatch(MarkedRows marks, StylePlan styles, string links, string? drawing, FormulaCells formulas)
    : FrozenSheet(formulas)
{
    private readonly DefaultStyles _defaults = new();
    private Queue<Mark> _pending = new();
    private string? _rowStyle;
    private string? _drawing = drawing;
    private bool _afterData;

    protected override void BeforeStart(string name)
    {
        base.BeforeStart(name);
        if (Depth == 1 && _afterData && SheetOrder.ComesAfterNotes(name))
            WriteDrawing();
        else if (Depth == 2 && Parent is "cols" && name is "col")
            _defaults.Column(Source);
        else if (Depth == 2 && Parent is "sheetData" && name is "row")
            BeginRow();
        else if (Depth == 3 && Parent is "row" && name is "c")
            WriteCellsAbove(Column);
    }

    protected override IReadOnlyList<KeyValuePair<string, string>> Attributes(string name)
    {
        if (Depth == 1)
            return OfSheet(name);
        if (Depth == 2 && Parent is "sheetData" && name is "row" && _pending.Count > 0)
            return SheetExtent.Spans(Source.GetAttribute("spans"), _pending) is { } spans ? [new("spans", spans)] : [];
        if (Depth == 3 && Parent is "row" && name is "c" && _pending.TryPeek(out var mark) && mark.Column == Column)
            return [.. base.Attributes(name), new("s", styles.Of(Source.GetAttribute("s"), _pending.Dequeue().Worst))];
        return base.Attributes(name);
    }

    protected override void BeforeEnd(string name)
    {
        base.BeforeEnd(name);
        if (Depth == 3 && name is "row")
            WriteCellsAbove(int.MaxValue);
        else if (Depth == 2 && name is "sheetData")
            WriteRowsAbove(int.MaxValue);
        else if (Depth == 1)
            WriteDrawing();
    }

    protected override void AfterEnd(string name) => _afterData |= Depth == 1 && name is "sheetData";

    private KeyValuePair<string, string>[] OfSheet(string name)
    {
        if (name is "dimension" && SheetExtent.Dimension(Source.GetAttribute("ref"), marks.All) is { } extent)
            return [new("ref", extent)];
        if (name is not "legacyDrawing" || _drawing is not { } ours)
            return [];
        _drawing = null;
        return [new("id", ours)];
    }

    private void BeginRow()
    {
        WriteRowsAbove(Row);
        _rowStyle = WorkbookDirectory.IsTrue(Source.GetAttribute("customFormat")) ? Source.GetAttribute("s") : null;
        _pending = marks.Take(Row);
    }

    private void WriteRowsAbove(int row)
    {
        while (marks.TakeAbove(row) is { } missing)
        {
            (_rowStyle, _pending) = (null, new(missing));
            Begin("row");
            Target.WriteAttributeString("r", missing[0].Row.ToString(CultureInfo.InvariantCulture));
            WriteCellsAbove(int.MaxValue);
            End();
        }
    }

    private void WriteCellsAbove(int column)
    {
        while (_pending.TryPeek(out var mark) && mark.Column < column)
        {
            _pending.Dequeue();
            Begin("c");
            Target.WriteAttributeString("r", CellAddress.Of(mark.Row, mark.Column));
            Target.WriteAttributeString("s", styles.Of(_rowStyle ?? _defaults.Of(mark.Column), mark.Worst));
            End();
        }
    }

    private void WriteDrawing()
    {
        if (_drawing is null)
            return;
        Begin("legacyDrawing");
        Target.WriteAttributeString("r", "id", links, _drawing);
        End();
        _drawing = null;
    }
}
