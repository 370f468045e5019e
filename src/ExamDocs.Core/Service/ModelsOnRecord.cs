using System.Text.Json;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Service;

/// <summary>What is on record about a model: the limits that were used last, with their source.</summary>
/// <param name="Limits">As the latest visit recorded them.</param>
/// <param name="LastUsed">The latest day examined of a visit that used them; null where none is recorded.</param>
/// <param name="IsDisputed">
/// Records give different values under one title and revision: one of them was typed wrongly, and none is offered until it is settled.
/// </param>
public sealed record ModelOnRecord(MakersLimits Limits, LocalDate? LastUsed, bool IsDisputed);

/// <summary>
/// The models that records tell of, each once. A later revision of the maker's document takes the place of an earlier one; the records
/// themselves keep what they used.
/// </summary>
public static class ModelsOnRecord
{
    /// <param name="records">Of any visits, in any order.</param>
    /// <returns>By maker, model and part number. Entries without maker or model are left out: they belong to no model.</returns>
    public static IReadOnlyList<ModelOnRecord> Of(IEnumerable<ExaminationRecord> records) =>
        [
            .. records
                .OrderBy(r => r.Visit.ExaminedOn ?? LocalDate.MinIsoValue)
                .SelectMany(r => r.Limits.Select(l => (Limits: l, r.Visit.ExaminedOn)))
                .Where(l => l.Limits is { Maker: not null, Model: not null })
                .GroupBy(l => (LimitsIndex.Key(l.Limits.Maker!, l.Limits.Model!), Part: Folded(l.Limits.PartNumber)))
                .Select(model => Latest([.. model]))
                .OrderBy(m => m.Limits.Maker, StringComparer.OrdinalIgnoreCase)
                .ThenBy(m => m.Limits.Model, StringComparer.OrdinalIgnoreCase)
                .ThenBy(m => m.Limits.PartNumber, StringComparer.OrdinalIgnoreCase),
        ];

    /// <summary>Whether two entries are about one model and part number, however they are spelt.</summary>
    public static bool AreOfOneModel(MakersLimits one, MakersLimits other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return one is { Maker: not null, Model: not null }
            && other is { Maker: not null, Model: not null }
            && LimitsIndex.Key(one.Maker, one.Model) == LimitsIndex.Key(other.Maker, other.Model)
            && string.Equals(Folded(one.PartNumber), Folded(other.PartNumber), StringComparison.Ordinal);
    }

    private static ModelOnRecord Latest(IReadOnlyList<(MakersLimits Limits, LocalDate? On)> uses)
    {
        var last = uses[^1];
        // Of two visits of one day neither is the later one: what they give differently is disputed as well.
        var revision = uses.Where(u => u.On == last.On || IsOneRevision(u.Limits.Source, last.Limits.Source)).ToList();
        return new ModelOnRecord(last.Limits, last.On, revision.Select(u => Values(u.Limits)).Distinct(StringComparer.Ordinal).Count() > 1);
    }

    private static bool IsOneRevision(LimitsSource? one, LimitsSource? other) =>
        string.Equals(Folded(one?.Title), Folded(other?.Title), StringComparison.Ordinal)
        && string.Equals(Number(one?.Revision), Number(other?.Revision), StringComparison.Ordinal);

    /// <summary>"Rev. 2" and "2" are one revision.</summary>
    private static string Number(string? revision)
    {
        var folded = Folded(revision);
        foreach (var word in new[] { "REVISION", "REV", "ISSUE", "EDITION", "VERSION", "AUSGABE", "STAND" })
        {
            if (folded.StartsWith(word, StringComparison.Ordinal) && folded.Length > word.Length)
                return folded[word.Length..];
        }
        return folded;
    }

    /// <summary>All that an entry states, but for the spelling of names and the page.</summary>
    private static string Values(MakersLimits limits) =>
        JsonSerializer.Serialize(
            limits with
            {
                Maker = null,
                Model = null,
                PartNumber = null,
                Source = null,
                // The examiner's own end of service for kit without instructions is of one visit.
                Unobtainable = null,
            },
            RuleJson.Options
        );

    private static string Folded(string? text) => text is null ? "" : LimitsSpelling.Folded(text);
}
