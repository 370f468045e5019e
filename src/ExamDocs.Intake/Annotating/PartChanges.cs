using System.Globalization;
using System.IO.Compression;
using System.Text;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Annotating;

/// <summary>Which parts of a package change, which are new, and everything else as it was.</summary>
internal sealed class PartChanges(WorkbookPackage package)
{
    private const string LinkNamespace = "http://schemas.openxmlformats.org/package/2006/relationships";

    /// <summary>A fixed date for new parts keeps equal content equal, whenever it is written.</summary>
    private static readonly DateTimeOffset Made = new(2026, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private readonly Dictionary<string, Action<Stream, Stream>> _changed = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, Action<Stream>> _new = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, List<NewElement>> _links = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<NewElement> _types = [];
    private readonly HashSet<string> _leftOut = new(StringComparer.OrdinalIgnoreCase);
    private string? _last;

    /// <summary>Nodes read in parts that changed.</summary>
    public long Nodes { get; private set; }

    public void Patch(string part, PartPatch patch) => Rewrite(part, (source, target) =>
        {
            patch.Run(source, target);
            Nodes += patch.Nodes;
        });

    /// <summary>Whether the part is to be changed or left out.</summary>
    public bool IsPlanned(string part) =>
        _changed.ContainsKey(WorkbookPackage.Normal(part)) || _leftOut.Contains(WorkbookPackage.Normal(part));

    /// <summary>Leaves a part out, with the links that start at it.</summary>
    public void LeaveOut(string part)
    {
        _leftOut.Add(WorkbookPackage.Normal(part));
        _leftOut.Add(WorkbookPackage.Normal(Relationships.PartOf(part)));
    }

    /// <summary>A part to be written only after all others that were there.</summary>
    public void PatchLast(string part, PartPatch patch)
    {
        Patch(part, patch);
        _last = WorkbookPackage.Normal(part);
    }

    public void Rewrite(string part, Action<Stream, Stream> rewrite)
    {
        if (!_changed.TryAdd(WorkbookPackage.Normal(part), rewrite))
            throw new UnreadableWorkbookException(
                "Two sheets of the workbook share a part, so they cannot be marked apart. Save it again in a spreadsheet program."
            );
    }

    public void Add(string part, string type, Action<Stream> write)
    {
        _new.Add(part, write);
        _types.Add(NewElement.PartType(part, type));
    }

    /// <summary>A part name that is neither in the file nor among the new ones.</summary>
    public string FreshPart(string stem, string ending)
    {
        for (var n = 1; ; n++)
        {
            var part = string.Create(CultureInfo.InvariantCulture, $"{stem}{n}{ending}");
            if (!package.Has(part) && !_new.ContainsKey(part))
                return part;
        }
    }

    /// <returns>The link's id.</returns>
    public string Link(string from, string type, string to)
    {
        var links = _links.TryGetValue(from, out var begun) ? begun : _links[from] = [];
        var taken = Relationships
            .Of(package, from)
            .Select(r => r.Id)
            .Concat(links.Select(l => l.Attributes[0].Value))
            .ToHashSet(StringComparer.OrdinalIgnoreCase);
        var n = 1;
        while (taken.Contains(Id(n)))
            n++;
        links.Add(NewElement.Link(Id(n), type, to));
        return Id(n);
    }

    public void Write(Stream target)
    {
        PlanLinks();
        Patch(ContentTypes.Part, new TypesPatch(_types, _leftOut));
        using var zip = new ZipArchive(target, ZipArchiveMode.Create, leaveOpen: true);
        var kept = package.Entries.Where(e => !_leftOut.Contains(WorkbookPackage.Normal(e.FullName))).ToList();
        foreach (var entry in kept.Where(e => !IsLast(e)).Concat(kept.Where(IsLast)))
            Copy(zip, entry);
        foreach (var (part, write) in _new)
        {
            var entry = zip.CreateEntry(part);
            entry.LastWriteTime = Made;
            using var stream = entry.Open();
            write(stream);
        }
    }

    private static string Id(int number) => string.Create(CultureInfo.InvariantCulture, $"rIdFindings{number}");

    private bool IsLast(ZipArchiveEntry entry) =>
        string.Equals(WorkbookPackage.Normal(entry.FullName), _last, StringComparison.OrdinalIgnoreCase);

    private void PlanLinks()
    {
        foreach (var (from, links) in _links)
        {
            var part = Relationships.PartOf(from);
            if (package.Has(part))
                Patch(part, new LinksPatch(links));
            else
                _new.Add(part, target =>
                    new AppendPatch(links).Run(
                        new MemoryStream(Encoding.UTF8.GetBytes($"<Relationships xmlns=\"{LinkNamespace}\"/>")),
                        target
                    )
                );
        }
        foreach (
            var part in package
                .Entries.Select(e => WorkbookPackage.Normal(e.FullName))
                .Where(p => p.EndsWith(".rels", StringComparison.OrdinalIgnoreCase))
        )
        {
            if (!IsPlanned(part) && Relationships.In(package, part).Exists(LinksPatch.IsChanged))
                Patch(part, new LinksPatch([]));
        }
    }

    private void Copy(ZipArchive zip, ZipArchiveEntry entry)
    {
        var copy = zip.CreateEntry(entry.FullName);
        (copy.LastWriteTime, copy.ExternalAttributes) = (entry.LastWriteTime, entry.ExternalAttributes);
        using var target = copy.Open();
        var rewrite = _changed.GetValueOrDefault(WorkbookPackage.Normal(entry.FullName));
        using var source = rewrite is null ? entry.Open() : package.Open(entry);
        if (rewrite is null)
            source.CopyTo(target);
        else
            rewrite(source, target);
    }
}
