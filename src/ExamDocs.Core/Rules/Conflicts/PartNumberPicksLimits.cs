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
                $"Type the part number as the item bears it; or enter limits for its own part number.",
                "record format examdocs/1"
            )
        ) => Forbid(i => i.Limits.PartIsUnknown, "/partNumber", i => $"{OfItem(i.Item)}; {Applied(i)}");

    private static Message OfItem(Item item) =>
        item.PartNumber is { } typed
            ? (Message)$"none of the limits for {item.Maker} {item.Model} is for part number '{typed}'"
            : $"the part number is missing, and limits for {item.Maker} {item.Model} are for part numbers";

    private static Message Applied(ItemCase item)
    {
        var entries = item.Limits.All;
        if (entries is [{ } only])
            return $"those for {Part(only)} apply";
        var which = Which(entries);
        return which.Count == 0
            ? (Message)$"of {entries.Count} entries the strictest of each limit applies"
            : $"of {entries.Count} entries the strictest of each limit applies: {Message.Join(", ", which)}";
    }

    /// <summary>Each limit with the first entry that sets it so strictly.</summary>
    private static IReadOnlyList<Message> Which(IReadOnlyList<MakersLimits> entries) =>
        [
            .. Least(entries, "maxUseYears", l => l.MaxUseYears),
            .. Least(entries, "maxStorageYears", l => l.MaxStorageYears),
            .. Least(entries, "maxAgeYears", l => l.MaxAgeYears),
            .. Least(entries, "maxCleanings", l => l.MaxCleanings),
            .. Least(entries, "intervalMonths", l => l.IntervalMonths),
            .. entries.Where(l => l.EventEndsService).Take(1).Select(l => (Message)$"eventEndsService of {Part(l)}"),
            .. entries
                .Where(l => l.Unobtainable?.UseUntil is not null)
                .OrderBy(l => l.Unobtainable!.UseUntil)
                .Take(1)
                .Select(l => (Message)$"unobtainable of {Part(l)}"),
            .. entries.Count(l => l.PermittedParts is not null) switch
            {
                0 => [],
                1 => [Message.AsIs("permittedParts")],
                _ => new Message[] { $"only parts on every list of permittedParts" },
            },
            .. entries.Any(l => DiameterBand.Of(l) is not null)
                ? new Message[] { $"a mean diameter within every nominal and tolerance" }
                : [],
        ];

    private static IEnumerable<Message> Least(IReadOnlyList<MakersLimits> entries, string member, Func<MakersLimits, int?> limit) =>
        entries
            .Where(l => limit(l) is not null)
            .OrderBy(l => limit(l))
            .Take(1)
            .Select(l => (Message)$"{member} {limit(l)!.Value} of {Part(l)}");

    private static Message Part(MakersLimits limits) =>
        limits.PartNumber is { } part ? (Message)$"part {part}" : $"the entry without a part number";
}
