using System.Xml.Linq;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Tests.Annotating;

/// <summary>
/// Names everything in an annotated copy that differs from the workbook and should not. Written apart from what makes
/// the copy: it reads whole trees and knows only what may differ.
/// </summary>
internal sealed class CopyDifference
{
    private readonly ZipParts _before;
    private readonly ZipParts _after;
    private readonly HashSet<string> _hadFormulas;
    private readonly List<string> _found = [];

    private CopyDifference(byte[] before, byte[] after)
    {
        (_before, _after) = (FrozenParts.Of(before), new(after));
        var original = new ZipParts(before);
        _hadFormulas = [.. _before.Names.Where(n => !_before.Bytes(n).AsSpan().SequenceEqual(original.Bytes(n)))];
    }

    public static List<string> Of(byte[] before, byte[] after, IReadOnlyCollection<(string Sheet, string Cell)> marked)
    {
        var difference = new CopyDifference(before, after);
        difference.Compare(marked);
        return difference._found;
    }

    private void Compare(IReadOnlyCollection<(string Sheet, string Cell)> marked)
    {
        var main = _before.Linked("", "officeDocument").Single();
        var grown = new HashSet<string>(StringComparer.OrdinalIgnoreCase) { "[Content_Types].xml", ZipParts.LinksOf(main) };
        var known = new HashSet<string>(grown, StringComparer.OrdinalIgnoreCase) { main };
        grown.ToList().ForEach(p => Grown(p, _before.Xml(p).Root!, _after.Xml(p).Root!));
        Main(main);
        var styles = _before.Linked(main, "styles").SingleOrDefault();
        if (styles is not null && known.Add(styles))
            Styles(styles);
        foreach (var sheet in marked.GroupBy(m => m.Sheet, StringComparer.Ordinal))
            known.UnionWith(Sheet(_before.SheetPart(main, sheet.Key), [.. sheet.Select(m => m.Cell)], styles));
        foreach (var part in _before.Names.Where(n => !known.Contains(n)))
        {
            if (!_after.Names.Contains(part, StringComparer.Ordinal))
                _found.Add($"{part} is lost");
            else if (!_before.Bytes(part).AsSpan().SequenceEqual(_after.Bytes(part)) && !IsFrozenAlike(part))
                _found.Add($"{part} is altered");
        }
    }

    /// <summary>A sheet without marks is written anew only where it had formulas.</summary>
    private bool IsFrozenAlike(string part) =>
        part.StartsWith("xl/worksheets/sheet", StringComparison.Ordinal)
        && _hadFormulas.Contains(part)
        && Same(_before.Xml(part).Root!, _after.Xml(part).Root!);

    /// <summary>Everything that was there still is, in its order, and only then what is new.</summary>
    private void Grown(string where, XElement before, XElement after)
    {
        var (old, now) = (before.Elements().ToList(), after.Elements().ToList());
        for (var n = 0; n < old.Count; n++)
        {
            if (n >= now.Count || !Same(old[n], now[n]))
                _found.Add($"{where}: {old[n].Name.LocalName} {n} is lost or altered");
        }
    }

    private void Main(string part)
    {
        var (before, after) = (_before.Xml(part), _after.Xml(part));
        var sheets = after.Root!.Elements().Single(e => e.Name.LocalName is "sheets");
        sheets.Elements().Last().Remove();
        if (!Same(before.Root!, after.Root!))
            _found.Add($"{part} is altered beyond one more sheet");
    }

    private void Styles(string part)
    {
        var after = _after.Xml(part).Root!;
        foreach (var collection in _before.Xml(part).Root!.Elements())
        {
            var now = after.Elements(collection.Name).Single();
            if (collection.Name.LocalName is "fonts" or "fills" or "cellXfs")
                Grown($"{part} {collection.Name.LocalName}", collection, now);
            else if (!Same(collection, now))
                _found.Add($"{part}: {collection.Name.LocalName} is altered");
        }
    }

    /// <returns>The parts compared.</returns>
    private HashSet<string> Sheet(string part, HashSet<string> cells, string? styles)
    {
        var compared = new HashSet<string>(StringComparer.OrdinalIgnoreCase) { part };
        var (before, after) = (_before.Xml(part).Root!, _after.Xml(part).Root!);
        new SheetDifference(part, cells, _found).Compare(
            before,
            after,
            StylesOf(_before, styles),
            StylesOf(_after, _after.Linked(_after.Linked("", "officeDocument").Single(), "styles").Single())
        );
        var links = ZipParts.LinksOf(part);
        if (_before.Names.Contains(links, StringComparer.Ordinal) && compared.Add(links))
            Grown(links, _before.Xml(links).Root!, _after.Xml(links).Root!);
        foreach (var notes in _before.Linked(part, "comments"))
        {
            compared.Add(notes);
            Notes(notes, cells);
        }
        foreach (var boxes in _before.Linked(part, "vmlDrawing"))
        {
            compared.Add(boxes);
            Boxes(boxes);
        }
        return compared;
    }

    private static List<XElement> StylesOf(ZipParts parts, string? part) =>
        part is null ? [] : [.. parts.Xml(part).Root!.Elements().Single(e => e.Name.LocalName is "cellXfs").Elements()];

    private void Notes(string part, HashSet<string> cells)
    {
        var after = ZipParts.Notes(_after.Xml(part));
        foreach (var (cell, note) in ZipParts.Notes(_before.Xml(part)))
        {
            if (!after.TryGetValue(cell, out var now))
                _found.Add($"{part}: the note on {cell} is lost");
            else if (!string.Equals(now.Author, note.Author, StringComparison.Ordinal))
                _found.Add($"{part}: the note on {cell} has another author");
            else if (
                cells.Contains(cell)
                    ? !now.Text.StartsWith(note.Text, StringComparison.Ordinal)
                    : !string.Equals(now.Text, note.Text, StringComparison.Ordinal)
            )
                _found.Add($"{part}: the note on {cell} says something else");
        }
    }

    private void Boxes(string part)
    {
        var before = System.Text.Encoding.UTF8.GetString(_before.Bytes(part)).TrimEnd();
        var after = System.Text.Encoding.UTF8.GetString(_after.Bytes(part));
        if (!after.StartsWith(before[..before.LastIndexOf("</xml", StringComparison.Ordinal)], StringComparison.Ordinal))
            _found.Add($"{part} is altered beyond more boxes");
    }

    internal static bool Same(XElement before, XElement after) => XNode.DeepEquals(Plain(before), Plain(after));

    /// <summary>Leaves out where namespaces are declared, and how many there are of what is counted anyhow.</summary>
    private static XElement Plain(XElement element) =>
        new(
            element.Name,
            element.Attributes().Where(a => !a.IsNamespaceDeclaration).OrderBy(a => a.Name.ToString(), StringComparer.Ordinal),
            element.Nodes().Where(n => n is not XComment).Select(n => n is XElement e ? Plain(e) : n)
        );
}
