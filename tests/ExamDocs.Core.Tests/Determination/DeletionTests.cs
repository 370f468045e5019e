using System.Text.Json.Nodes;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>
/// Deletes one thing at a time from an adverse record: the outcome gets no better, unless the adverse word itself is deleted, and
/// then it is at best undetermined.
/// </summary>
public sealed class DeletionTests
{
    private const string Exam = "/examinations/0";

    /// <summary>What makes a record adverse, and the places that hold it. Without a place marked ~ the item may even be usable.</summary>
    private static readonly Dictionary<string, (Action<JsonObject> Plant, string[] Carriers)> Adverse = new(StringComparer.Ordinal)
    {
        ["W1"] = (
            r => r.Answer("cover-cut", "defect"),
            [$"{Exam}/observations/1", $"{Exam}/observations/1/state", $"{Exam}/observations/1/criterion"]
        ),
        ["W2"] = (
            r => r.Answer("heat", "doubt"),
            [$"{Exam}/observations/4", $"{Exam}/observations/4/state", $"{Exam}/observations/4/criterion"]
        ),
        ["W3"] = (
            r => r.Answer("marking", "defect"),
            [$"{Exam}/observations/13", $"{Exam}/observations/13/state", $"{Exam}/observations/13/criterion"]
        ),
        ["W4 now"] = (r => r.Now("cover-abrasion"), [$"~{Exam}/defects/1", $"{Exam}/defects/1/danger"]),
        ["W4 later"] = (r => r.Later("cover-abrasion", "2026-05-11"), [$"~{Exam}/defects/1", $"{Exam}/defects/1/danger"]),
        ["W4 imminent"] = (r => r.Exam()["defects"]![0]!["imminentRisk"] = true, [$"~{Exam}/defects/0/imminentRisk"]),
        ["W5"] = (r => r.Item()["obsoleteOn"] = "2026-05-10", ["~/items/0/obsoleteOn"]),
        ["W6"] = (r => r.Conclude("withdraw"), [$"{Exam}/conclusion"]),
        ["W7"] = (r => r.Station(250, 9.0m, 9.0m), [$"~{Exam}/diameters/2", $"{Exam}/diameters/2/readingsMm", .. Tolerance]),
        ["W10"] = (
            r => r.Earlier("rope-bridge", "2026-02-10", e => e["conclusion"] = "withdraw"),
            ["~/examinations/1/conclusion", "~/examinations/1", "~/examinations/1/item"]
        ),
    };

    /// <summary>Without the maker's tolerance, or the way to it, a diameter withdraws nothing.</summary>
    private static string[] Tolerance =>
        [
            "~/examinations/0/diameters",
            "~/limits",
            "~/limits/0",
            "~/limits/0/nominalDiameterMm",
            "~/limits/0/diameterTolerancePercent",
            "~/items/0/maker",
            "~/items/0/model",
            "~/items/0/partNumber",
        ];

    /// <summary>Deleting the whole place removes the adverse matter from the record.</summary>
    private static readonly string[] Whole =
    [
        "/items",
        "/items/0",
        "/items/0/id",
        "/items/0/category",
        "/examinations",
        Exam,
        $"{Exam}/item",
        $"{Exam}/observations",
        $"{Exam}/defects",
        $"{Exam}/diameters",
        "/limits",
        "/limits/0",
        "/limits/0/maker",
        "/limits/0/model",
        "/items/0/maker",
        "/items/0/model",
        "/items/0/partNumber",
        "/examinations/1",
        "/examinations/1/examinedOn",
        "/visit",
        "/visit/examinedOn",
    ];

    public static TheoryData<string> Seeds => [.. Adverse.Keys];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Losing_one_member_never_improves_an_adverse_record(string seed)
    {
        var (plant, carriers) = Adverse[seed];
        var full = RichRecord.Make();
        plant(full);
        Assert.Equal("withdraw", Decided.From(full).Outcome());
        var wrong = new List<string>();
        foreach (var pointer in JsonPaths.All(full))
        {
            var record = full.Copy();
            JsonPaths.Remove(record, pointer);
            var decided = Decided.From(record);
            var best = Enumerable.Range(0, decided.Count).Select(i => Rank(decided.OutcomeAt(i))).DefaultIfEmpty(4).Min();
            if (best < AtBest(pointer, carriers))
                wrong.Add($"{pointer}: {decided.OutcomeAt(0)}");
        }
        Assert.Empty(wrong);
    }

    private static int AtBest(string pointer, string[] carriers)
    {
        if (carriers.Contains("~" + pointer, StringComparer.Ordinal))
            return 0;
        return carriers.Contains(pointer, StringComparer.Ordinal) || Whole.Contains(pointer, StringComparer.Ordinal) ? 2 : 3;
    }

    private static int Rank(string outcome) =>
        outcome switch
        {
            "fit" => 0,
            "fit-until" => 1,
            "undetermined" => 2,
            _ => 3,
        };
}
