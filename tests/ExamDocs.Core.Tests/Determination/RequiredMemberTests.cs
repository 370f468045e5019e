using System.Text.Json.Nodes;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>A missing, emptied, mistyped or misspelt member never lets an item come out fit.</summary>
public sealed class RequiredMemberTests
{
    private static readonly Dictionary<string, (Func<JsonObject> Make, string[] Required)> Records = new(StringComparer.Ordinal)
    {
        ["visit"] = (
            RichRecord.Make,
            [
                "/format",
                "/visit",
                "/visit/reference",
                "/visit/regime",
                "/visit/examinedOn",
                "/visit/reportedOn",
                "/visit/employer",
                "/visit/employer/name",
                "/visit/employer/address",
                "/visit/premises",
                "/visit/premises/name",
                "/visit/premises/address",
                "/visit/hiredFrom/name",
                "/visit/hiredFrom/address",
            ]
        ),
        ["people"] = (
            RichRecord.Make,
            [
                "/people",
                "/people/0",
                "/people/0/id",
                "/people/0/name",
                "/people/0/address",
                "/people/0/qualifications",
                "/people/0/selfEmployed",
                "/people/0/employer",
                "/people/0/employer/name",
                "/people/0/employer/address",
            ]
        ),
        ["item"] = (
            RichRecord.Make,
            [
                "/items",
                "/items/0",
                "/items/0/id",
                "/items/0/category",
                "/items/0/description",
                "/items/0/safeWorkingLoad",
                "/items/0/safeWorkingLoad/value",
                "/items/0/safeWorkingLoad/unit",
                "/items/0/manufactured",
            ]
        ),
        ["limits"] = (
            WithoutObsolescence,
            [
                "/limits",
                "/limits/0",
                "/limits/0/maker",
                "/limits/0/model",
                "/limits/0/source",
                "/limits/0/source/title",
                "/items/0/maker",
                "/items/0/model",
            ]
        ),
        ["examination"] = (
            RichRecord.Make,
            [
                "/examinations",
                "/examinations/0",
                "/examinations/0/item",
                "/examinations/0/examiner",
                "/examinations/0/basis",
                "/examinations/0/observations",
                "/examinations/0/conclusion",
                "/examinations/0/scheme",
                "/examinations/0/scheme/reference",
                "/examinations/0/scheme/months",
                "/examinations/0/defects/0/part",
                "/examinations/0/defects/0/description",
                "/examinations/0/defects/0/danger",
                "/examinations/0/defects/0/becomesDangerOn",
                "/examinations/0/defects/0/remedy",
                "/examinations/0/diameters/0/positionMm",
                "/examinations/0/diameters/0/readingsMm",
                "/examinations/0/tests/0/description",
                "/examinations/0/tests/0/result",
            ]
        ),
        ["exceptional"] = (Exceptional, ["/examinations/0/event", "/examinations/0/event/what"]),
        ["noted"] = (() => GoodRecord.For("rope-bridge").Answer("marking", "noted"), ["/examinations/0/observations/13/note"]),
        ["first used"] = (UsedOnly, ["/items/0/firstUsed"]),
        ["marked"] = (() => GoodRecord.For("rope-bridge"), ["/items/0/serial"]),
        ["release"] = (
            Released,
            ["/releases", "/releases/0", "/releases/0/item", "/releases/0/by", "/releases/0/on", "/releases/0/grounds"]
        ),
    };

    public static TheoryData<string, string> Required
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var (name, (_, required)) in Records)
            {
                foreach (var pointer in required)
                    data.Add(name, pointer);
            }
            return data;
        }
    }

    [Fact]
    public void Every_record_is_usable_before_it_is_damaged()
    {
        foreach (var (name, (make, required)) in Records)
        {
            var record = make();
            Assert.True(Usable(Decided.From(record)), name);
            Assert.All(required, pointer => Assert.NotNull(JsonPaths.Get(record, pointer)));
        }
    }

    [Theory]
    [MemberData(nameof(Required))]
    public void A_required_member_damaged_in_any_way_never_yields_fit(string name, string pointer)
    {
        var survived = new List<string>();
        foreach (var (how, spoil) in Spoilings(pointer))
        {
            var record = Records[name].Make();
            spoil(record);
            if (Usable(Decided.From(record)))
                survived.Add(how);
        }
        Assert.Empty(survived);
    }

    /// <summary>
    /// Every place of a record but its remedies. A slip in a member's name, even of an optional one, must not lose what was typed; a remedy
    /// says nothing against an item, so its errors may reach none.
    /// </summary>
    private static IEnumerable<string> Places =>
        JsonPaths.All(RichRecord.Make()).Where(p => !p.StartsWith("/remedies/0", StringComparison.Ordinal));

    [Fact]
    public void Any_member_misspelt_never_yields_fit()
    {
        var survived = new List<string>();
        foreach (var pointer in Places)
        {
            var record = RichRecord.Make();
            if (!JsonPaths.IsMember(record, pointer))
                continue;
            JsonPaths.Rename(record, pointer, pointer[(pointer.LastIndexOf('/') + 1)..] + "s");
            if (Usable(Decided.From(record)))
                survived.Add(pointer);
        }
        Assert.Empty(survived);
    }

    [Fact]
    public void Any_value_of_the_wrong_type_never_yields_fit()
    {
        var survived = new List<string>();
        foreach (var pointer in Places)
        {
            foreach (var wrong in WrongTypes(JsonPaths.Get(RichRecord.Make(), pointer)))
            {
                var record = RichRecord.Make();
                JsonPaths.Set(record, pointer, JsonNode.Parse(wrong));
                if (Usable(Decided.From(record)))
                    survived.Add($"{pointer} {wrong}");
            }
        }
        Assert.Empty(survived);
    }

    [Fact]
    public void Every_required_answer_deleted_alone_never_yields_fit()
    {
        var survived = new List<string>();
        var all = GoodRecord.For("rope-bridge").Observations().Count - 2;
        for (var i = 0; i < all; i++)
        {
            foreach (var pointer in new[] { "", "/criterion", "/state" }.Select(p => $"/examinations/0/observations/{i}{p}"))
            {
                var record = GoodRecord.For("rope-bridge");
                JsonPaths.Remove(record, pointer);
                if (Usable(Decided.From(record)))
                    survived.Add(pointer);
            }
        }
        Assert.Empty(survived);
    }

    [Theory]
    [InlineData("examinations")]
    [InlineData("renewals")]
    [InlineData("remedies")]
    [InlineData("releases")]
    [InlineData("disposals")]
    public void A_row_that_names_no_item_is_an_error(string list)
    {
        var record = GoodRecord.For("rope-bridge").Row(list, "{}");

        Assert.Contains(Decided.From(record).Errors, e => e.Contains($"/{list}/", StringComparison.Ordinal));
    }

    private static IEnumerable<(string, Action<JsonObject>)> Spoilings(string pointer)
    {
        yield return ("deleted", r => JsonPaths.Remove(r, pointer));
        foreach (var value in new[] { "\"\"", "\"  \"", "\"\\u00a0\"", "null", "7", "true", "[]", "{}", "\"?\\u200b\"" })
        {
            // Some members hold a number or a flag, and free text may be anything printable.
            if (!IsRightType(pointer, value))
                yield return (value, r => JsonPaths.Set(r, pointer, JsonNode.Parse(value)));
        }
        if (!char.IsAsciiDigit(pointer[^1]))
            yield return ("misspelt", r => JsonPaths.Rename(r, pointer, pointer[(pointer.LastIndexOf('/') + 1)..] + "x"));
    }

    private static bool IsRightType(string pointer, string value) =>
        value is "7"
        && (
            pointer.EndsWith("months", StringComparison.Ordinal)
            || pointer.EndsWith("value", StringComparison.Ordinal)
            || pointer.EndsWith("positionMm", StringComparison.Ordinal)
        );

    private static string[] WrongTypes(JsonNode? value) =>
        value switch
        {
            JsonObject => ["\"x\"", "[]"],
            JsonArray => ["\"x\"", "{}"],
            _ => value!.GetValueKind() switch
            {
                System.Text.Json.JsonValueKind.String => ["7", "{}"],
                // Not "x", which stands for no value.
                System.Text.Json.JsonValueKind.Number => ["\"word\"", "-1", "1e400"],
                _ => ["\"yes\"", "1"],
            },
        };

    private static bool Usable(Decided decided) =>
        Enumerable.Range(0, decided.Count).Any(i => decided.OutcomeAt(i).StartsWith("fit", StringComparison.Ordinal));

    private static JsonObject WithoutObsolescence()
    {
        var record = RichRecord.Make();
        record.Item().Remove("obsoleteOn");
        return record;
    }

    private static JsonObject Exceptional()
    {
        var record = RichRecord.Make();
        record.Exam().Without("scheme")["basis"] = "exceptional";
        return record;
    }

    private static JsonObject UsedOnly()
    {
        var record = GoodRecord.For("rope-bridge");
        record.Item().Without("manufactured");
        record.Limits().Without("maxAgeYears", "maxStorageYears");
        return record;
    }

    private static JsonObject Released() =>
        GoodRecord.For("rope-bridge").Earlier("rope-bridge", "2026-02-10", e => e["conclusion"] = "withdraw").Release(null);
}
