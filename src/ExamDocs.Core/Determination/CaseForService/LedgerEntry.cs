using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Determination.CaseForService;

/// <summary>The steps of an examiner's argument, in the order in which they are argued.</summary>
public enum Heading
{
    Identity,
    History,
    Decisive,
    Judged,
    Advisory,
    Measurements,
    Limits,

    /// <summary>Doubts there were, and what resolved them or leaves them open.</summary>
    Doubts,
}

/// <summary>Which way a piece of evidence points.</summary>
public enum Bearing
{
    /// <summary>It speaks for keeping the item in service.</summary>
    For,

    /// <summary>It is on record and weighs nothing by itself.</summary>
    Neutral,

    /// <summary>It leaves something open.</summary>
    Open,

    /// <summary>It speaks against keeping the item in service.</summary>
    Against,
}

/// <summary>One line of the ledger of evidence.</summary>
/// <param name="Heading">The step of the argument it belongs to.</param>
/// <param name="Bearing">Which way it points.</param>
/// <param name="Said">The evidence, without a full stop.</param>
/// <param name="Source">What it rests on: the law, the maker's document, the record itself.</param>
public sealed record LedgerEntry(Heading Heading, Bearing Bearing, Sentence Said, string Source)
{
    /// <summary>The evidence in English.</summary>
    public string Text => Said.Text;

    /// <summary>Code of the outcome rule or finding that says the same; null where none does.</summary>
    public string? Code { get; init; }

    /// <summary>Identifier of the criterion observed; null for other evidence.</summary>
    public string? Criterion { get; init; }

    /// <summary>The answer given to the criterion; null for other evidence, and where it cannot be read.</summary>
    public ObservedState? State { get; init; }

    /// <summary>An answer without a note that leaves nothing to be said beyond itself.</summary>
    public bool IsRoutine { get; init; }
}

/// <summary>Words for headings and bearings as they stand in files.</summary>
public static class LedgerWords
{
    public static string Word(this Heading heading) => heading.ToString().ToLowerInvariant();

    public static string Word(this Bearing bearing) => bearing.ToString().ToLowerInvariant();
}
