using System.Data.Common;
using ExamDocs.Register.Contents;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;
using NodaTime;

namespace ExamDocs.Register.Rows;

/// <summary>The bytes of a document that is to be kept.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Sha256">Of the bytes.</param>
/// <param name="Bytes">The whole document.</param>
internal sealed record KeptContent(string Number, string Sha256, byte[] Bytes);

/// <summary>
/// The bytes of documents: in the register itself, or at the place outside it that the register remembers. While they are moved they may
/// be at several places. Whatever is read is compared with its hash first.
/// </summary>
internal sealed class ContentRows(RegisterDatabase database, LogRows log, LocalDate today)
{
    /// <summary>So many are written to a place at a time: each waits for its answer.</summary>
    public const int AtOnce = 8;

    private readonly DbConnection _connection = database.Connection;

    public ContentStores Stores { get; } = new();

    /// <summary>The last day on which documents of a visit have to be kept; null where none is known.</summary>
    public Func<int, LocalDate?> KeepUntil { get; set; } = static _ => null;

    /// <summary>Called once bytes are at a place and nothing of them is recorded yet; where a test lets another run go on.</summary>
    internal Action AfterPut { get; set; } = static () => { };

    /// <summary>The place where bytes are kept from now on.</summary>
    public string Current() => Places()[^1];

    /// <summary>Every place where bytes of documents may be; the last one is that of new ones.</summary>
    public IReadOnlyList<string> Places()
    {
        var places = new List<string> { ContentAddress.Database };
        foreach (
            var (word, place) in _connection.Rows(
                row => (row.GetString(0), row.GetString(1)),
                "SELECT word, place FROM content_place ORDER BY position"
            )
        )
        {
            places.Remove(place);
            if (word is LogEntry.KeptAtWord)
                places.Add(place);
        }
        return places;
    }

    /// <summary>Whether the register itself has them all.</summary>
    public static bool AreInside(IReadOnlyList<string> places) => places is [ContentAddress.Database];

    /// <summary>Remembers, within the caller's transaction, that new bytes go to a place, or that a place has none any more.</summary>
    public void Enter(string word, string place)
    {
        var position = 0L;
        log.Append(at =>
        {
            position = at;
            return word is LogEntry.KeptAtWord ? LogEntry.KeptAt(at, place, today) : LogEntry.Cleared(at, place, today);
        });
        _connection.Execute("INSERT INTO content_place VALUES ($1, $2, $3, $4)", position, word, place, StoredDay.Of(today));
    }

    /// <summary>Makes bytes durable outside the register before anything of them is recorded; nothing where that is inside.</summary>
    /// <exception cref="ContentStoreException">The place cannot be reached or written.</exception>
    public void PutOutside(string place, IReadOnlyList<KeptContent> contents)
    {
        if (Outside(place) is not { } store)
            return;
        var until = contents.Select(c => store.Locks ? UntilOf(c.Number) : null).ToList();
        AllAtOnce(contents.Count, n => store.Put(contents[n].Sha256, contents[n].Bytes, until[n]));
        AfterPut();
    }

    /// <summary>Makes them part of the transaction that records them; nothing where their place is outside.</summary>
    public void PutInside(string place, KeptContent content)
    {
        if (Outside(place) is null)
            _connection.Execute("INSERT INTO content VALUES ($1, $2)", content.Number, content.Bytes);
    }

    /// <summary>Both, within the caller's transaction.</summary>
    public void Keep(KeptContent content)
    {
        var place = Current();
        PutOutside(place, [content]);
        PutInside(place, content);
    }

    /// <summary>The bytes of a document, compared with their hash.</summary>
    /// <exception cref="InvalidDataException">They are missing, or are not those that were recorded.</exception>
    /// <exception cref="ContentStoreException">A place where they may be cannot be reached.</exception>
    public byte[] Of(string number, string sha256)
    {
        IReadOnlyList<string> places;
        do
        {
            if (Inside(number) is { } bytes)
                return ContentStore.IsSound(bytes, sha256) ? bytes : throw Lost(number, "");
            places = Places();
            if (Outside(number, sha256, places) is { } found)
                return found;
            // Another run may be moving them: what was there when we asked for the places may be at a new one now.
        } while (!places.SequenceEqual(Places(), StringComparer.Ordinal) || Inside(number) is not null);
        throw Lost(number, AreInside(places) ? "" : $"{places[^1]} has nothing under {sha256}.");
    }

    /// <summary>The bytes of a document at the places outside the register, the newest first; null where none has them.</summary>
    public byte[]? Outside(string number, string sha256, IReadOnlyList<string> places)
    {
        var odd = (string?)null;
        foreach (var store in places.Reverse().Select(Outside).OfType<ContentStore>())
        {
            if (store.Find(sha256) is not { } bytes)
                continue;
            if (ContentStore.IsSound(bytes, sha256))
                return bytes;
            odd ??= $"{store.Place} has other bytes under {sha256}.";
        }
        return odd is null ? null : throw Lost(number, odd);
    }

    /// <summary>The bytes that the register itself has of a document; not compared.</summary>
    public byte[]? Inside(string number) =>
        _connection.Rows(row => row.GetFieldValue<byte[]>(0), "SELECT bytes FROM content WHERE number = $1", number).SingleOrDefault();

    /// <summary>The last day on which a document has to be kept; null where none is known.</summary>
    public LocalDate? UntilOf(string number) =>
        _connection.Rows(row => row.Integer(0), "SELECT visit FROM document WHERE number = $1", number) is [{ } visit]
            ? KeepUntil(visit)
            : null;

    /// <summary>The store at a place; null for the register itself.</summary>
    public ContentStore? Outside(string place) =>
        string.Equals(place, ContentAddress.Database, StringComparison.Ordinal) ? null : Stores.At(place);

    /// <summary>Does several things at once, and fails as the first of them that failed.</summary>
    public static void AllAtOnce(int count, Action<int> work)
    {
        try
        {
            Parallel.For(0, count, new ParallelOptions { MaxDegreeOfParallelism = AtOnce }, work);
        }
        catch (AggregateException several)
        {
            System.Runtime.ExceptionServices.ExceptionDispatchInfo.Throw(several.InnerExceptions[0]);
        }
    }

    private static InvalidDataException Lost(string number, string how) =>
        new(
            $"The register no longer holds {number} as it was issued."
                + (
                    how.Length == 0
                        ? ""
                        : $" {how} Put the file back under that name from a copy; examdocs register check names every one that is missing."
                )
        );
}
