using ExamDocs.Core.Records;
using ExamDocs.Register.Checking;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Merging;

/// <summary>
/// Takes the visits and documents of another register into this one, in one transaction. What is here already stays as it is;
/// what comes in keeps the identity of the register that it came from, so that taking it in again changes nothing.
/// </summary>
internal sealed class RegisterMerge(
    RegisterRows here,
    RegisterRows other,
    Func<byte[], ExaminationRecord?> read,
    Func<IReadOnlySet<int>, IReadOnlyList<(int ByVisit, LineEnd End)>> ends
)
{
    public MergeResult Run()
    {
        if (other.Documents.Pending() is [var (pending, _, _), ..])
            return Refuse(
                $"{pending.Number} of {other.Database.Place} is not out yet: its printing was interrupted. Issue its visit again there "
                    + "first, so that the number is settled."
            );
        if (new RegisterCheck(other, new()).Run().Faults is [var fault, ..])
            return Refuse($"{other.Database.Place} is not sound, and nothing is taken from it: {fault}");
        using var transaction = here.Database.BeginWriting();
        var visits = new MergedVisits(here, other, read);
        visits.TakeIn();
        var documents = new MergedDocuments(here, other, visits);
        documents.TakeIn();
        visits.TakeEnds();
        foreach (var by in ends(visits.New.ToHashSet()).GroupBy(e => e.ByVisit))
            here.LineEnds.Store(by.Key, [.. by.Select(e => e.End)]);
        documents.End();
        transaction.Commit();
        return new(
            visits.New.Count,
            documents.New,
            visits.Known + documents.Known,
            [.. visits.Refused, .. documents.Refused],
            visits.Remarks
        )
        {
            NewVisits = visits.New,
        };
    }

    private static MergeResult Refuse(string why) => new(0, 0, 0, [why], []);
}
