using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Work;

/// <content>Ending a part, and with it a stage or the job.</content>
public sealed partial class SharedWork
{
    /// <summary>A job that cannot be issued as it was given: no part of it is begun again.</summary>
    public void Refuse(ClaimedPart claimed, string said)
    {
        ArgumentNullException.ThrowIfNull(claimed);
        lock (_one)
        {
            using var transaction = Connection.BeginTransaction();
            if (!Change(claimed, "state = 'done', run = NULL, lease_until = NULL"))
                return;
            Connection.Execute(
                $"UPDATE {WorkTables.Schema}.job SET state = 'refused', said = $2 WHERE number = $1",
                claimed.Part.Job,
                Short(said)
            );
            Tell();
            transaction.Commit();
        }
    }

    /// <summary>The visits are decided and remembered: the job is divided into its parts.</summary>
    /// <param name="claimed">Stage 0.</param>
    /// <param name="version">Version of the program that decided.</param>
    /// <param name="decided">What was decided.</param>
    /// <param name="parts">The parts of the stages after it; at least one, and of the last stage one alone.</param>
    /// <param name="said">Sentences for the user, a line each.</param>
    /// <returns>False where the claim was lost.</returns>
    public bool Divide(ClaimedPart claimed, string version, DecidedJob decided, IReadOnlyList<JobPart> parts, string said)
    {
        ArgumentNullException.ThrowIfNull(claimed);
        ArgumentNullException.ThrowIfNull(decided);
        ArgumentNullException.ThrowIfNull(parts);
        lock (_one)
        {
            using var transaction = Connection.BeginTransaction();
            if (!Change(claimed, "state = 'done', run = NULL, lease_until = NULL"))
                return false;
            Connection.Execute(
                $"""
                UPDATE {WorkTables.Schema}.job SET state = 'decided', version = $2, visits = $3, visit_order = $4, seen = $5, said = $6
                WHERE number = $1
                """,
                claimed.Part.Job,
                version,
                decided.Visits.ToArray(),
                decided.Order.ToArray(),
                decided.Seen,
                Short(said)
            );
            Connection.Execute(
                $"INSERT INTO {WorkTables.Schema}.part (job, stage, slice, slices) SELECT $1, * FROM unnest($2, $3, $4)",
                claimed.Part.Job,
                parts.Select(p => p.Stage).ToArray(),
                parts.Select(p => p.Slice).ToArray(),
                parts.Select(p => p.Slices).ToArray()
            );
            Tell();
            transaction.Commit();
            return true;
        }
    }

    /// <summary>A part is done; with the last one the job is, and its files are no longer kept here.</summary>
    /// <returns>False where the claim was lost: whoever has the part now finds its documents issued.</returns>
    public bool Finish(ClaimedPart claimed, PartResult result)
    {
        ArgumentNullException.ThrowIfNull(claimed);
        ArgumentNullException.ThrowIfNull(result);
        var job = claimed.Part.Job;
        lock (_one)
        {
            using var transaction = Connection.BeginTransaction();
            if (
                !Change(
                    claimed,
                    "state = 'done', run = NULL, lease_until = NULL, documents = $5, issued_before = $6, refused = $7, said = $8",
                    result.Documents.ToArray(),
                    result.IssuedBefore,
                    result.Refused,
                    Short(result.Said)
                )
            )
                return false;
            if (
                Connection.Execute(
                    $"""
                    UPDATE {WorkTables.Schema}.job SET state = 'done' WHERE number = $1
                    AND $2 = (SELECT max(stage) FROM {WorkTables.Schema}.part WHERE job = $1)
                    """,
                    job,
                    claimed.Part.Stage
                ) > 0
            )
                Connection.Execute($"DELETE FROM {WorkTables.Schema}.file WHERE job = $1", job);
            Tell();
            transaction.Commit();
            return true;
        }
    }
}
