using System.Data.Common;
using System.Text.Json;
using ExamDocs.Register.Contents;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;
using NodaTime;

namespace ExamDocs.Register;

/// <summary>Copies the bytes of documents to a place, from wherever they are, and compares them there.</summary>
/// <param name="rows">The register.</param>
/// <param name="target">The place; null for the register itself.</param>
internal sealed class ContentCopy(RegisterRows rows, ContentStore? target)
{
    /// <summary>Documents looked at together; their bytes are in memory at the same time.</summary>
    private const int Lot = 32;

    private readonly RegisterDatabase _database = rows.Database;
    private readonly DbConnection _connection = rows.Database.Connection;
    private readonly ContentRows _contents = rows.Contents;
    private readonly List<string> _faults = [];

    /// <summary>One sentence for each document that is nowhere as it was issued.</summary>
    public IReadOnlyList<string> Faults => _faults;

    /// <summary>
    /// Every number taken by now of which bytes were recorded; a lot is read once the one before is done. What is taken later goes where
    /// the register says then, and a run that issues without end is not run after.
    /// </summary>
    public IEnumerable<List<(string Number, string Sha256)>> Lots()
    {
        foreach (
            var (letter, year, last) in _connection.Rows(
                row => (row.GetString(0), row.GetInt32(1), row.GetInt32(2)),
                "SELECT letter, year, last FROM counter ORDER BY letter, year"
            )
        )
        {
            for (var after = 0; ; )
            {
                var lot = _connection.Rows(
                    row => (Number: row.GetString(0), Sha256: row.GetString(1), Sequence: row.GetInt32(2)),
                    $"""
                    SELECT number, sha256, sequence FROM document
                    WHERE letter = $1 AND year = $2 AND sequence > $3 AND sequence <= $4 AND state <> 'void' AND sha256 IS NOT NULL
                    ORDER BY sequence LIMIT {Lot}
                    """,
                    letter,
                    year,
                    after,
                    last
                );
                if (lot.Count == 0)
                    break;
                yield return lot.ConvertAll(d => (d.Number, d.Sha256));
                after = lot[^1].Sequence;
            }
        }
    }

    /// <summary>Sees to it that each of a lot is at the target, compared; one that is nowhere sound stops no other.</summary>
    /// <returns>How many were not there before, and those that are there now.</returns>
    public (int New, List<(string Number, string Sha256)> Sound) Copied(List<(string Number, string Sha256)> lot)
    {
        var places = _contents.Places();
        var missing = target is null ? Missing(lot) : MissingAt(target, lot);
        var (bytes, lost) = (new List<KeptContent>(), new HashSet<string>(StringComparer.Ordinal));
        foreach (var (number, sha256) in missing)
        {
            if (Source(number, sha256, places) is { } found)
                bytes.Add(new(number, sha256, found));
            else
                lost.Add(number);
        }
        if (target is null)
            TakeIn(bytes);
        else
            PutAt(target, bytes);
        List<(string Number, string Sha256)> there = [.. lot.Where(d => !lost.Contains(d.Number))];
        return (bytes.Count, target is null ? SoundInside(there) : there);
    }

    private static List<(string Number, string Sha256)> MissingAt(ContentStore target, List<(string Number, string Sha256)> lot)
    {
        var isThere = new bool[lot.Count];
        ContentRows.AllAtOnce(lot.Count, n => isThere[n] = target.Has(lot[n].Sha256));
        return [.. lot.Where((_, n) => !isThere[n])];
    }

    private List<(string Number, string Sha256)> Missing(List<(string Number, string Sha256)> lot)
    {
        var there = _connection
            .Rows(
                row => row.GetString(0),
                $"SELECT number FROM content WHERE number {_database.AmongTexts("$1")}",
                JsonSerializer.Serialize(lot.Select(d => d.Number))
            )
            .ToHashSet(StringComparer.Ordinal);
        return [.. lot.Where(d => !there.Contains(d.Number))];
    }

    private byte[]? Source(string number, string sha256, IReadOnlyList<string> places)
    {
        try
        {
            return _contents.Inside(number) is { } inside && target is not null
                ? ContentStore.IsSound(inside, sha256)
                    ? inside
                    : throw new InvalidDataException($"The register no longer holds {number} as it was issued.")
                : _contents.Outside(number, sha256, places) ?? _contents.Of(number, sha256);
        }
        catch (InvalidDataException lost)
        {
            // It may have become void since it was read.
            if (rows.Documents.Find(number) is { State: not DocumentState.Void } && !_faults.Contains(lost.Message, StringComparer.Ordinal))
                _faults.Add(lost.Message);
            return null;
        }
    }

    private void PutAt(ContentStore target, List<KeptContent> contents)
    {
        var until = contents.ConvertAll(c => target.Locks ? _contents.UntilOf(c.Number) : (LocalDate?)null);
        ContentRows.AllAtOnce(contents.Count, n =>
        {
            var (sha256, bytes) = (contents[n].Sha256, contents[n].Bytes);
            target.Put(sha256, bytes, until[n]);
            if (!target.Has(sha256))
                throw new ContentStoreException($"{target.Place} took {contents[n].Number} and does not give it back. Nothing is lost.");
        });
    }

    /// <summary>Into the register itself: only what is still without bytes there, and is not void meanwhile.</summary>
    private void TakeIn(List<KeptContent> contents)
    {
        if (contents.Count == 0)
            return;
        using var transaction = _database.BeginWriting();
        foreach (var content in contents)
            _connection.Execute(
                """
                INSERT INTO content (number, bytes) SELECT number, $2 FROM document
                WHERE number = $1 AND state <> 'void' AND sha256 = $3 AND NOT EXISTS (SELECT 1 FROM content WHERE number = $1)
                """,
                content.Number,
                content.Bytes,
                content.Sha256
            );
        transaction.Commit();
    }

    private List<(string Number, string Sha256)> SoundInside(List<(string Number, string Sha256)> lot) =>
        [.. lot.Where(d => _contents.Inside(d.Number) is { } bytes && ContentStore.IsSound(bytes, d.Sha256))];
}
