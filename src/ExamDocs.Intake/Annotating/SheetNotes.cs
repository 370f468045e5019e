using System.Text;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Annotating;

/// <summary>Plans what changes for the marks of one sheet: the sheet, its notes, and the boxes they are shown in.</summary>
internal sealed class SheetNotes(WorkbookPackage package, PartChanges changes, FormatNames names, StylePlan styles)
{
    /// <param name="part">The sheet's part.</param>
    /// <param name="place">Its place among the sheets.</param>
    /// <param name="marks">From top to bottom and from left to right.</param>
    public void Plan(string part, int place, IReadOnlyList<Mark> marks)
    {
        var links = Relationships.Of(package, part).FindAll(r => !r.External);
        var fresh = PlanNotes(part, links, marks);
        var drawing = PlanBoxes(part, links, fresh, place);
        changes.Patch(part, new SheetPatch(new MarkedRows(marks), styles, names.Links, drawing, FormulaCells.Of(package, part)));
    }

    /// <returns>The marks whose cells had no note.</returns>
    private List<Mark> PlanNotes(string part, List<Relationship> links, IReadOnlyList<Mark> marks)
    {
        if (links.Find(l => l.IsOf("comments") && package.Has(l.Target)) is { } existing)
        {
            changes.Patch(existing.Target, new NotesPatch(marks));
            var noted = NotedCells(existing.Target);
            return [.. marks.Where(m => !noted.Contains((m.Row, m.Column)))];
        }
        var notes = changes.FreshPart("xl/comments", ".xml");
        changes.Link(part, names.Link("comments"), notes);
        changes.Add(notes, ContentTypes.Notes, target =>
            new NotesPatch(marks).Run(new MemoryStream(Encoding.UTF8.GetBytes($"<comments xmlns=\"{names.Main}\"/>")), target)
        );
        return [.. marks];
    }

    /// <returns>The link that the sheet is to name; null where it names the right one.</returns>
    private string? PlanBoxes(string part, List<Relationship> links, List<Mark> marks, int place)
    {
        var named = LegacyDrawing.IdOf(package, part);
        var existing = links.Find(l => string.Equals(l.Id, named, StringComparison.Ordinal) && package.Has(l.Target));
        if (marks.Count == 0)
            return null;
        if (existing is not null)
        {
            changes.Rewrite(existing.Target, (source, target) => NoteBoxes.Add(source, target, marks));
            return null;
        }
        var boxes = changes.FreshPart("xl/drawings/vmlDrawing", ".vml");
        changes.Add(boxes, ContentTypes.NoteBoxes, target => NoteBoxes.WriteNew(target, marks, place));
        return changes.Link(part, names.Link("vmlDrawing"), boxes);
    }

    private HashSet<(int Row, int Column)> NotedCells(string part)
    {
        var noted = new HashSet<(int Row, int Column)>();
        using var reader = package.Read(part);
        while (reader.Read())
        {
            if (reader.AtStart && reader.Is("comment") && CellAddress.Parse(reader.Attribute("ref") ?? "") is { } cell)
                noted.Add(cell);
        }
        return noted;
    }
}
