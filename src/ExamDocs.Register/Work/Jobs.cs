using NodaTime;

namespace ExamDocs.Register.Work;

/// <summary>A file that travels with a job: an input, a photo, one of the user's own rules, a letterhead.</summary>
/// <param name="Path">Where it lies among the files of the job, steps divided by /.</param>
/// <param name="Bytes">All of it.</param>
public sealed record JobFile(string Path, byte[] Bytes);

/// <summary>A job to be put on the list: issue these inputs in this way, as of that day.</summary>
/// <param name="Title">What it is, in a line for the list.</param>
/// <param name="Options">How it is to be issued; nothing here reads it.</param>
/// <param name="AsOf">The day as of which it is decided, and the day of issue.</param>
public sealed record JobToEnqueue(string Title, string Options, LocalDate AsOf)
{
    /// <summary>Most files of a job, inclusive; our own limit.</summary>
    public const int MostFiles = 5000;

    /// <summary>Most bytes of all files of a job, inclusive; our own limit.</summary>
    public const long MostBytes = 512L * 1024 * 1024;

    /// <summary>The references of its visits, folded: jobs of one visit are decided in the order in which they were asked for.</summary>
    public IReadOnlyList<string> References { get; init; } = [];

    /// <summary>The last visit in the register when it was asked for.</summary>
    public int KnownUpTo { get; init; }

    public IReadOnlyList<JobFile> Files { get; init; } = [];
}

/// <summary>A job as it is on the list.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Options">As it was given.</param>
/// <param name="AsOf">The day as of which it is decided, and the day of issue.</param>
/// <param name="KnownUpTo">The last visit in the register when it was asked for.</param>
/// <param name="Decided">What was decided; null where nobody has yet.</param>
public sealed record Job(int Number, string Options, LocalDate AsOf, int KnownUpTo, DecidedJob? Decided);

/// <summary>The visits of a job as the register remembers them: whoever prints a part of it decides them in the same way.</summary>
/// <param name="Visits">Number of each visit in the register, in the order of the inputs.</param>
/// <param name="Order">Places of the visits, in the order in which their documents are issued.</param>
/// <param name="Seen">The last visit that could be known when they were decided.</param>
public sealed record DecidedJob(IReadOnlyList<int> Visits, IReadOnlyList<int> Order, int Seen);

/// <summary>A part of a job: a stage of it, or a slice of the documents of that stage.</summary>
/// <param name="Job">Number of the job.</param>
/// <param name="Stage">0 decides; a stage begins once all before it are done.</param>
/// <param name="Slice">Which slice of it, from 0.</param>
/// <param name="Slices">Into how many it is divided; at least 1.</param>
public sealed record JobPart(int Job, int Stage, int Slice, int Slices);

/// <summary>A part that this worker has taken; its claim holds until its lease ends.</summary>
/// <param name="Part">The part.</param>
/// <param name="Attempts">How often it was begun since a document of it came out last, this time included.</param>
public sealed record ClaimedPart(JobPart Part, int Attempts);

/// <summary>What came of a part.</summary>
/// <param name="Documents">Numbers of the documents that it gave, those issued before included.</param>
/// <param name="IssuedBefore">How many of them were issued before.</param>
/// <param name="Refused">What was held back, as JSON; nothing here reads it.</param>
/// <param name="Said">Sentences for the user, a line each.</param>
public sealed record PartResult(IReadOnlyList<string> Documents, int IssuedBefore, string Refused, string Said);

/// <summary>How far a job is.</summary>
public enum JobState
{
    /// <summary>Nobody has begun with it, or its next part waits for a worker.</summary>
    Waiting,

    /// <summary>A worker is at it.</summary>
    Running,

    /// <summary>A part was tried as often as parts are, and failed; it is tried again where somebody asks for it.</summary>
    Failed,

    /// <summary>All is issued that may be.</summary>
    Done,

    /// <summary>It cannot be issued as it was given.</summary>
    Refused,

    /// <summary>Somebody took it back.</summary>
    Cancelled,
}

/// <summary>A line of the list of jobs.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Title">What it is.</param>
/// <param name="AskedBy">The role that asked for it.</param>
/// <param name="AskedAt">When, by the server's clock.</param>
/// <param name="State">How far it is.</param>
public sealed record ListedJob(int Number, string Title, string AskedBy, Instant AskedAt, JobState State)
{
    /// <summary>Version of the program that decided it, which prints it; null where it is not decided.</summary>
    public string? Version { get; init; }

    /// <summary>Documents that are out, those issued before included.</summary>
    public int Documents { get; init; }

    /// <summary>How many of them were issued before.</summary>
    public int IssuedBefore { get; init; }

    public int PartsDone { get; init; }

    /// <summary>0 where it is not decided.</summary>
    public int Parts { get; init; }

    /// <summary>Sentences about it, a line each.</summary>
    public IReadOnlyList<string> Said { get; init; } = [];
}
