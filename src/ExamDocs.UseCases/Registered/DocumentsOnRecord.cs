using ExamDocs.Register;
using ExamDocs.Register.Model;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// The documents of a register about an item, and what later visits ended of them: asked visit by visit, or all read at once.
/// </summary>
/// <param name="register">The register.</param>
/// <param name="then">What of the register counts; null for all of it.</param>
internal sealed class DocumentsOnRecord(DocumentRegister register, RegisterThen? then = null)
{
    private readonly RegisterThen _then = then ?? new(register, null);
    private readonly Dictionary<int, IReadOnlyList<LineEnd>> _ends = [];
    private readonly Dictionary<int, ILookup<string, DocumentStatus>> _ofVisits = [];
    private ILookup<(int Visit, string Item), DocumentStatus>? _all;

    /// <summary>Reads all, so that many items can be asked about.</summary>
    public void ReadAll() =>
        _all ??= register
            .Documents()
            .Select(_then.Then)
            .OfType<DocumentStatus>()
            .Where(d => d.Visit is not null)
            .SelectMany(d => d.Items.Distinct(StringComparer.Ordinal).Select(item => (Key: (d.Visit!.Value, item), Document: d)))
            .ToLookup(d => d.Key, d => d.Document);

    /// <summary>What was issued from a visit about an item, current or not, by letter, year and number.</summary>
    public IEnumerable<DocumentStatus> About(string item, int visit) => _all is null ? Of(visit)[item] : _all[(visit, item)];

    /// <summary>A visit has many items, and a server is asked once for all.</summary>
    private ILookup<string, DocumentStatus> Of(int visit)
    {
        if (!_ofVisits.TryGetValue(visit, out var documents))
            _ofVisits[visit] = documents = _then
                .Of(visit)
                .SelectMany(d => d.Items.Distinct(StringComparer.Ordinal).Select(item => (item, Document: d)))
                .ToLookup(d => d.item, d => d.Document, StringComparer.Ordinal);
        return documents;
    }

    /// <summary>What later visits ended of what the documents of a visit say.</summary>
    public IReadOnlyList<LineEnd> EndsOf(int visit)
    {
        if (!_ends.TryGetValue(visit, out var ends))
            _ends[visit] = ends = [.. _then.EndsOf(visit).Select(e => e.End)];
        return ends;
    }
}
