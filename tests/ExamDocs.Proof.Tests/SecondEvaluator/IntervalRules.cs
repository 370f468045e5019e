using System.Text.Json;

namespace ExamDocs.Proof.Tests.SecondEvaluator;

/// <summary>When it is next to be examined, by regime, maker and examiner.</summary>
internal static class IntervalRules
{
    public static DateOnly? Next(Kit kit, JsonElement examination, string? visitRegime)
    {
        List<DateOnly?> days =
        [
            .. Regimes(kit, examination.Text("regime"), visitRegime).SelectMany(regime => ByLaw(regime, kit, examination)),
        ];
        days.AddRange(
            kit.Limits.Select(limits => limits.Whole("intervalMonths") is { } maker ? Days.AfterMonths(kit.On, maker) : (DateOnly?)null)
        );
        days.Add(examination.Day("nextBy"));
        return Days.Earliest(days);
    }

    /// <summary>Both laws bind, unless that of the visit leaves such kit to the other: Britain's two leave each other theirs.</summary>
    private static IEnumerable<string?> Regimes(Kit kit, string? own, string? visits)
    {
        var protects = kit.Element.Text("purpose") == "fall-arrest-only";
        var leaves = (visits, own) switch
        {
            ("gb-loler", "gb-wah") => protects || kit.Element.Text("category") == "helmet",
            ("gb-wah", "gb-loler") => !protects,
            _ => own is null || own == visits,
        };
        return leaves ? [own ?? visits] : [own, visits];
    }

    private static IEnumerable<DateOnly?> ByLaw(string? regime, Kit kit, JsonElement examination) =>
        Months(regime, kit.Element, examination)
            .Select(months => (DateOnly?)Days.AfterMonths(kit.On, months))
            .Concat(regime == "fr" ? [Days.AfterMonths(kit.On, 12).AddDays(-1)] : []);

    private static IEnumerable<int> Months(string? regime, JsonElement item, JsonElement examination)
    {
        var purpose = item.Text("purpose");
        var use = examination.Member("exposure")?.Text("use") ?? "";
        IEnumerable<int> own = regime switch
        {
            "gb-loler" or "ni-loler" => [purpose == "other" ? 12 : 6],
            "gb-wah" => [use.Contains("arduous", StringComparison.OrdinalIgnoreCase) ? 3 : 6],
            "eu-en365" or "de" => [12],
            "au-nz" or "us" => [6],
            "fr" when purpose == "lifts-persons" => French(use),
            _ => [],
        };
        var scheme = examination.Text("basis") == "scheme" ? examination.Member("scheme")?.Whole("months") : null;
        return own.Concat(scheme is { } months ? [months] : []).Concat(examination.Text("basis") == "six-month" ? [6] : []);
    }

    private static IEnumerable<int> French(string use)
    {
        if (use.Contains("hand-powered", StringComparison.OrdinalIgnoreCase))
        {
            yield return 3;
        }

        if (use.Contains("power-driven", StringComparison.OrdinalIgnoreCase))
        {
            yield return 6;
        }
    }
}
