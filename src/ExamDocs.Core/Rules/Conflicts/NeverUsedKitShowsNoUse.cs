using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class NeverUsedKitShowsNoUse : Rule<ItemCase>
{
    private static readonly char[] Between = [',', ';', '.', ':', '(', ')'];

    private static readonly HashSet<string> NoUse = new(StringComparer.OrdinalIgnoreCase)
    {
        "none",
        "nil",
        "no",
        "no use",
        "never",
        "never used",
        "not used",
        "not yet used",
        "unused",
        "not in use",
        "new",
        "stored",
        "in store",
        "in the store",
        "in stock",
        "-",
        "n/a",
        "keine",
        "keiner",
        "nie",
        "nie benutzt",
        "unbenutzt",
        "nicht benutzt",
        "neu",
        "gelagert",
        "im Lager",
        "aucun",
        "aucune",
        "jamais",
        "jamais utilisé",
        "jamais utilisée",
        "non utilisé",
        "non utilisée",
        "neuf",
        "neuve",
        "en stock",
    };

    public NeverUsedKitShowsNoUse()
        : base(
            new RuleInfo(
                "CON032",
                Severity.Error,
                "Kit never used has no use recorded, now or at an earlier examination",
                "Time in use is not counted for kit never used: an item that is in use after all would be kept beyond its limit.",
                $"Take out neverUsed and type the date of first use; or type none as the use and the ground, where it was never exposed.",
                "record format examdocs/1"
            )
        ) => Forbid(i => i.Item.NeverUsed is true && Use(i) is not null, "/neverUsed", i => Use(i)!);

    /// <summary>What shows that it was used, in words; null where nothing does.</summary>
    private static Message? Use(ItemCase item)
    {
        if (item.Deciding.Any(e => IsExposed(e.Examination)))
            return $"it is recorded as never used, but its examination records what it was exposed to";
        return item
            .Before.Where(e => IsExposed(e.Examination))
            .Select(e => (Message)$"it is recorded as never used, but its examination of {e.On} records what it was exposed to")
            .FirstOrDefault();
    }

    /// <summary>Hardware alone shows no use: it may be what the item is made to run on.</summary>
    private static bool IsExposed(Examination examination) =>
        examination.Exposure is { } e && (e.UserMassKg is not null || SaysUse(e.Use) || SaysUse(e.Ground));

    /// <summary>Any text counts as use unless it plainly says that there was none.</summary>
    private static bool SaysUse(string? text) =>
        text is not null
        && text.Split(Between, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Any(part => !NoUse.Contains(part));
}
