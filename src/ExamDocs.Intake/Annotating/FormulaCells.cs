using System.Globalization;
using System.Xml;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Annotating;

/// <summary>Where a sheet has formulas.</summary>
/// <param name="Any">Whether a cell has one, or anything else on the sheet has one that reaches beyond the workbook.</param>
/// <param name="WithoutValue">Cells whose formula was saved without a result.</param>
internal sealed record FormulaCells(bool Any, IReadOnlySet<(int Row, int Column)> WithoutValue)
{
    public static FormulaCells Of(WorkbookPackage package, string sheetPart)
    {
        var (any, row, column) = (false, 0, 0);
        var without = new HashSet<(int, int)>();
        using var reader = package.Read(sheetPart);
        while (reader.Read())
        {
            if (!reader.AtStart)
                continue;
            if (reader.Is("row"))
                (row, column) = (
                    int.TryParse(reader.Attribute("r"), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : row + 1,
                    0
                );
            else if (reader.Is("c"))
            {
                column = reader.Attribute("r") is { } address && CellAddress.Column(address) is { } known ? known : column + 1;
                var isText = reader.Attribute("t") is "str" or "s" or "inlineStr";
                var (hasFormula, hasValue) = Look(reader);
                any |= hasFormula;
                if (hasFormula && !hasValue && !isText)
                    without.Add((row, column));
            }
            else if (Reach.HoldsFormula(reader.Name))
                any |= Reach.IsBeyond(RichText.Whole(reader));
        }
        return new(any, without);
    }

    /// <summary>Reads to the end of a cell.</summary>
    private static (bool HasFormula, bool HasValue) Look(PartReader reader)
    {
        if (reader.IsEmptyElement)
            return (false, false);
        var (depth, formula, value, inValue) = (reader.Depth, false, false, false);
        while (reader.Read() && !(reader.AtEnd && reader.Depth == depth))
        {
            if (reader.AtStart)
            {
                formula |= reader.Is("f");
                inValue = reader.Is("v") && !reader.IsEmptyElement;
            }
            else
            {
                inValue &= !reader.AtEnd;
                value |= inValue && reader.Node is (XmlNodeType.Text or XmlNodeType.CDATA);
            }
        }
        return (formula, value);
    }
}
