using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>What a worker is asked to do.</summary>
public sealed record WorkRequest
{
    /// <summary>Address of a register on a server.</summary>
    public required string RegisterPath { get; init; }

    /// <summary>Tells the day by this machine: a job dated far from it is refused.</summary>
    public required Func<LocalDate> Today { get; init; }

    /// <summary>Ends once nothing is left to do; else it waits for the next job.</summary>
    public bool UntilEmpty { get; init; }

    /// <summary>
    /// How long others leave a part to a worker that shows no sign of life; longer than the server takes to end the session of a machine
    /// that is gone, so that its numbers are settled by then.
    /// </summary>
    public TimeSpan Lease { get; init; } = TimeSpan.FromMinutes(3);

    /// <summary>How often it looks for work where nobody told of any; what is told may be missed.</summary>
    public TimeSpan Poll { get; init; } = TimeSpan.FromSeconds(5);

    /// <summary>Told in a line what is done; null for nobody.</summary>
    public Action<string>? Told { get; init; }
}

/// <summary>What a worker did.</summary>
/// <param name="Parts">Parts of jobs.</param>
/// <param name="Documents">Documents issued by it.</param>
/// <param name="Pages">Pages printed for other machines.</param>
/// <param name="Held">Jobs that were refused, or of which a part failed, while it worked.</param>
public sealed record WorkResult(int Parts, int Documents, int Pages, int Held);
