using System.Text.Json;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Histories;

/// <summary>What a record by itself says of one item, without parts, wholes and the past.</summary>
internal static class Alone
{
    public static IReadOnlySet<string> Codes(Kit kit, JsonElement record)
    {
        kit.End = LifeRules.End(kit);
        HashSet<string> codes = [.. kit.Codes, .. LifeRules.Uncounted(kit)];
        if (
            Errors.OfVisit(record.Member("visit") ?? default)
            || Errors.OfItem(kit, record)
            || (kit.Element.Text("serial") ?? kit.Element.Text("ownersMark")) is null
        )
        {
            codes.Add("U3");
        }

        if (kit.Examination is not { } examination)
        {
            codes.Add("U0");
            return codes;
        }

        codes.UnionWith(LifeRules.Expiry(kit, kit.On));
        codes.UnionWith(FoundRules.Withdrawals(examination, kit.Kind, kit.Limits, kit.On));
        codes.UnionWith(kit.Kind is { } kind ? FoundRules.Gaps(examination, kind) : []);
        if (Errors.OfExamination(kit, examination, record) || examination.Text("conclusion") == "fit" && IsGone(kit, record))
        {
            codes.Add("U3");
        }

        kit.OwnNext = IntervalRules.Next(kit, examination, record.Member("visit")?.Text("regime"));
        return codes;
    }

    private static bool IsGone(Kit kit, JsonElement record) =>
        kit.Element.Text("status") is "lost" or "destroyed" or "not-presented"
        || record.List("disposals").Any(d => d.Text("item") == kit.Id && (d.Text("action") == "destroyed" || !(d.Day("on") < kit.On)));
}
