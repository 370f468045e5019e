using System.Security.Cryptography;

namespace ExamDocs.Workbench.Desk;

/// <summary>The folder of what lies on the desk: a folder for each visit, which outlives the program.</summary>
internal sealed class DeskFolder(WorkbenchRequest request)
{
    private readonly string _root = Path.Combine(Path.GetFullPath(request.DataFolder), "desk");

    /// <summary>All visits, the one touched last first.</summary>
    public IReadOnlyList<DeskVisit> Visits =>
        Directory.Exists(_root)
            ?
            [
                .. Directory
                    .EnumerateDirectories(_root)
                    .Select(folder => Find(Path.GetFileName(folder)))
                    .OfType<DeskVisit>()
                    .OrderByDescending(v => v.TouchedAt),
            ]
            : [];

    /// <summary>The visit of this id; null where there is none.</summary>
    public DeskVisit? Find(string id)
    {
        // An id names one folder beneath ours and nothing else.
        if (id.Length is 0 or > 40 || !id.All(char.IsAsciiHexDigitLower))
            return null;
        var folder = Path.Combine(_root, id);
        return Directory.Exists(Path.Combine(folder, DeskVisit.Round(1))) ? new DeskVisit(id, folder) : null;
    }

    /// <summary>Puts what was dropped on the desk as a new visit.</summary>
    /// <exception cref="IOException">The disk is full, or the folder cannot be written.</exception>
    public async Task<DeskVisit> AddAsync(IReadOnlyList<DroppedFile> files, CancellationToken cancellation)
    {
        var id = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(8));
        var visit = new DeskVisit(id, Path.Combine(_root, id));
        await visit.AddRoundAsync(files, cancellation);
        return visit;
    }
}

/// <summary>A file that somebody dropped.</summary>
/// <param name="Name">As the browser names it; not to be trusted.</param>
/// <param name="Open">Opens its bytes.</param>
internal sealed record DroppedFile(string Name, Func<Stream> Open)
{
    /// <summary>Not dropped, but started here.</summary>
    public bool IsDraft { get; init; }
}
