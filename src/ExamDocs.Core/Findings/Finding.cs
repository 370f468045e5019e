namespace ExamDocs.Core.Findings;

/// <summary>How serious a finding is. An error makes the record undecidable or a report unlawful.</summary>
public enum Severity
{
    Note,
    Warning,
    Error,
}

/// <summary>The words for severities in files.</summary>
public static class SeverityWords
{
    public static string Word(this Severity severity) =>
        severity switch
        {
            Severity.Error => "error",
            Severity.Warning => "warning",
            _ => "note",
        };

    /// <summary>The same for somebody to read.</summary>
    public static Message Said(this Severity severity) =>
        severity switch
        {
            Severity.Error => $"error",
            Severity.Warning => $"warning",
            _ => $"note",
        };

    /// <summary>As it begins a note on a cell.</summary>
    public static Message InCapitals(this Severity severity) =>
        severity switch
        {
            Severity.Error => $"ERROR",
            Severity.Warning => $"WARNING",
            _ => $"NOTE",
        };
}

/// <summary>What a check found in the record.</summary>
/// <param name="Code">Three letters for the room and a number, for example PAR005; never reused.</param>
/// <param name="Severity">See <see cref="Findings.Severity"/>.</param>
/// <param name="Path">JSON pointer into the record, for example /items/3/serial.</param>
/// <param name="Message">What is wrong.</param>
/// <param name="Hint">What to type instead.</param>
/// <param name="Source">The law, standard or practice behind it.</param>
public sealed record Finding(string Code, Severity Severity, string Path, Message Message, Message Hint, string Source)
{
    /// <summary>Id of the item that it is about; null where it is about no single item.</summary>
    public string? Item { get; init; }

    /// <summary>
    /// The place whose value does not count as it was typed because of what is found; null where every value counts. What is
    /// found wrong with that place besides follows from this finding.
    /// </summary>
    public string? LostAt { get; init; }

    /// <summary>Each place that it is about, where it says one thing of several.</summary>
    public IReadOnlyList<FurtherPlace> Also { get; init; } = [];

    /// <summary>What would explain it, where its rule knows of something besides its own place; null where it does not.</summary>
    public PossibleCause? PossibleCause { get; init; }

    /// <summary>
    /// The finding that it follows from, which itself follows from none and is no less grave; null where it stands by itself.
    /// Who puts that one right need not look at this one before.
    /// </summary>
    public Finding? FollowsFrom { get; init; }
}

/// <summary>What would explain a finding: that something else is wrong at a place.</summary>
/// <param name="Path">JSON pointer to that place.</param>
/// <param name="Code">
/// What would have to be found there; null where only a value that does not count as it was typed would explain it.
/// </param>
public sealed record PossibleCause(string Path, string? Code = null);

/// <summary>One of several places that a finding is about.</summary>
/// <param name="Path">JSON pointer into the record.</param>
/// <param name="Message">What is said of this place.</param>
public sealed record FurtherPlace(string Path, Message Message);
