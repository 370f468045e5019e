using ExamDocs.Core.Records;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Merging;

/// <summary>
/// Takes the visits and documents of another register into this one, in one transaction. What is here already stays as it is;
/// what comes in keeps the identity of the register that it came from, so that taking it in again changes nothing.
/// </summary>
internal sealed class RegisterMerge(
    RegisterDatabase database,
    DocumentRegister here,
    DocumentRegister other,
    Func<byte[], ExaminationRecord?> read,
    Func<IReadOnlySet<int>, IReadOnlyList<(int ByVisit, LineEnd End)>> ends
)
{
    public MergeResult Run()
    {
        if (other.Rows.Pending() is [var (pending, _, _), ..])
            return Refuse(
                $"{pending.Number} of {other.Place} is not out yet: its printing was interrupted. Issue its visit again there "
                    + "first, so that the number is settled."
            );
        if (other.Check() is [var fault, ..])
            return Refuse($"{other.Place} is not sound, and nothing is taken from it: {fault}");
        using var transaction = database.BeginWriting();
        var visits = new MergedVisits(database, here, other, read);
        visits.TakeIn();
        var documents = new MergedDocuments(database, here, other, visits);
        documents.TakeIn();
        visits.TakeEnds();
        foreach (var by in ends(visits.New.ToHashSet()).GroupBy(e => e.ByVisit))
            here.Rows.Ends.Store(by.Key, [.. by.Select(e => e.End)]);
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
