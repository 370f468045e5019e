using System.Text.Json.Serialization;
using ExamDocs.Core.Calendar;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Regimes;

/// <summary>Says whether the corresponding date itself is still inside the interval.</summary>
public enum Bound
{
    /// <summary>The corresponding date is the last day.</summary>
    AtMost,

    /// <summary>The day before the corresponding date is the last day.</summary>
    LessThan,
}

/// <summary>One line of a regime's table of intervals; of all that match an examination the shortest holds.</summary>
public sealed record ExaminationInterval
{
    /// <summary>The word for the purpose of an item that has none recorded.</summary>
    public const string NotStated = "not-stated";

    /// <summary>Purposes in the words of the record format, and not-stated; null for every purpose.</summary>
    public IReadOnlyList<string>? Purposes { get; init; }

    /// <summary>A word that the recorded use must contain, in capitals or not; null for every use.</summary>
    public string? Use { get; init; }

    public Bound Bound { get; init; }

    /// <summary>Calendar months, counted by the corresponding date.</summary>
    public required int Months { get; init; }

    /// <summary>What the interval is for, as printed after the number of months.</summary>
    public required string What { get; init; }

    public required string Source { get; init; }

    public required Confidence Confidence { get; init; }

    /// <summary>True where it comes from the basis recorded with the examination, not from the regime.</summary>
    [JsonIgnore]
    public bool IsByBasis { get; init; }

    /// <summary>True where it is for every use of the purposes that it names.</summary>
    [JsonIgnore]
    public bool IsForEveryUse => Use is null;

    /// <summary>The interval as one phrase with its source.</summary>
    [JsonIgnore]
    public string Why =>
        string.Create(
            System.Globalization.CultureInfo.InvariantCulture,
            $"{(Bound is Bound.LessThan ? "less than " : "")}{Months} months {What} ({Source}{Confidence switch
        {
            Confidence.FromMemory => ", from memory",
            Confidence.UnofficialCopy => ", unofficial copy",
            _ => "",
        }})"
        );

    public bool IsFor(Purpose? purpose) => Names(Purposes, purpose);

    /// <summary>True where a list of purposes names this one; null stands for every purpose.</summary>
    internal static bool Names(IReadOnlyList<string>? purposes, Purpose? purpose) =>
        purposes is null || purposes.Contains(purpose is { } p ? Words.Purposes.WordFor(p) : NotStated, StringComparer.Ordinal);

    /// <summary>Last day of the interval, inclusive.</summary>
    /// <param name="day">The day examined, which is outside the interval.</param>
    public LocalDate LastDay(LocalDate day) => CorrespondingDate.AddMonths(day, Months).PlusDays(Bound is Bound.LessThan ? -1 : 0);

    internal bool Matches(Examination examination, Purpose? purpose) =>
        IsFor(purpose) && (Use is null || examination.Exposure?.Use?.Contains(Use, StringComparison.OrdinalIgnoreCase) is true);
}
