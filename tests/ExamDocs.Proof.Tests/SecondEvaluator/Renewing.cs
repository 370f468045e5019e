using System.Text.Json;

namespace ExamDocs.Proof.Tests.SecondEvaluator;

/// <summary>Errors of renewals; they reach the renewed whole.</summary>
internal static class Renewing
{
    public static IEnumerable<Kit> InError(IReadOnlyList<Kit> kits, JsonElement record)
    {
        foreach (var renewal in record.List("renewals"))
        {
            var part = kits.FirstOrDefault(kit => kit.Id == renewal.Text("fittedPart"));
            var whole = kits.FirstOrDefault(kit => kit.Id == renewal.Text("item"));
            if (part is null || whole is null || renewal.Day("doneOn") is not { } on)
            {
                continue;
            }

            if (
                !IsPermitted(part, whole)
                || LifeRules.Expiry(part, on).Any()
                || (part.Examination is not null && part.On < on)
                || !MayRetie(renewal, part)
            )
            {
                yield return whole;
            }
        }
    }

    public static bool IsPermitted(Kit part, Kit whole) =>
        whole
            .Limits.Select(limits => limits.List("permittedParts"))
            .Where(list => list.Count > 0)
            .All(list => part.Element.Text("partNumber") is { } number && list.Any(p => p.GetString() == number));

    private static bool MayRetie(JsonElement renewal, Kit part) =>
        renewal.Text("retiedBy") is null || !part.Limits.Exists(limits => limits.Text("retying") == "maker");
}
