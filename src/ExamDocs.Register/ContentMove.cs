using System.Data.Common;
using System.Text.Json;
using ExamDocs.Register.Contents;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;
using NodaTime;

namespace ExamDocs.Register;

/// <summary>
/// Moves the bytes of all documents to another place while other runs go on: everything is copied and compared, new bytes go there from
/// then on, and only then is each document compared there once more and dropped from where it was. Killed at any moment, it is
/// simply run again.
/// </summary>
internal sealed class ContentMove(RegisterRows rows, ContentAddress to)
{
    /// <summary>Documents looked at together; their bytes are in memory at the same time.</summary>
    private const int Lot = 32;

    private readonly RegisterDatabase _database = rows.Database;
    private readonly DbConnection _connection = rows.Database.Connection;
    private readonly ContentRows _contents = rows.Contents;
    private readonly List<string> _faults = [];
    private readonly List<string> _stayed = [];

    /// <summary>Called after each step and each lot; where a test stops a run.</summary>
    internal Action<string> After { get; init; } = static _ => { };

    /// <exception cref="RegisterRefusedException">This user may not move documents, or another run moves them elsewhere.</exception>
    /// <exception cref="ContentStoreException">A place cannot be reached or written.</exception>
    public ContentMoved Run()
    {
        if (!_database.MayMoveContent)
            throw new RegisterRefusedException(
                $"Only the owner of {_database.Place} may say where documents are kept (docs/shared-register.md)."
            );
        var target = _contents.Outside(to.Text);
        target?.Prepare();
        After("prepared");
        var copied = Lots().Sum(lot => Copied(lot, target).New);
        After("copied");
        Switch();
        After("switched");
        // Two documents may have the same bytes: what one of them needs is not dropped before all of them are in the register.
        if (target is null)
            copied += Lots().Sum(lot => Copied(lot, target).New);
        var old = _contents.Places().Where(p => !IsTarget(p)).ToList();
        if (old.Count > 0)
        {
            foreach (var lot in Lots())
                Drop(lot, target, old);
            After("dropped");
            Clear(old);
        }
        return new(to.Text, copied, _faults, _stayed);
    }

    private bool IsTarget(string place) => string.Equals(place, to.Text, StringComparison.Ordinal);

    /// <summary>Every number of which bytes were recorded, by letter, year and number; a lot is read once the one before is done.</summary>
    private IEnumerable<List<(string Number, string Sha256)>> Lots()
    {
        var (letter, year, sequence) = ("", 0, 0);
        while (true)
        {
            var lot = _connection.Rows(
                row =>
                    (
                        Number: row.GetString(0),
                        Sha256: row.GetString(1),
                        Letter: row.GetString(2),
                        Year: row.GetInt32(3),
                        Sequence: row.GetInt32(4)
                    ),
                $"""
                SELECT number, sha256, letter, year, sequence FROM document
                WHERE (letter, year, sequence) > ($1, $2, $3) AND state <> 'void' AND sha256 IS NOT NULL
                ORDER BY letter, year, sequence LIMIT {Lot}
                """,
                letter,
                year,
                sequence
            );
            if (lot.Count == 0)
                yield break;
            yield return lot.ConvertAll(d => (d.Number, d.Sha256));
            (letter, year, sequence) = (lot[^1].Letter, lot[^1].Year, lot[^1].Sequence);
        }
    }

    /// <summary>Sees to it that each of a lot is at the target, compared; one that is nowhere sound is a fault and stops no other.</summary>
    /// <returns>How many were not there before, and those that are there now.</returns>
    private (int New, List<(string Number, string Sha256)> Sound) Copied(List<(string Number, string Sha256)> lot, ContentStore? target)
    {
        var places = _contents.Places();
        var missing = target is null ? Missing(lot) : MissingAt(target, lot);
        var (bytes, lost) = (new List<KeptContent>(), new HashSet<string>(StringComparer.Ordinal));
        foreach (var (number, sha256) in missing)
        {
            if (Source(number, sha256, places, target) is { } found)
                bytes.Add(new(number, sha256, found));
            else
                lost.Add(number);
        }
        if (target is null)
            TakeIn(bytes);
        else
            PutAt(target, bytes);
        After("lot copied");
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
                $"SELECT number FROM content WHERE number IN {_database.Values("$1")}",
                JsonSerializer.Serialize(lot.Select(d => d.Number))
            )
            .ToHashSet(StringComparer.Ordinal);
        return [.. lot.Where(d => !there.Contains(d.Number))];
    }

    private byte[]? Source(string number, string sha256, IReadOnlyList<string> places, ContentStore? target)
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
                throw new ContentStoreException($"{target.Place} took {contents[n].Number} and does not give it back. Nothing was moved.");
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

    private void Switch()
    {
        using var transaction = _database.BeginWriting();
        if (IsTarget(_contents.Current()))
            return;
        _contents.Enter(LogEntry.KeptAtWord, to.Text);
        transaction.Commit();
    }

    /// <summary>
    /// What is at the target, compared after the switch, goes from the old places. Nobody may have switched elsewhere meanwhile: who did
    /// may be dropping from here.
    /// </summary>
    private void Drop(List<(string Number, string Sha256)> lot, ContentStore? target, List<string> old)
    {
        // Whatever was recorded before the switch and after its lot was copied is copied now.
        var (_, sound) = Copied(lot, target);
        using var transaction = _database.BeginWriting();
        if (!IsTarget(_contents.Current()))
            throw new RegisterRefusedException(
                $"Another run is moving the documents to {_contents.Current()}; nothing is lost. Run the command again for the place that "
                    + "is wanted."
            );
        foreach (var place in old)
        {
            if (_contents.Outside(place) is { } store)
                Drop(sound, store);
            else
                _database.WithoutGuard(Guards.KeepsIssuedBytes, () => DropInside(sound));
        }
        transaction.Commit();
        After("lot dropped");
    }

    private void Drop(List<(string Number, string Sha256)> lot, ContentStore store)
    {
        try
        {
            ContentRows.AllAtOnce(lot.Count, n => store.Delete(lot[n].Sha256));
        }
        catch (ContentStoreException refused)
        {
            // A bucket may keep what is locked, and a place that is gone has nothing to drop: the documents are where they should be.
            if (!_stayed.Contains(refused.Message, StringComparer.Ordinal))
                _stayed.Add(refused.Message);
        }
    }

    private void DropInside(List<(string Number, string Sha256)> lot) =>
        _connection.Execute(
            $"DELETE FROM content WHERE number IN {_database.Values("$1")}",
            JsonSerializer.Serialize(lot.Select(d => d.Number))
        );

    private List<(string Number, string Sha256)> SoundInside(List<(string Number, string Sha256)> lot) =>
        [.. lot.Where(d => _contents.Inside(d.Number) is { } bytes && ContentStore.IsSound(bytes, d.Sha256))];

    /// <summary>Nothing of ours is there any more; where something stayed, the next move tries again.</summary>
    private void Clear(List<string> old)
    {
        if (_faults.Count > 0 || _stayed.Count > 0)
            return;
        using (var transaction = _database.BeginWriting())
        {
            if (!IsTarget(_contents.Current()))
                return;
            foreach (var place in old)
                _contents.Enter(LogEntry.ClearedWord, place);
            transaction.Commit();
        }
        _database.GiveBackSpace();
    }
}
