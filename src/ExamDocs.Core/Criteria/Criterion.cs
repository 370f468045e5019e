using ExamDocs.Core.Records;

namespace ExamDocs.Core.Criteria;

/// <summary>How serious a defect against the criterion is.</summary>
public enum CriterionClass
{
    /// <summary>A defect ends the item's service.</summary>
    Decisive,

    /// <summary>Weighed with the rest of the evidence.</summary>
    Judged,

    /// <summary>Normal wear, to be noted.</summary>
    Advisory,
}

/// <summary>By what means a criterion is examined.</summary>
public enum Means
{
    Look,
    Feel,
    Measure,
    Operate,
    Ask,
    Read,
}

/// <summary>What a category, or the part of it that a criterion concerns, is made of.</summary>
public enum MaterialFamily
{
    Textile,
    Plastic,
    Metal,
    Mixed,
}

/// <summary>One thing examined on a category of item.</summary>
public sealed record Criterion
{
    /// <summary>Identifier in the record, unique within its category: lower case and hyphens.</summary>
    public required string Id { get; init; }

    /// <summary>The question in plain words; <c>clear</c> is the favourable answer.</summary>
    public required string Question { get; init; }

    public required IReadOnlyList<Means> Means { get; init; }

    public required CriterionClass Class { get; init; }

    /// <summary>A required criterion without an observation leaves the item undetermined.</summary>
    public bool Required { get; init; } = true;

    public bool AllowsNoted { get; init; }

    public bool AllowsNotApplicable { get; init; }

    /// <summary>True only for what can only be asked: then <c>no-sign</c> means nobody to ask, and no sign found.</summary>
    public bool AllowsNoSign { get; init; }

    /// <summary>True where only a release of a record in error ends a withdrawal for it.</summary>
    public bool NeverReleasable { get; init; }

    public required MaterialFamily Material { get; init; }

    /// <summary>Published source, or the words "common practice, no source".</summary>
    public required string Source { get; init; }

    /// <summary>Every answer to it in an examination, also one with a misspelt state; observations without a state are left out.</summary>
    public IEnumerable<Observation> AnswersIn(Examination examination) =>
        examination.Observations.Where(o => string.Equals(o.Criterion, Id, StringComparison.Ordinal) && o.StateAsTyped is not null);

    /// <summary>True where it is required and an examination has no answer to it, or the answer <c>not-examined</c>.</summary>
    public bool IsMissingIn(Examination examination)
    {
        if (!Required)
            return false;
        var isAnswered = false;
        foreach (var answer in AnswersIn(examination))
        {
            if (answer.State is ObservedState.NotExamined)
                return true;
            isAnswered = true;
        }
        return !isAnswered;
    }

    /// <summary>True where the criterion may be answered with this state.</summary>
    public bool Allows(ObservedState state) =>
        state switch
        {
            ObservedState.Noted => AllowsNoted,
            ObservedState.NotApplicable => AllowsNotApplicable,
            ObservedState.NoSign => AllowsNoSign,
            _ => true,
        };
}

/// <summary>A kind of item with its criteria, decisive ones first.</summary>
public sealed record Category
{
    /// <summary>Identifier in the record, for example rope-bridge.</summary>
    public required string Id { get; init; }

    /// <summary>Singular name for print, for example Rope bridge.</summary>
    public required string Name { get; init; }

    /// <summary>Plural name, used as the workbook's sheet name; at most 31 characters.</summary>
    public required string Plural { get; init; }

    public required MaterialFamily Material { get; init; }

    public required IReadOnlyList<Criterion> Criteria { get; init; }

    /// <summary>The user's file it came from; null where it is built in.</summary>
    [System.Text.Json.Serialization.JsonIgnore]
    public string? AddedFrom { get; init; }

    /// <summary>SHA-256 of what that file says, however it is spaced, lower-case hexadecimal; null where it is built in.</summary>
    [System.Text.Json.Serialization.JsonIgnore]
    public string? AddedDigest { get; init; }

    /// <summary>Textile and plastic kit ages; so does kit of mixed build, by its textile or plastic part.</summary>
    public bool Ages => Material is not MaterialFamily.Metal;

    public Criterion? Find(string? criterion)
    {
        foreach (var known in Criteria)
        {
            if (string.Equals(known.Id, criterion, StringComparison.Ordinal))
                return known;
        }
        return null;
    }
}
