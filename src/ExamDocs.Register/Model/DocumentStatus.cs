using System.Text.Json;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Register.Model;

/// <summary>How far a number has come.</summary>
public enum DocumentState
{
    /// <summary>Taken; not out yet.</summary>
    Pending,

    /// <summary>Out.</summary>
    Issued,

    /// <summary>Taken, and never out.</summary>
    Void,
}

/// <summary>Why a document that is out is no longer current.</summary>
public enum DocumentEnd
{
    /// <summary>Another takes its place.</summary>
    Replaced,

    /// <summary>It was taken back, and nothing takes its place.</summary>
    Withdrawn,

    /// <summary>What a later visit found about its items ended it.</summary>
    Ended,
}

/// <summary>All that a register knows of a number.</summary>
public sealed record DocumentStatus
{
    public required string Number { get; init; }

    public required string Kind { get; init; }

    public required string JobKey { get; init; }

    /// <summary>Ids of the items it is about, in the order given.</summary>
    public IReadOnlyList<string> Items { get; init; } = [];

    /// <summary>
    /// Full path of the folder it was first written to, on the machine that wrote it; empty where its bytes are kept here alone.
    /// </summary>
    public required string Folder { get; init; }

    public required DocumentState State { get; init; }

    /// <summary>Of the file; lower-case hexadecimal; null where it was not printed.</summary>
    public string? Sha256 { get; init; }

    /// <summary>Null where it was not printed.</summary>
    public int? Pages { get; init; }

    /// <summary>Outcome of each item as a JSON object; null where it was not printed.</summary>
    public string? OutcomesJson { get; init; }

    /// <summary>Null where it is not void.</summary>
    public string? VoidReason { get; init; }

    /// <summary>Null where it is not out, or was issued before days were kept.</summary>
    public LocalDate? IssuedOn { get; init; }

    public string? Language { get; init; }

    /// <summary>The visit that it was made from; null where not known.</summary>
    public int? Visit { get; init; }

    /// <summary>Number of the document that it is a copy of.</summary>
    public string? CopyOf { get; init; }

    /// <summary>Why it is no longer current; null where it is, or is not out.</summary>
    public DocumentEnd? Ended { get; init; }

    public LocalDate? EndedOn { get; init; }

    public string? EndedReason { get; init; }

    /// <summary>Lines of it that no longer hold; it may be current for its other items.</summary>
    public IReadOnlyList<EndedLine> EndedLines { get; init; } = [];

    /// <summary>Identity of the register that gave out its number; null for this one.</summary>
    public string? Origin { get; init; }

    /// <summary>What it replaces, or is to replace once it is out.</summary>
    public IReadOnlyList<Replacement> Replaces { get; init; } = [];

    /// <summary>Numbers of what replaced it; empty where nothing did.</summary>
    public IReadOnlyList<string> ReplacedBy { get; init; } = [];

    public bool IsCurrent => State is DocumentState.Issued && Ended is null;

    /// <summary>The items of which it says that they may be used, each with the word of its outcome.</summary>
    /// <returns>Null where its outcomes cannot be read.</returns>
    public IReadOnlyList<(string Item, string Outcome)>? Usable()
    {
        if (OutcomesJson is null)
            return [];
        try
        {
            // Not by reflection: one command asks once.
            using var outcomes = JsonDocument.Parse(OutcomesJson);
            return
            [
                .. outcomes
                    .RootElement.EnumerateObject()
                    .Select(o => (Item: o.Name, Outcome: o.Value.GetString() ?? ""))
                    .Where(o => OutcomeWords.Find(o.Outcome) is Outcome.Fit or Outcome.FitUntil),
            ];
        }
        catch (Exception unread) when (unread is JsonException or InvalidOperationException)
        {
            return null;
        }
    }

    internal IssuedDocument Issued() => new(Number, Kind, JobKey, Items, Folder, Sha256!, Pages!.Value, OutcomesJson!);
}
