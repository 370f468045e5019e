using ExamDocs.Core.Records;
using ExamDocs.Register.Model;
using ExamDocs.Register.Work;
using ExamDocs.UseCases.Issuing;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>A job of the list, in words.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Title">What it is.</param>
/// <param name="AskedBy">The role that asked for it.</param>
/// <param name="AskedAt">When, by the server's clock.</param>
/// <param name="State">How far it is, in words.</param>
/// <param name="Said">Sentences about it.</param>
public sealed record WorkLine(int Number, string Title, string AskedBy, Instant AskedAt, string State, IReadOnlyList<string> Said)
{
    /// <summary>True where somebody has to look at it.</summary>
    public bool IsHeld { get; init; }

    internal static WorkLine Of(ListedJob job) =>
        new(job.Number, job.Title, job.AskedBy, job.AskedAt, Words(job), job.Said)
        {
            IsHeld = job.State is JobState.Failed or JobState.Refused,
        };

    private static string Words(ListedJob job) =>
        job.State switch
        {
            JobState.Waiting when job.Version is { } version && !IsOurs(version) => $"waits for a worker of version {version}: {Done(job)}",
            JobState.Waiting when job.Parts == 0 => "waits",
            JobState.Waiting => $"waits: {Done(job)}",
            JobState.Running when job.Parts == 0 => "is being decided",
            JobState.Running => $"is being printed: {Done(job)}",
            JobState.Failed => $"has failed: {Done(job)}; examdocs work retry begins it again",
            JobState.Done => $"is done: {Count(job)}",
            JobState.Refused => "was refused",
            _ => $"was taken back: {Count(job)}",
        };

    private static bool IsOurs(string version) => string.Equals(version, ProgramVersion.Current, StringComparison.Ordinal);

    private static string Done(ListedJob job) => FormattableString.Invariant($"{job.PartsDone} of {job.Parts} parts, {Count(job)}");

    private static string Count(ListedJob job) =>
        FormattableString.Invariant($"{job.Documents} documents")
        + (job.IssuedBefore > 0 ? FormattableString.Invariant($", {job.IssuedBefore} of them issued before") : "");
}

/// <summary>
/// Tells what waits, runs and failed of the jobs that machines share, and begins again or takes back what somebody names.
/// </summary>
public static class ListWork
{
    /// <summary>How many jobs at an end are listed.</summary>
    private const int Ended = 20;

    /// <exception cref="RegisterRefusedException">The register is in a file, or has no list of work.</exception>
    public static IReadOnlyList<WorkLine> All(string place)
    {
        using var work = SharedWork.Open(place);
        return [.. work.List(Ended).Select(WorkLine.Of)];
    }

    /// <summary>One job; null where there is none of that number.</summary>
    public static WorkLine? Of(string place, int number)
    {
        using var work = SharedWork.Open(place);
        return work.Listed(number) is { } job ? WorkLine.Of(job) : null;
    }

    /// <returns>Why it is not begun again; null where it is.</returns>
    public static string? Retry(string place, int number)
    {
        using var work = SharedWork.Open(place);
        return work.Listed(number) is not { } job ? Missing(number)
            : work.Retry(number) ? null
            : $"job {number} is not begun again: it {WorkLine.Of(job).State}";
    }

    /// <returns>Why it is not taken back; null where it is.</returns>
    public static string? Cancel(string place, int number)
    {
        using var work = SharedWork.Open(place);
        return work.Listed(number) is not { } job ? Missing(number)
            : work.Cancel(number) ? null
            : $"job {number} is not taken back: it {WorkLine.Of(job).State}";
    }

    private static string Missing(int number) => FormattableString.Invariant($"there is no job {number}");
}
