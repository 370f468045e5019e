using System.Collections.Concurrent;
using ExamDocs.Intake.Drafting;
using ExamDocs.UseCases.Recording;

namespace ExamDocs.Workbench.Desk;

/// <summary>The visits that are recorded here: read whole, changed by one page at a time, saved whole.</summary>
internal sealed class Drafts
{
    /// <summary>For ten seconds: a change takes some milliseconds.</summary>
    private const int Attempts = 1000;

    private readonly ConcurrentDictionary<string, Lock> _locks = new(StringComparer.Ordinal);

    /// <returns>Null where the visit was brought in as files.</returns>
    /// <exception cref="InvalidDataException">The draft cannot be read.</exception>
    public static RecordDraft? Of(DeskVisit visit) => visit.Draft is { } path ? DraftFile.Read(path) : null;

    /// <summary>Changes the draft; two pages at once change it one after the other.</summary>
    /// <param name="visit">A visit that is recorded here.</param>
    /// <param name="change">Makes the changed draft, and what is to be told of it.</param>
    /// <exception cref="IOException">It cannot be saved; what was there before still is.</exception>
    public T Change<T>(DeskVisit visit, Func<RecordDraft, (RecordDraft Draft, T Told)> change)
    {
        lock (_locks.GetOrAdd(visit.Id, _ => new Lock()))
        {
            using var alone = Alone(visit.DraftLock);
            var path = visit.Draft ?? throw new InvalidDataException("this visit is not recorded here");
            var before = DraftFile.Read(path);
            var (after, told) = change(before);
            if (!ReferenceEquals(before, after))
                DraftFile.Write(path, after);
            return told;
        }
    }

    /// <summary>Waits until no other program of this machine changes the draft.</summary>
    private static FileStream Alone(string path)
    {
        for (var left = Attempts; ; left--)
        {
            try
            {
                return new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, bufferSize: 0);
            }
            catch (IOException) when (left > 0 && File.Exists(path))
            {
                Thread.Sleep(10);
            }
        }
    }
}
