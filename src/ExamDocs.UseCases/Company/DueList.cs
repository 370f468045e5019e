using ExamDocs.Core.Identity;
using NodaTime;

namespace ExamDocs.UseCases.Company;

/// <summary>What falls due from a day to a day, both inclusive, as a register knows it.</summary>
public sealed record DueList
{
    public required LocalDate From { get; init; }

    public required LocalDate To { get; init; }

    /// <summary>The day on which the register was looked at.</summary>
    public required LocalDate AsOf { get; init; }

    /// <summary>What may be used today and falls due, by employer, premises, category and day.</summary>
    public required IReadOnlyList<DueItem> Due { get; init; }

    /// <summary>What may not be used today, whatever its days, in the same order; nothing of it is proposed for a visit.</summary>
    public required IReadOnlyList<DueItem> Apart { get; init; }

    /// <summary>Days of past decisions on which something fell due at a place, and by the latest ones nothing does.</summary>
    public required IReadOnlyList<(DuePlace At, LocalDate Day)> NoLonger { get; init; }

    /// <summary>False where no item of the employer asked for is on record, so that an empty list says nothing.</summary>
    public required bool HasItems { get; init; }

    /// <summary>By the folded name of an employer, the tag of the language in which its documents were issued last.</summary>
    public required IReadOnlyDictionary<string, string> Languages { get; init; }

    /// <summary>Tag of the language in which an employer's documents were issued last; null where none were.</summary>
    public string? LanguageOf(string? employer) => Languages.GetValueOrDefault(FirmName.Fold(employer));

    /// <summary>Names the register, wherever it is copied to.</summary>
    public required string Register { get; init; }

    /// <summary>Grows with everything that can change the list.</summary>
    public required long Version { get; init; }
}
