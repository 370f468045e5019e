using System.Text.Json;

namespace ExamDocs.Proof.Tests.SecondEvaluator;

/// <summary>How long it may serve (W5, U4, U5).</summary>
internal static class LifeRules
{
    public static DateOnly? End(Kit kit) =>
        Days.Earliest([.. kit.Limits.Select(limits => End(kit.Element, limits)), kit.Element.Dates("obsoleteOn")?.First]);

    private static DateOnly? End(JsonElement item, JsonElement limits)
    {
        var made = item.Dates("manufactured")?.First;
        var firstUsed = item.Dates("firstUsed")?.First;
        var neverUsed = item.Yes("neverUsed");
        return Days.Earliest([
            neverUsed && firstUsed is null ? null : After(firstUsed ?? made, limits.Whole("maxUseYears")),
            After(made, limits.Whole("maxAgeYears")),
            neverUsed ? After(made, limits.Whole("maxStorageYears")) : null,
            limits.Member("unobtainable")?.Day("useUntil"),
        ]);
    }

    public static IEnumerable<string> Expiry(Kit kit, DateOnly on)
    {
        if (CleanedTooOften(kit) || ExpiryThen(kit, on).Any())
        {
            yield return "W5";
        }
    }

    /// <summary>On a day gone by: the number of cleanings then is not recorded.</summary>
    public static IEnumerable<string> ExpiryThen(Kit kit, DateOnly on)
    {
        if (on > End(kit) || StoredTooLong(kit) || RetiredByEvent(kit, on))
        {
            yield return "W5";
        }
    }

    public static IEnumerable<string> Uncounted(Kit kit)
    {
        var made = kit.Element.Dates("manufactured");
        var known = made is not null || kit.Element.Dates("firstUsed") is not null || kit.Element.Yes("neverUsed");
        if (
            kit.Limits.Any(limits =>
                (made is null && (limits.Whole("maxAgeYears") ?? limits.Whole("maxStorageYears")) is not null)
                || (!known && limits.Whole("maxUseYears") is not null)
                || (limits.Whole("maxCleanings") is not null && kit.Element.Whole("cleanings") is null)
            )
        )
        {
            yield return "U4";
        }

        if (
            kit.Kind?.Material is "textile" or "plastic" or "mixed"
            && kit.Element.Dates("obsoleteOn") is null
            && (kit.Limits.Count == 0 || !kit.Limits.TrueForAll(StatesDuration))
        )
        {
            yield return "U5";
        }
    }

    private static bool StatesDuration(JsonElement limits) =>
        (limits.Whole("maxUseYears") ?? limits.Whole("maxStorageYears") ?? limits.Whole("maxAgeYears")) is not null
        || limits.Yes("noLimit")
        || limits.Member("unobtainable") is not null;

    private static bool StoredTooLong(Kit kit) =>
        kit.Limits.Exists(limits =>
            kit.Element.Dates("firstUsed")?.Last > After(kit.Element.Dates("manufactured")?.First, limits.Whole("maxStorageYears"))
        );

    private static bool CleanedTooOften(Kit kit) =>
        kit.Limits.Exists(limits => kit.Element.Whole("cleanings") > limits.Whole("maxCleanings"));

    private static bool RetiredByEvent(Kit kit, DateOnly on) =>
        kit.Limits.Exists(limits => limits.Yes("eventEndsService"))
        && kit.Earlier.Concat(kit.Examination is { } now ? [(now, kit.On)] : [])
            .Any(e => e.Examination.Member("event") is { } happened && (happened.Day("on") ?? e.On) <= on);

    private static DateOnly? After(DateOnly? from, int? years) =>
        from is { } day && years is { } count ? Days.AfterYears(day, count) : null;
}
