using System.Globalization;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Annotating;

/// <summary>
/// Leaves the formulas of a sheet out, so that each cell holds the result saved with it. One that was saved without a
/// result shows that there is none: left empty, it would look as if nothing had been typed.
/// </summary>
internal class FrozenSheet(FormulaCells formulas) : PartPatch
{
    private const string NoResult = "#N/A";

    private bool _isWithoutValue;

    /// <summary>The row that the source stands in, counted from 1.</summary>
    protected int Row { get; private set; }

    /// <summary>The column of the cell that the source stands at, counted from 1.</summary>
    protected int Column { get; private set; }

    protected override bool IsLeftOut(string name) => Depth == 4 && Parent is "c" && (name is "f" || (_isWithoutValue && name is "v"));

    protected override string Changed(string text) => Reach.HoldsFormula(Parent) && Reach.IsBeyond(text) ? Reach.Lost : text;

    protected override void BeforeStart(string name)
    {
        if (Depth == 2 && Parent is "sheetData" && name is "row")
            (Row, Column) = (
                int.TryParse(Source.GetAttribute("r"), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : Row + 1,
                0
            );
        else if (Depth == 3 && Parent is "row" && name is "c")
        {
            Column = Source.GetAttribute("r") is { } address && CellAddress.Column(address) is { } column ? column : Column + 1;
            _isWithoutValue = formulas.WithoutValue.Contains((Row, Column));
        }
    }

    protected override IReadOnlyList<KeyValuePair<string, string>> Attributes(string name) =>
        Depth == 3 && Parent is "row" && name is "c" && _isWithoutValue ? [new("t", "e")] : [];

    protected override void BeforeEnd(string name)
    {
        if (Depth != 4 || name is not "c" || !_isWithoutValue)
            return;
        Begin("v");
        Target.WriteString(NoResult);
        End();
    }
}
