namespace ExamDocs.Templates.AuditPack;

/// <summary>
/// An audit pack's own pages: those of the reading copy before and behind the documents, and the index that a browser opens. A page beside
/// documents: it has no number, and no register knows it.
/// </summary>
public sealed class PackModel
{
    /// <summary>What links to pages of the reading copy begin with, until the pages are put together.</summary>
    private readonly string _linkStart;

    /// <param name="contents">All that the pack holds.</param>
    /// <param name="linkStart">What links to pages of the reading copy begin with.</param>
    /// <param name="letterhead">The issuer's; null for none.</param>
    /// <param name="softwareVersion">Version of the software that made it.</param>
    public PackModel(PackContents contents, string linkStart, Letterhead? letterhead, string softwareVersion) =>
        (Contents, _linkStart, Letterhead, SoftwareVersion) = (contents, linkStart, letterhead, softwareVersion);

    public PackContents Contents { get; }

    public Letterhead? Letterhead { get; }

    public string SoftwareVersion { get; }

    /// <summary>The pages before the documents, in the stretches in which they are printed.</summary>
    public IReadOnlyList<PackStretch> Front => field ??= PackStretch.Of(Contents.Gaps, Contents.Items, []);

    /// <summary>The pages behind the documents and the evidence.</summary>
    public IReadOnlyList<PackStretch> Back => field ??= PackStretch.Of([], Contents.Items, Contents.Documents);

    /// <summary>Documents by number.</summary>
    public IReadOnlyDictionary<string, PackDocument> ByNumber =>
        field ??= Contents.Documents.ToDictionary(d => d.Number, StringComparer.Ordinal);

    /// <summary>The address of a part of the reading copy.</summary>
    public string LinkTo(string key) => _linkStart + Uri.EscapeDataString(key);

    /// <summary>The address of a file of the pack, for a page that lies beside its folders.</summary>
    public static string AddressOf(string file) => string.Join('/', file.Split('/').Select(Uri.EscapeDataString));
}
