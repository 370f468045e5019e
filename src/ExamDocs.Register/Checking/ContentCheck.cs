using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Checking;

/// <summary>Whether the bytes of documents are those that were issued, wherever they are kept.</summary>
internal sealed class ContentCheck(RegisterDatabase database, ContentRows contents)
{
    private readonly List<(string Number, string Sha256)> _missing = [];
    private IReadOnlyList<string>? _places;
    private string? _unreachable;

    public IEnumerable<string> Faults(DocumentStatus document)
    {
        var kept = database.Connection.Raw("SELECT bytes FROM content WHERE number = $1", document.Number);
        if (document.State is DocumentState.Issued && kept.Count == 0 && !ContentRows.AreInside(_places ??= contents.Places()))
            return Outside(document);
        return Inside(document, kept);
    }

    private static IEnumerable<string> Inside(DocumentStatus document, List<RawColumn[]> kept)
    {
        if (
            document.State is DocumentState.Issued
            && (kept.Count != 1 || !string.Equals(kept[0][0].Value, $"(bytes {document.Sha256})", StringComparison.Ordinal))
        )
            yield return $"The register no longer holds {document.Number} as it was issued.";
        else if (document.State is DocumentState.Void && kept.Count > 0)
            yield return $"{document.Number} is void, and the register holds a document of that number.";
    }

    private IReadOnlyList<string> Outside(DocumentStatus document)
    {
        if (_unreachable is not null)
            return [];
        try
        {
            if (contents.Outside(document.Number, document.Sha256!, _places!) is null)
                _missing.Add((document.Number, document.Sha256!));
            return [];
        }
        catch (InvalidDataException other)
        {
            return [other.Message];
        }
        catch (ContentStoreException unreachable)
        {
            _unreachable = unreachable.Message;
            return [];
        }
    }

    /// <summary>
    /// The documents whose bytes were not found, once more: another run may have moved them while the rest was looked at. To be asked
    /// when nothing is read as of an earlier moment any more.
    /// </summary>
    public IEnumerable<(string? Number, string Words)> Missing()
    {
        if (_unreachable is not null)
            yield return (null, $"The documents kept outside the register were not all looked at. {_unreachable}");
        foreach (var (number, sha256) in _missing)
        {
            if (Lost(number, sha256) is { } lost)
                yield return (number, lost);
        }
    }

    private string? Lost(string number, string sha256)
    {
        try
        {
            contents.Of(number, sha256);
            return null;
        }
        catch (Exception lost) when (lost is InvalidDataException or ContentStoreException)
        {
            return lost.Message;
        }
    }
}
