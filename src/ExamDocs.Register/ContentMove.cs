using System.Text.Json;
using ExamDocs.Register.Contents;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register;

/// <summary>
/// Moves the bytes of all documents to another place while other runs go on: everything is copied and compared, new bytes go there from
/// then on, and only then is each document compared there once more and dropped from where it was. Killed at any moment, it is
/// simply run again.
/// </summary>
internal sealed class ContentMove(RegisterRows rows, ContentAddress to)
{
    private readonly RegisterDatabase _database = rows.Database;
    private readonly ContentRows _contents = rows.Contents;
    private readonly ContentStore? _target = to.IsDatabase ? null : rows.Contents.Outside(to.Text);
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
        _target?.Prepare(rows.Identity);
        var copy = new ContentCopy(rows, _target);
        After("prepared");
        var copied = copy.Lots().Sum(lot => Copied(copy, lot).New);
        After("copied");
        Switch();
        After("switched");
        // Two documents may have the same bytes: what one of them needs is not dropped before all of them are in the register.
        if (_target is null)
            copied += copy.Lots().Sum(lot => Copied(copy, lot).New);
        var old = _contents.Places().Where(p => !IsTarget(p)).ToList();
        if (old.Count > 0)
        {
            List<string> others = [.. old.Where(place => IsElsewhere(place))];
            foreach (var lot in copy.Lots())
                Drop(copy, lot, others);
            After("dropped");
            Clear(old, copy.Faults.Count);
        }
        return new(to.Text, copied, copy.Faults, _stayed);
    }

    /// <summary>
    /// Whether what is dropped at a place stays at the target: another address may lead to the same place. Where that cannot be told,
    /// nothing is dropped.
    /// </summary>
    private bool IsElsewhere(string place)
    {
        if (_target is null || _contents.Outside(place) is not { } store)
            return true;
        try
        {
            return !_target.IsSameAs(store);
        }
        catch (ContentStoreException unreachable)
        {
            _stayed.Add(unreachable.Message);
            return false;
        }
    }

    private (int New, List<(string Number, string Sha256)> Sound) Copied(ContentCopy copy, List<(string Number, string Sha256)> lot)
    {
        var found = copy.Copied(lot);
        After("lot copied");
        return found;
    }

    private bool IsTarget(string place) => string.Equals(place, to.Text, StringComparison.Ordinal);

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
    private void Drop(ContentCopy copy, List<(string Number, string Sha256)> lot, List<string> old)
    {
        // Whatever was recorded before the switch and after its lot was copied is copied now.
        var (_, sound) = Copied(copy, lot);
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
        _database.Connection.Execute(
            $"DELETE FROM content WHERE number {_database.AmongTexts("$1")}",
            JsonSerializer.Serialize(lot.Select(d => d.Number))
        );

    /// <summary>Nothing of ours is there any more; where something stayed, the next move tries again.</summary>
    private void Clear(List<string> old, int faults)
    {
        if (faults > 0 || _stayed.Count > 0)
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
