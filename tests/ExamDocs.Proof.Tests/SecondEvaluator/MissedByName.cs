using System.Text.Json;

namespace ExamDocs.Proof.Tests.SecondEvaluator;

/// <summary>An item without limits beside limits that a slip in a name may keep from it (an error).</summary>
internal static class MissedByName
{
    private static readonly string[] OfTime = ["maxUseYears", "maxAgeYears", "maxStorageYears", "maxCleanings", "intervalMonths"];

    public static bool Any(Kit kit, IReadOnlyList<Kit> kits, JsonElement record) =>
        kit.Limits.Count == 0 && record.List("limits").Any(entry => Binds(entry, kit) && MayBeIts(entry, kit, kits));

    private static bool Binds(JsonElement entry, Kit kit) =>
        OfTime.Any(name => entry.Whole(name) is not null)
        || entry.Yes("eventEndsService")
        || entry.Member("unobtainable")?.Day("useUntil") is not null
        || (Permits(entry) && kit.Parts.Count > 0)
        || (
            entry.Number("nominalDiameterMm") is not null
            && entry.Number("diameterTolerancePercent") is not null
            && kit.Examination?.List("diameters").Count > 0
        );

    private static bool Permits(JsonElement entry) => entry.List("permittedParts").Count > 0;

    private static bool MayBeIts(JsonElement entry, Kit kit, IReadOnlyList<Kit> kits)
    {
        if (entry.Text("maker") is not { } maker || entry.Text("model") is not { } model)
        {
            return false;
        }

        var holders = kits.Where(other =>
                Spelling.Same(other.Element.Text("maker"), maker) && Spelling.Same(other.Element.Text("model"), model)
            )
            .ToList();
        if (holders.Count > 0 && holders.All(other => other.Element.Text("category") != kit.Element.Text("category")))
        {
            return false;
        }

        var (own, its) = (kit.Element.Text("maker"), kit.Element.Text("model"));
        if (own is null && its is null)
        {
            return Permits(entry) && kit.Parts.Count > 0;
        }

        var both = own is not null && its is not null;
        return (own is null || IsLike(maker, own, both && holders.Count > 0))
            && (its is null || IsLike(model, its, both && holders.Count > 0));
    }

    /// <summary>Where other kit has the name, a short one or one with another number is another name.</summary>
    private static bool IsLike(string stated, string actual, bool held)
    {
        string Eye(string name) =>
            new([
                .. Spelling
                    .Plain(name)
                    .Where(c => c != '-')
                    .Select(c =>
                        c switch
                        {
                            'O' => '0',
                            'I' or 'L' => '1',
                            _ => c,
                        }
                    ),
            ]);
        string Numbers(string name) => string.Concat(name.Where(char.IsDigit));
        return Eye(stated) == Eye(actual)
            || (Spelling.Near(stated, actual) && (!held || (Spelling.Plain(stated).Length > 3 && Numbers(stated) == Numbers(actual))));
    }
}
