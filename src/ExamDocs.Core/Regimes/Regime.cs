using System.Text.Json.Serialization;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Regimes;

/// <summary>One jurisdiction's law, as far as the rules need it; all of it comes from its data file.</summary>
public sealed record Regime
{
    /// <summary>No scheme runs longer than a century; a longer one shortens nothing.</summary>
    private const int LongestScheme = 1200;

    private const int SixMonths = 6;

    /// <summary>Identifier in the record, for example gb-loler.</summary>
    public required string Id { get; init; }

    /// <summary>Name for print.</summary>
    public required string Name { get; init; }

    public required IReadOnlyList<Period<Law>> Laws { get; init; }

    public required IReadOnlyList<Period<ExaminationInterval>> Intervals { get; init; }

    public required IReadOnlyList<Period<Particular>> Particulars { get; init; }

    public required IReadOnlyList<Period<Duty>> Duties { get; init; }

    public required IReadOnlyList<Period<RetentionRule>> Retention { get; init; }

    /// <summary>Rules that it asks for in addition to those that its particulars and duties name.</summary>
    public IReadOnlyList<RegimeCheck> Checks { get; init; } = [];

    /// <summary>Its own provisions behind reasons for an outcome, by the code of the outcome rule.</summary>
    public IReadOnlyList<RegimeCheck> Reasons { get; init; } = [];

    /// <summary>Kit that it leaves to another regime where an examination names that one.</summary>
    public IReadOnlyList<HandedOver> HandsOver { get; init; } = [];

    /// <summary>What could not be confirmed, a sentence each; empty where everything that decides was read in its source.</summary>
    public IReadOnlyList<string> NotConfirmed { get; init; } = [];

    /// <summary>The user's file it came from; null where it is built in.</summary>
    [JsonIgnore]
    public string? AddedFrom { get; init; }

    /// <summary>SHA-256 of what that file says, however it is spaced, lower-case hexadecimal; null where it is built in.</summary>
    [JsonIgnore]
    public string? AddedDigest { get; init; }

    /// <summary>The interval for an examination: of all that match, and the one of its basis, the one that ends first.</summary>
    /// <param name="examination">The examination; its use and its basis count.</param>
    /// <param name="purpose">What its item is for; null where not stated.</param>
    /// <param name="on">The day examined; null where not known.</param>
    /// <param name="from">The day counted from, outside the interval.</param>
    public ExaminationInterval IntervalFor(Examination examination, Purpose? purpose, LocalDate? on, LocalDate from) =>
        Intervals.InForce(on).Where(i => i.Matches(examination, purpose)).Concat(ByBasis(examination)).MinBy(i => i.LastDay(from))!;

    /// <summary>The interval for a purpose in months, whatever the use: a basis may state no longer one.</summary>
    public int MonthsFor(Purpose? purpose, LocalDate? day) =>
        Intervals.InForce(day).Where(i => i.IsForEveryUse && i.IsFor(purpose)).Min(i => i.Months);

    /// <summary>Codes of the rules that it asks for on a day and that not every regime asks for.</summary>
    internal IReadOnlySet<string> Asked(LocalDate? day) =>
        Particulars
            .InForce(day)
            .SelectMany(p => p.Checks)
            .Concat(Duties.InForce(day).SelectMany(d => d.Checks))
            .Concat(Checks.Select(c => c.Code))
            .ToHashSet(StringComparer.Ordinal);

    /// <summary>True where a rule that not every regime asks for applies under this one.</summary>
    public bool Asks(string code, LocalDate? day) => SourceOf(code, day) is not null;

    /// <summary>The provision behind a rule in this regime; null where the regime does not name the rule.</summary>
    public string? SourceOf(string code, LocalDate? day) =>
        Particulars.InForce(day).FirstOrDefault(p => p.Checks.Contains(code, StringComparer.Ordinal))?.Source
        ?? Duties.InForce(day).FirstOrDefault(d => d.Checks.Contains(code, StringComparer.Ordinal))?.Source
        ?? Checks.FirstOrDefault(c => string.Equals(c.Code, code, StringComparison.Ordinal))?.Source;

    /// <summary>Every duty of a kind that is in force on the day, for hired or for owned kit.</summary>
    public IEnumerable<Duty> DutiesTo(DutyKind what, bool hired, LocalDate? day) =>
        Duties.InForce(day).Where(d => d.What == what && (d.Hired ?? hired) == hired);

    /// <summary>How long a document has to be kept; null where the regime's data do not say.</summary>
    /// <param name="document">The kind of document.</param>
    /// <param name="madeOn">Date of the document; null where not known.</param>
    /// <param name="nextMadeOn">Date of the next one of its kind; null where there is none yet.</param>
    /// <exception cref="ArgumentOutOfRangeException">The next one is dated before this one.</exception>
    public KeepUntil? Keep(KeptDocument document, LocalDate? madeOn, LocalDate? nextMadeOn = null) =>
        Retention.InForce(madeOn).FirstOrDefault(r => r.Documents.Contains(document))?.Of(madeOn, nextMadeOn);

    /// <summary>A basis shortens what the table gives and never lengthens it.</summary>
    private static IEnumerable<ExaminationInterval> ByBasis(Examination examination) =>
        examination switch
        {
            { Basis: Basis.SixMonth } => [Of(SixMonths, "by the six-month basis of the examination")],
            { Basis: Basis.Scheme, Scheme.Months: { } months } => [Of(Math.Min(months, LongestScheme), "by the examination scheme")],
            _ => [],
        };

    private static ExaminationInterval Of(int months, string what) =>
        new()
        {
            Months = months,
            What = what,
            Source = "the record of the examination",
            Confidence = Confidence.Read,
            IsByBasis = true,
        };
}
