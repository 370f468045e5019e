using ExamDocs.Core.Identity;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Register.Work;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Registered;

namespace ExamDocs.UseCases.Working;

/// <summary>Whether the visits of a job are still the versions that hold: a job may be printed long after it was asked for.</summary>
/// <param name="work">Where the job is.</param>
/// <param name="job">The job.</param>
/// <param name="read">Its readable inputs.</param>
/// <param name="register">The register.</param>
internal sealed class JobVersions(SharedWork work, Job job, IReadOnlyList<ReadVisits> read, DocumentRegister register)
{
    private readonly IReadOnlyList<(string? Reference, string? Employer, string Sha256)> _versions = [.. DecideRun.Versions(read)];

    /// <summary>
    /// To store this version of a visit now would make it the latest: it must not take the place of one that somebody recorded after the
    /// job was asked for. Those of jobs asked for before are earlier ones.
    /// </summary>
    /// <exception cref="JobRefusedException">There is such a version of one of them.</exception>
    public void RequireNoneSince()
    {
        foreach (var version in _versions)
        {
            var since = VersionsOf(version)
                .Where(v => v.Visit > job.KnownUpTo && !string.Equals(v.Sha256, version.Sha256, StringComparison.Ordinal))
                .Select(v => v.Visit)
                .ToList();
            if (since.Count > 0 && since.Except(work.StoredByEarlierJobs(job.Number, since)).Any())
                throw Overtaken(version.Reference);
        }
    }

    /// <summary>A later version of a visit holds from the moment on in which it is recorded: nothing more is issued of this one.</summary>
    /// <param name="stored">The visits as they were decided.</param>
    /// <exception cref="JobRefusedException">There is a later version of one of them.</exception>
    public void RequireLatest(DecidedJob stored)
    {
        foreach (var (place, version) in _versions.Index())
        {
            if (VersionsOf(version).Any(v => v.Visit > stored.Visits[place]))
                throw Overtaken(version.Reference);
        }
    }

    /// <summary>What a job says of its visits is taken for hostile, like its files: the register knows what was decided.</summary>
    /// <param name="run">Decides them.</param>
    /// <param name="stored">The visits as they were decided.</param>
    /// <exception cref="JobRefusedException">The register has them otherwise.</exception>
    public DecideRun DecidedAgain(RegisteredRun run, DecidedJob stored)
    {
        var isSound =
            stored.Visits.All(v => v >= 1 && v <= stored.Seen)
            && stored.Order.Order().SequenceEqual(Enumerable.Range(0, stored.Visits.Count));
        var decided = isSound ? run.Again(read, stored.Visits, stored.Seen) : null;
        return decided is not null && decided.IsAsStored(register)
            ? decided
            : throw new JobRefusedException(
                "its visits, or what was decided of them, are not those that the register has: put it on the list anew"
            );
    }

    private IEnumerable<RememberedVisit> VersionsOf((string? Reference, string? Employer, string Sha256) version) =>
        version.Reference is { } reference
            ? register.Visits.OfReference(reference).Where(v => FirmName.MayBeSame(v.Employer, version.Employer))
            : [];

    private static JobRefusedException Overtaken(string? reference) =>
        new(
            $"another version of {reference} was recorded after this job was asked for, and holds now; what is issued of this one stays "
                + "in the register. Ask for it again if it is to be issued all the same"
        );
}
