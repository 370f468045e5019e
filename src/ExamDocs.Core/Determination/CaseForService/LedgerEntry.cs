using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Determination.CaseForService;

/// <summary>The steps of an examiner's argument, in their order.</summary>
public enum Heading
{
    Identity,
    History,
    Decisive,
    Judged,
    Advisory,
    Measurements,
    Limits,

    /// <summary>Earlier doubts, and what resolved them or leaves them open.</summary>
    Doubts,
}

/// <summary>Which way a piece of evidence points.</summary>
public enum Bearing
{
    /// <summary>It supports keeping the item in service.</summary>
    For,

    /// <summary>It is on record and carries no weight by itself.</summary>
    Neutral,

    /// <summary>It leaves something open.</summary>
    Open,

    /// <summary>It is against keeping the item in service.</summary>
    Against,
}

/// <summary>One piece of evidence.</summary>
/// <param name="Heading">The step of the argument it belongs to.</param>
/// <param name="Bearing">Which way it points.</param>
/// <param name="Said">The evidence, without a full stop.</param>
/// <param name="Source">Where it comes from: the law, the maker's document, the record itself.</param>
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

    /// <summary>True for a favourable or not-applicable answer without note or photo: it can be listed in short.</summary>
    public bool IsRoutine { get; init; }
}

/// <summary>The words for headings and bearings in files.</summary>
public static class LedgerWords
{
    public static string Word(this Heading heading) => heading.ToString().ToLowerInvariant();

    public static string Word(this Bearing bearing) => bearing.ToString().ToLowerInvariant();
}
