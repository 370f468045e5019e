using System.Globalization;
using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class PartNumberPicksLimits : Rule<ItemCase>
{
    public PartNumberPicksLimits()
        : base(
            new RuleInfo(
                "CON030",
                Severity.Warning,
                "The part number says which of the maker's limits are the item's",
                "Where limits differ by part number and the item's own is missing or is none of theirs, it may be any of "
                    + "those parts: the strictest of each limit holds.",
                "Type the part number as the item bears it; or enter limits for its own part number.",
                "record format examdocs/1"
            )
        ) => Forbid(i => i.Limits.PartIsUnknown, "/partNumber", i => $"{OfItem(i.Item)}; {Applied(i)}");

    private static string OfItem(Item item) =>
        item.PartNumber is { } typed
            ? $"no limits for {item.Maker} {item.Model} are for part number '{typed}'"
            : $"the part number is missing, and limits for {item.Maker} {item.Model} are for part numbers";

    private static string Applied(ItemCase item)
    {
        var entries = item.Limits.All;
        return entries is [{ } only]
            ? $"those for {Part(only)} are applied"
            : $"of {Number(entries.Count)} entries the strictest of each limit is applied{Words(Which(entries))}";
    }

    private static string Words(IReadOnlyList<string> which) => which.Count == 0 ? "" : $": {string.Join(", ", which)}";

    /// <summary>Each limit with the first entry that sets it so strictly.</summary>
    private static IReadOnlyList<string> Which(IReadOnlyList<MakersLimits> entries) =>
        [
            .. Least(entries, "maxUseYears", l => l.MaxUseYears),
            .. Least(entries, "maxStorageYears", l => l.MaxStorageYears),
            .. Least(entries, "maxAgeYears", l => l.MaxAgeYears),
            .. Least(entries, "maxCleanings", l => l.MaxCleanings),
            .. Least(entries, "intervalMonths", l => l.IntervalMonths),
            .. entries.Where(l => l.EventEndsService).Take(1).Select(l => $"eventEndsService of {Part(l)}"),
            .. entries
                .Where(l => l.Unobtainable?.UseUntil is not null)
                .OrderBy(l => l.Unobtainable!.UseUntil)
                .Take(1)
                .Select(l => $"unobtainable of {Part(l)}"),
            .. entries.Count(l => l.PermittedParts is not null) switch
            {
                0 => [],
                1 => ["permittedParts"],
                _ => new[] { "only parts on every list of permittedParts" },
            },
            .. entries.Any(l => DiameterBand.Of(l) is not null)
                ? ["a mean diameter within every nominal and tolerance"]
                : Array.Empty<string>(),
        ];

    private static IEnumerable<string> Least(IReadOnlyList<MakersLimits> entries, string member, Func<MakersLimits, int?> limit) =>
        entries
            .Where(l => limit(l) is not null)
            .OrderBy(l => limit(l))
            .Take(1)
            .Select(l => $"{member} {Number(limit(l)!.Value)} of {Part(l)}");

    private static string Part(MakersLimits limits) => limits.PartNumber is { } part ? $"part {part}" : "the entry without a part number";

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);
}
