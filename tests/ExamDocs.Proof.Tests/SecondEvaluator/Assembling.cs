using System.Text.Json;

namespace ExamDocs.Proof.Tests.SecondEvaluator;

/// <summary>Finds for every item its examinations, its limits, its whole and its parts.</summary>
internal static class Assembling
{
    public static IReadOnlyList<Kit> Of(JsonElement record)
    {
        var visitDay = record.Member("visit")?.Day("examinedOn") ?? default;
        var kits = record
            .List("items")
            .Select(
                (element, position) =>
                    new Kit
                    {
                        Position = position,
                        Element = element,
                        Id = element.Text("id") ?? "",
                        Kind = Kinds.All.GetValueOrDefault(element.Text("category") ?? ""),
                        On = visitDay,
                    }
            )
            .ToList();
        foreach (var kit in kits)
        {
            Examine(kit, record, visitDay);
            Limit(kit, record);
        }

        foreach (var kit in kits)
        {
            Fit(kit, kits, record);
            kit.Unsure |= kit.Kind is null || IsDouble(kit, kits) || (kit.Whole is { } whole && IsDouble(whole, kits));
        }

        return kits;
    }

    private static bool IsDouble(Kit kit, List<Kit> kits) => kits.Any(other => other != kit && other.Id == kit.Id);

    private static void Examine(Kit kit, JsonElement record, DateOnly visitDay)
    {
        var dated = record
            .List("examinations")
            .Select((e, at) => (Examination: e, On: e.Day("examinedOn") ?? visitDay, At: at))
            .Where(e => e.Examination.Text("item") == kit.Id)
            .OrderBy(e => e.On)
            .ToList();
        if (dated.Count > 0 && dated[^1].On >= visitDay)
        {
            (kit.Examination, kit.On, kit.ExaminationAt) = dated[^1];
            dated.RemoveAt(dated.Count - 1);
            if (dated.Any(other => other.On == kit.On))
            {
                kit.Error();
                kit.Unsure = true;
            }
        }

        kit.Earlier.AddRange(dated.Select(e => (e.Examination, e.On)));
    }

    private static void Limit(Kit kit, JsonElement record)
    {
        if (kit.Element.Text("maker") is not { } maker || kit.Element.Text("model") is not { } model)
        {
            return;
        }

        var ofModel = record
            .List("limits")
            .Where(l => Spelling.Same(l.Text("maker"), maker) && Spelling.Same(l.Text("model"), model))
            .ToList();
        var exact = ofModel.Where(l => Spelling.Same(l.Text("partNumber"), kit.Element.Text("partNumber"))).ToList();
        var chosen = exact.Count > 0 ? exact : ofModel;
        kit.Limits.AddRange(chosen);
        if (chosen.GroupBy(l => Spelling.Plain(l.Text("partNumber") ?? ""), StringComparer.Ordinal).Any(same => same.Count() > 1))
        {
            kit.Error();
        }
    }

    private static void Fit(Kit kit, List<Kit> kits, JsonElement record)
    {
        var whole = kits.FirstOrDefault(other => other.Id == kit.Element.Text("fittedTo"));
        kit.Whole = whole;
        if (whole is null || record.List("renewals").Any(r => r.Text("item") == whole.Id && r.Text("removedPart") == kit.Id))
        {
            return;
        }

        whole.Parts.Add(kit);
    }
}
