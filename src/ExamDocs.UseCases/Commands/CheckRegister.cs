using ExamDocs.Core;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Json;
using ExamDocs.Register;
using ExamDocs.Register.Checking;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>Whether a register is sound, and whether the records in it give what is stored of them.</summary>
public static class CheckRegister
{
    /// <param name="place">The register; nothing in it is changed.</param>
    /// <param name="kept">Checkpoints that were kept elsewhere.</param>
    /// <param name="before">What an earlier check found sound and is not looked at again.</param>
    /// <param name="rules">The categories and regimes that records can name.</param>
    /// <param name="today">The day of the check.</param>
    /// <exception cref="FileNotFoundException">There is no register at that place.</exception>
    public static CheckedRegister Run(string place, CheckpointsRead kept, CheckedBefore before, KnownRules rules, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(kept);
        ArgumentNullException.ThrowIfNull(before);
        using var register = DocumentRegister.OpenToRead(place, today);
        var found = Run(register, kept.Checkpoints, rules, before.Checkpoint);
        return new(found.Faults, [.. found.Notes, .. ByOthers(found)], found.Faults.Count == 0 ? Sound(register, found.Log) : null)
        {
            NotLookedAt = before.Checkpoint is { } since ? NotLookedAt(since, before.Day) : null,
            File = found.Log is { } log ? CheckpointFile.Write(log, today, signer: null, CheckpointFile.CheckedFormatName) : null,
        };
    }

    private static string NotLookedAt(Checkpoint since, LocalDate? day) =>
        FormattableString.Invariant(
            $"Not looked at again were the rows, documents and outcomes of the first {since.Size} entries of the log, "
        )
        + FormattableString.Invariant(
            $"which a check of {day:uuuu-MM-dd} found sound, nor the pages of the database: only that the log still "
        )
        + "begins as it did then. What was changed there since is found by a check without --since, and when it is used.";

    /// <param name="register">Opened.</param>
    /// <param name="kept">Checkpoints that were kept elsewhere.</param>
    /// <param name="rules">The categories and regimes that records can name.</param>
    /// <param name="since">The log as it was when an earlier check found all of it sound; null to look at everything.</param>
    public static RegisterCheckResult Run(
        DocumentRegister register,
        IReadOnlyList<Checkpoint> kept,
        KnownRules rules,
        Checkpoint? since = null
    )
    {
        ArgumentNullException.ThrowIfNull(register);
        return register.Check(
            new RegisterCheckRequest
            {
                Kept = kept,
                Since = since,
                Read = json => EmbeddedRecord.Read(json, "register").Record,
                Decide = (visit, json) => Decided(register, visit, json, rules),
                Version = ProgramVersion.Current,
            }
        );
    }

    private static IEnumerable<string> ByOthers(RegisterCheckResult found) =>
        found.DecidedByOthers == 0
            ? []
            :
            [
                FormattableString.Invariant($"{found.DecidedByOthers} records were decided by another version, or with rules of your own; ")
                    + FormattableString.Invariant($"{found.DecidedOtherwise} of them come out otherwise now"),
            ];

    private static string Sound(DocumentRegister register, Checkpoint? log)
    {
        var (documents, visits) = register.Counted();
        return FormattableString.Invariant($"{register.Place} is sound: {documents} documents, {visits} records, ")
            + FormattableString.Invariant($"log of {log?.Size ?? 0} entries");
    }

    /// <summary>A visit decided again from its record, with the visits that it could know, as of its day.</summary>
    private static OutcomesAgain? Decided(DocumentRegister register, RememberedVisit visit, byte[] json, KnownRules rules)
    {
        var read = EmbeddedRecord.Read(json, "register");
        if (
            read.Record is not { } record
            || RecordSizeLimit.Of(record, read.Findings) is not null
            || (visit.AsOf ?? visit.StoredOn) is not { } asOf
        )
            return null;
        var known = new RegisterKnowledge(register, visit.Seen ?? visit.Visit, visit.Origin) { AsStored = true };
        var decided = DetermineVisits.Of([new VisitToDecide(record, read.Findings, visit.Sha256)], known, asOf, rules)[0];
        return new(RememberVisit.Of(decided.Visit).Outcomes)
        {
            Caveat =
                visit.Origin is not null && record.Releases.Any(r => r.Document is not null)
                    ? "It came from another register, and releases by a document that may have stayed there."
                    : null,
        };
    }
}
