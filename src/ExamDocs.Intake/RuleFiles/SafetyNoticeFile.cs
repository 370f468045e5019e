using System.Text.Json.Serialization;
using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Binding;
using NodaTime;

namespace ExamDocs.Intake.RuleFiles;

/// <summary>A maker's safety notice as it stands in its file: docs/recall.schema.json.</summary>
internal sealed record SafetyNoticeFile
{
    public required string Format { get; init; }

    public required string Maker { get; init; }

    public IReadOnlyList<string> AlsoCalled { get; init; } = [];

    public required string Reference { get; init; }

    public required LocalDate On { get; init; }

    public required string Demands { get; init; }

    public required string ReadAt { get; init; }

    public required IReadOnlyList<NamedKitFile> Affected { get; init; }

    /// <summary>What the schema cannot see: no such days, dates that end before they begin, check characters of no number.</summary>
    [JsonIgnore]
    public IReadOnlyList<string> Faults =>
        [.. Affected.SelectMany((kit, n) => kit.Faults.Select(f => FormattableString.Invariant($"/affected/{n}/{f}")))];

    [JsonIgnore]
    public SafetyNotice Notice =>
        new()
        {
            Maker = Maker,
            AlsoCalled = AlsoCalled,
            Reference = Reference,
            On = On,
            Demands = Demands,
            ReadAt = ReadAt,
            Affected = [.. Affected.Select(k => k.Kit)],
        };
}

/// <summary>Kit that a notice names, as it stands in the file.</summary>
internal sealed record NamedKitFile
{
    public IReadOnlyList<string> Models { get; init; } = [];

    public IReadOnlyList<string> PartNumbers { get; init; } = [];

    public IReadOnlyList<SerialRange> SerialRanges { get; init; } = [];

    public IReadOnlyList<string> SerialPatterns { get; init; } = [];

    public IReadOnlyList<string> Serials { get; init; } = [];

    public int CheckCharacters { get; init; }

    public IReadOnlyList<string> Batches { get; init; } = [];

    public MadeBetween? Manufactured { get; init; }

    [JsonIgnore]
    public IEnumerable<string> Faults
    {
        get
        {
            var (from, to) = (Day(Manufactured?.From), Day(Manufactured?.To));
            if (Manufactured?.From is not null && from is null)
                yield return "manufactured/from: there is no such day; type it as 2026-05-11, 2026-05 or 2026";
            if (Manufactured?.To is not null && to is null)
                yield return "manufactured/to: there is no such day; type it as 2026-05-11, 2026-05 or 2026";
            if (from?.Earliest > to?.Latest)
                yield return "manufactured: it ends before it begins; type the earlier day under from";
            if (CheckCharacters > 0 && SerialRanges.Count + SerialPatterns.Count + Serials.Count == 0)
                yield return "checkCharacters: there are no serial numbers to which they belong; type these, or leave it out";
        }
    }

    [JsonIgnore]
    public NamedKit Kit =>
        new()
        {
            Models = Models,
            PartNumbers = PartNumbers,
            SerialRanges = SerialRanges,
            SerialPatterns = SerialPatterns,
            Serials = Serials,
            CheckCharacters = CheckCharacters,
            Batches = Batches,
            ManufacturedFrom = Day(Manufactured?.From),
            ManufacturedTo = Day(Manufactured?.To),
        };

    private static PartialDate? Day(string? typed) => typed is null ? null : DateText.ReadPartial(typed);
}

/// <summary>Days, months or years of manufacture, both inclusive; one may be left out.</summary>
internal sealed record MadeBetween(string? From = null, string? To = null);
