using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Workbook.Shape;

/// <summary>Tells by the headings of its first row which sheet one without a known name is.</summary>
internal static class ShapeByHeadings
{
    /// <summary>The sheet that more than half of the headings belong to; null where none, or more than one, has so many.</summary>
    public static SheetShape? Find(SheetRow first, KnownRules rules)
    {
        if (first.Number != 1)
            return null;
        var typed = first.Cells.Where(c => c.Kind is CellKind.Text).Select(c => Heading.Key(c.Raw)).ToHashSet(StringComparer.Ordinal);
        var scored = WorkbookShape
            .For(rules)
            .Where(s => s.Role is not SheetRole.Guide)
            .Select(s => (Shape: s, Matched: typed.Count(heading => Matches(s, heading, rules))))
            .OrderByDescending(s => s.Matched)
            .ToList();
        return scored[0].Matched * 2 > typed.Count && scored[0].Matched > scored[1].Matched ? scored[0].Shape : null;
    }

    private static bool Matches(SheetShape shape, string heading, KnownRules rules) =>
        shape.Role is SheetRole.Visit
            ? heading is VisitSheet.ParticularHeading or VisitSheet.ValueHeading
            : HeadingWords.Of(rules).Find(shape, heading) is not null;
}
