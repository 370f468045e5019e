using System.IO.Compression;
using System.Text;
using System.Xml.Linq;

namespace ExamDocs.Intake.Tests.Annotating;

/// <summary>The parts of a workbook file, whole, for looking at.</summary>
internal sealed class ZipParts
{
    private readonly Dictionary<string, byte[]> _parts = new(StringComparer.Ordinal);

    public ZipParts(byte[] file)
    {
        using var zip = new ZipArchive(new MemoryStream(file));
        foreach (var entry in zip.Entries)
        {
            using var stream = entry.Open();
            using var copy = new MemoryStream();
            stream.CopyTo(copy);
            _parts.Add(entry.FullName, copy.ToArray());
        }
    }

    public IReadOnlyCollection<string> Names => _parts.Keys;

    public byte[] Bytes(string part) => _parts[part];

    public XDocument Xml(string part) => XDocument.Load(new MemoryStream(_parts[part]), LoadOptions.PreserveWhitespace);

    public ZipParts Set(string part, byte[] content)
    {
        _parts[part] = content;
        return this;
    }

    /// <summary>Replaces a text within a part, which must be there.</summary>
    public ZipParts Replace(string part, string from, string to)
    {
        var text = Encoding.UTF8.GetString(_parts[part]);
        if (!text.Contains(from, StringComparison.Ordinal))
            throw new InvalidOperationException($"{part} has no '{from}'");
        return Set(part, Encoding.UTF8.GetBytes(text.Replace(from, to, StringComparison.Ordinal)));
    }

    public ZipParts Without(string part)
    {
        if (!_parts.Remove(part))
            throw new InvalidOperationException($"there is no {part}");
        return this;
    }

    public byte[] File()
    {
        using var file = new MemoryStream();
        using (var zip = new ZipArchive(file, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, content) in _parts)
            {
                using var stream = zip.CreateEntry(name).Open();
                stream.Write(content);
            }
        }
        return file.ToArray();
    }

    public static string LinksOf(string part) => $"{part[..(part.LastIndexOf('/') + 1)]}_rels/{part[(part.LastIndexOf('/') + 1)..]}.rels";

    /// <summary>Parts that a part links to by a kind of link, in order.</summary>
    public List<string> Linked(string part, string kind) =>
        !_parts.ContainsKey(LinksOf(part))
            ? []
            :
            [
                .. Xml(LinksOf(part))
                    .Root!.Elements()
                    .Where(l => ((string)l.Attribute("Type")!).EndsWith("/" + kind, StringComparison.Ordinal))
                    .Select(l => Target(part, l)),
            ];

    public string SheetPart(string main, string name)
    {
        var id = Xml(main)
            .Descendants()
            .Single(s => s.Name.LocalName is "sheet" && string.Equals((string?)s.Attribute("name"), name, StringComparison.Ordinal))
            .Attributes()
            .Single(a => a.Name.LocalName is "id")
            .Value;
        return Target(
            main,
            Xml(LinksOf(main)).Root!.Elements().Single(l => string.Equals((string?)l.Attribute("Id"), id, StringComparison.Ordinal))
        );
    }

    public List<string> SheetNames() =>
        [
            .. Xml(Linked("", "officeDocument").Single())
                .Descendants()
                .Where(e => e.Name.LocalName is "sheet")
                .Select(s => (string)s.Attribute("name")!),
        ];

    /// <summary>Notes of every sheet of the workbook, by sheet and cell.</summary>
    public Dictionary<string, (string Author, string Text)> AllNotes()
    {
        var main = Linked("", "officeDocument").Single();
        return SheetNames()
            .SelectMany(s => Linked(SheetPart(main, s), "comments").SelectMany(p => Notes(Xml(p)).Select(n => ($"{s}!{n.Key}", n.Value))))
            .ToDictionary(StringComparer.Ordinal);
    }

    public static Dictionary<string, (string Author, string Text)> Notes(XDocument part)
    {
        var authors = part.Descendants().Where(e => e.Name.LocalName is "author").Select(a => a.Value).ToList();
        return part.Descendants()
            .Where(e => e.Name.LocalName is "comment")
            .ToDictionary(
                c => (string)c.Attribute("ref")!,
                c =>
                    (
                        authors[(int)c.Attribute("authorId")!],
                        string.Concat(c.Descendants().Where(e => e.Name.LocalName is "t").Select(t => t.Value))
                    ),
                StringComparer.Ordinal
            );
    }

    private static string Target(string from, XElement link)
    {
        var target = (string)link.Attribute("Target")!;
        return target.StartsWith('/') ? target[1..] : new Uri(new Uri("http://x/" + from), target).AbsolutePath[1..];
    }
}
