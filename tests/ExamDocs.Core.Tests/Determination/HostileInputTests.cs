using System.Text.Json.Nodes;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>Adverse words in odd places, and words that only look like favourable ones: none of them yields fit.</summary>
public sealed class HostileInputTests
{
    private const string Clear = "\"criterion\":\"heat\",\"state\":\"clear\"";

    /// <summary>Texts that replace the clear answer to heat, the conclusion, or something else in the good record.</summary>
    private static readonly (string Name, string From, string To)[] Replacements =
    [
        ("state twice, worse first", Clear, "\"criterion\":\"heat\",\"state\":\"defect\",\"state\":\"clear\""),
        ("state twice, worse last", Clear, "\"criterion\":\"heat\",\"state\":\"clear\",\"state\":\"doubt\""),
        ("criterion twice", Clear, "\"criterion\":\"heat\",\"criterion\":\"pinch\",\"state\":\"clear\""),
        ("state with another case beside it", Clear, Clear + ",\"State\":\"defect\""),
        ("state with a soft hyphen", Clear, "\"criterion\":\"heat\",\"state\":\"cle\\u00adar\""),
        ("state with a zero width space", Clear, "\"criterion\":\"heat\",\"state\":\"clear\\u200b\""),
        ("state in full width", Clear, "\"criterion\":\"heat\",\"state\":\"\\uff43lear\""),
        ("state with a Cyrillic letter", Clear, "\"criterion\":\"heat\",\"state\":\"cl\\u0435ar\""),
        ("state is a list", Clear, "\"criterion\":\"heat\",\"state\":[\"clear\",\"defect\"]"),
        ("state is true", Clear, "\"criterion\":\"heat\",\"state\":true"),
        ("state is null", Clear, "\"criterion\":\"heat\",\"state\":null"),
        ("state holds two words", Clear, "\"criterion\":\"heat\",\"state\":\"clear defect\""),
        ("a criterion of another category", Clear, Clear + "},{\"criterion\":\"chin-strap\",\"state\":\"defect\",\"note\":\"x\""),
        ("an observation that is null", "\"observations\":[", "\"observations\":[null,"),
        ("an observation that is a word", "\"observations\":[", "\"observations\":[\"defect\","),
        ("an observation that is empty", "\"observations\":[", "\"observations\":[{},"),
        (
            "observations twice",
            "\"observations\":[",
            "\"observations\":[{\"criterion\":\"heat\",\"state\":\"defect\",\"note\":\"x\"}],\"observations\":["
        ),
        (
            "examinations twice",
            "\"examinations\":[",
            "\"examinations\":[{\"item\":\"IT-1\",\"conclusion\":\"withdraw\"}],\"examinations\":["
        ),
        (
            "examinations under another case",
            "\"examinations\":[",
            "\"Examinations\":[{\"item\":\"IT-1\",\"conclusion\":\"withdraw\"}],\"examinations\":["
        ),
        ("items twice", "\"items\":[", "\"items\":[{\"id\":\"IT-1\",\"obsoleteOn\":\"2020-01-01\"}],\"items\":["),
        ("conclusion twice", "\"conclusion\":\"fit\"", "\"conclusion\":\"fit\",\"conclusion\":\"withdraw\""),
        ("conclusion twice, worse first", "\"conclusion\":\"fit\"", "\"conclusion\":\"withdraw\",\"conclusion\":\"fit\""),
        ("conclusion misspelt", "\"conclusion\":\"fit\"", "\"conclusion\":\"wihtdraw\""),
        ("conclusion in capitals", "\"conclusion\":\"fit\"", "\"conclusion\":\"FIT\""),
        ("conclusion unfit", "\"conclusion\":\"fit\"", "\"conclusion\":\"unfit\""),
        ("conclusion null", "\"conclusion\":\"fit\"", "\"conclusion\":null"),
        ("conclusion true", "\"conclusion\":\"fit\"", "\"conclusion\":true"),
        ("defects are a word", "\"conclusion\"", "\"defects\":\"none\",\"conclusion\""),
        ("defects are an object", "\"conclusion\"", "\"defects\":{\"danger\":\"now\"},\"conclusion\""),
        ("a defect that is null", "\"conclusion\"", "\"defects\":[null],\"conclusion\""),
        ("a defect that is empty", "\"conclusion\"", "\"defects\":[{}],\"conclusion\""),
        ("defects twice", "\"conclusion\"", "\"defects\":[{\"danger\":\"now\"}],\"defects\":[],\"conclusion\""),
        ("item id in another case", "\"item\":\"IT-1\"", "\"item\":\"it-1\""),
        ("item id with a look-alike", "\"item\":\"IT-1\"", "\"item\":\"I\\u0422-1\""),
        ("a life that ended before the calendar", "\"firstUsed\":\"2024-05-20\"", "\"firstUsed\":\"2024-02-30\""),
        ("first used as a serial number", "\"firstUsed\":\"2024-05-20\"", "\"firstUsed\":43831"),
        ("first used in another order", "\"firstUsed\":\"2024-05-20\"", "\"firstUsed\":\"01/02/2019\""),
        ("first used twice", "\"firstUsed\":\"2024-05-20\"", "\"firstUsed\":\"2024-05-20\",\"firstUsed\":\"2019-05-20\""),
        ("first used after the visit", "\"firstUsed\":\"2024-05-20\"", "\"firstUsed\":\"2026-06-20\""),
        ("never used, and used", "\"firstUsed\":\"2024-05-20\"", "\"firstUsed\":\"2024-05-20\",\"neverUsed\":true"),
        ("never used in words", "\"firstUsed\":\"2024-05-20\"", "\"neverUsed\":\"true\""),
        ("made in the future", "\"manufactured\":\"2024-02-01\"", "\"manufactured\":\"2027-02-01\""),
        ("obsolete on no day", "\"serial\"", "\"obsoleteOn\":\"2020-13-01\",\"serial\""),
        ("obsolete twice", "\"serial\"", "\"obsoleteOn\":\"2020-01-01\",\"obsoleteOn\":\"2034-01-01\",\"serial\""),
        ("use years as text", "\"maxUseYears\":6", "\"maxUseYears\":\"1\""),
        ("use years nought", "\"maxUseYears\":6", "\"maxUseYears\":0"),
        ("use years negative", "\"maxUseYears\":6", "\"maxUseYears\":-6"),
        ("use years broken", "\"maxUseYears\":6", "\"maxUseYears\":1.5"),
        ("use years huge", "\"maxUseYears\":6", "\"maxUseYears\":1e9"),
        ("use years null beside no other", "\"maxUseYears\":6,\"maxStorageYears\":2,\"maxAgeYears\":12", "\"maxUseYears\":null"),
        ("limits are an object", "\"limits\":[", "\"limits\":{\"maxUseYears\":1},\"was\":["),
        (
            "a second, shorter limit in another case",
            "\"limits\":[",
            "\"limits\":[{\"maker\":\"FERNDELL\",\"model\":\"m-it-1\",\"partNumber\":\"PN-IT-1\",\"source\":{\"title\":\"t\"},\"maxUseYears\":1},"
        ),
        (
            "a second, shorter limit with spaces",
            "\"limits\":[",
            "\"limits\":[{\"maker\":\" Ferndell "
                + "\",\"model\":\"M-IT-1\",\"partNumber\":\"PN-IT-1\",\"source\":{\"title\":\"t\"},\"maxUseYears\":1},"
        ),
        ("examined on an unreadable day", "\"examinedOn\":\"2026-05-11\",\"conclusion\"", "\"examinedOn\":\"11 May\",\"conclusion\""),
        ("examined in the future", "\"examinedOn\":\"2026-05-11\",\"conclusion\"", "\"examinedOn\":\"2026-06-11\",\"conclusion\""),
        (
            "examined twice over",
            "\"examinedOn\":\"2026-05-11\",\"conclusion\"",
            "\"examinedOn\":\"2026-05-11\",\"examinedOn\":\"2026-05-12\",\"conclusion\""
        ),
        ("next date unreadable", "\"conclusion\"", "\"nextBy\":\"soon\",\"conclusion\""),
        ("diameters as text", "\"conclusion\"", "\"diameters\":[{\"positionMm\":50,\"readingsMm\":[\"8.0\"]}],\"conclusion\""),
        ("no readings", "\"conclusion\"", "\"diameters\":[{\"positionMm\":50,\"readingsMm\":[]}],\"conclusion\""),
        ("a reading of null", "\"conclusion\"", "\"diameters\":[{\"positionMm\":50,\"readingsMm\":[11.0,null]}],\"conclusion\""),
        ("a reading of nought", "\"conclusion\"", "\"diameters\":[{\"positionMm\":50,\"readingsMm\":[0]}],\"conclusion\""),
        ("a reading too large to count", "\"conclusion\"", "\"diameters\":[{\"positionMm\":50,\"readingsMm\":[1e400]}],\"conclusion\""),
        ("status destroyed", "\"status\":\"in-use\"", "\"status\":\"destroyed\""),
        ("status lost", "\"status\":\"in-use\"", "\"status\":\"lost\""),
        ("status not presented", "\"status\":\"in-use\"", "\"status\":\"not-presented\""),
        ("status unknown", "\"status\":\"in-use\"", "\"status\":\"In-use\""),
        ("purpose unknown", "\"purpose\":\"lifts-persons\"", "\"purpose\":\"lift-persons\""),
        ("category in capitals", "\"category\":\"rope-bridge\"", "\"category\":\"Rope-Bridge\""),
        ("fitted to itself", "\"serial\"", "\"fittedTo\":\"IT-1\",\"serial\""),
        ("fitted to nothing", "\"serial\"", "\"fittedTo\":\"HB-77\",\"serial\""),
        ("another format", "\"format\":\"examdocs/1\"", "\"format\":\"examdocs/2\""),
        ("format in capitals", "\"format\":\"examdocs/1\"", "\"format\":\"EXAMDOCS/1\""),
        ("regime of nowhere", "\"regime\":\"gb-loler\",\"basis\"", "\"regime\":\"gb-lola\",\"basis\""),
        ("examiner unknown", "\"examiner\":\"ex1\"", "\"examiner\":\"ex9\""),
        ("author unknown", "\"author\":\"ex1\"", "\"author\":\"ex9\""),
        ("authenticated by somebody unknown", "\"authenticatedBy\":\"ex1\"", "\"authenticatedBy\":\"EX1\""),
        ("basis unknown", "\"basis\":\"six-month\"", "\"basis\":\"6-month\""),
        ("bidirectional control in the serial", "\"serial\":\"S-IT-1\"", "\"serial\":\"S-\\u202e4321\\u202c\""),
        ("half a surrogate in the description", "An invented thing", "An invented \\ud800 thing"),
    ];

    private static readonly Dictionary<string, Action<JsonObject>> Rows = new(StringComparer.Ordinal)
    {
        ["two items of one id, the other obsolete"] = r => r["items"]!.AsArray().Add(r.Item().Copy().With("obsoleteOn", "2020-01-01")),
        ["two items of one id, the first obsolete"] = r =>
            r["items"]!.AsArray().Insert(0, r.Item().Copy().With("obsoleteOn", "2020-01-01")),
        ["a second examination that withdraws, same day"] = r => Second(r, "IT-1").Conclude("fit"),
        ["a second examination, its item with a space"] = r => Second(r, "IT-1 "),
        ["a second examination, its item with a no-break space"] = r => Second(r, "IT-1\u00a0"),
        ["a second examination, its item in another case"] = r => Second(r, "it-1"),
        ["a second examination, its item misspelt"] = r => Second(r, "IT-l"),
        ["a second examination, its day unreadable"] = r => Second(r, "IT-1", "2026-05-1O"),
        ["a second examination, its day empty"] = r => Second(r, "IT-1", ""),
        ["a second examination, later"] = r => Second(r, "IT-1", "2026-05-12"),
        ["an earlier examination, its day unreadable"] = r => Second(r, "IT-1", "2026-02-30"),
        ["an earlier examination that withdraws"] = r => Second(r, "IT-1", "2026-02-01"),
        ["a danger in capitals"] = r => r.Now("")["examinations"]![0]!["defects"]![0]!["danger"] = "NOW",
        ["a danger of true"] = r => r.Now("")["examinations"]![0]!["defects"]![0]!["danger"] = true,
        ["a danger left empty"] = r => r.Now("")["examinations"]![0]!["defects"]![0]!["danger"] = "",
        ["imminent in words"] = r => r.Later("", "2026-08-01")["examinations"]![0]!["defects"]![0]!["imminentRisk"] = "true",
        ["imminent as one"] = r => r.Later("", "2026-08-01")["examinations"]![0]!["defects"]![0]!["imminentRisk"] = 1,
        ["a danger on no day"] = r => r.Later("", "2026-02-30"),
        ["a danger some time"] = r => r.Later("", "soon"),
        ["a danger in a month"] = r => r.Later("", "2026-08"),
        ["a defect of a criterion that is none"] = r => r.Later("haet", "2026-08-01"),
        ["destroyed by its disposal"] = r => r.Row("disposals", """{"item":"IT-1","action":"destroyed","by":"store","on":"2026-05-11"}"""),
        ["quarantined by its disposal"] = r =>
            r.Row("disposals", """{"item":"IT-1","action":"quarantined","by":"store","on":"2026-05-11"}"""),
        ["a disposal that is misspelt"] = r =>
            r.Row("disposals", """{"item":"IT-1","action":"destroied","by":"store","on":"2026-05-11"}"""),
        ["nobody examined it"] = r => r["people"] = new JsonArray(),
        ["people of null"] = r => r["people"] = new JsonArray((JsonNode?)null),
        ["visit is a list"] = r => r["visit"] = new JsonArray(),
        ["an unknown member of the record"] = r => r["observations"] = new JsonArray(),
        ["no examination, conclusion on the item"] = r =>
        {
            r["examinations"]!.AsArray().Clear();
            r.Item()["conclusion"] = "fit";
        },
        ["observations all in one list of another item"] = r => r.Exam()["item"] = "IT-2",
        ["no observations"] = r => r.Exam()["observations"] = new JsonArray(),
        ["examined before the visit"] = r => r.Exam()["examinedOn"] = "2026-05-10",
        ["visit without a day, examination with one"] = r => r["visit"]!.AsObject().Remove("examinedOn"),
        ["reported before examined"] = r => r["visit"]!["reportedOn"] = "2026-05-10",
    };

    private static readonly string[] Texts =
    [
        "",
        " ",
        "null",
        "[]",
        "7",
        "\"fit\"",
        "{",
        "{}",
        "{\"format\":\"examdocs/1\"}",
        "{\"items\":[{\"id\":\"IT-1\"}]}",
        "\u0000",
    ];

    public static TheoryData<string> Replaced => [.. Replacements.Select(r => r.Name)];

    public static TheoryData<string> Added => [.. Rows.Keys];

    [Theory]
    [MemberData(nameof(Replaced))]
    public void A_slip_in_the_text_never_comes_out_fit(string name)
    {
        var (_, from, to) = Replacements.First(r => string.Equals(r.Name, name, StringComparison.Ordinal));
        var text = GoodRecord.For("rope-bridge").ToJsonString();
        Assert.Contains(from, text, StringComparison.Ordinal);
        var spoilt = text.Replace(from, to, StringComparison.Ordinal);

        Assert.DoesNotContain(Outcomes(Decided.FromText(spoilt)), o => o.StartsWith("fit", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Added))]
    public void A_row_out_of_place_never_comes_out_fit(string name)
    {
        var record = GoodRecord.For("rope-bridge");
        Rows[name](record);

        Assert.DoesNotContain(Outcomes(Decided.From(record)), o => o.StartsWith("fit", StringComparison.Ordinal));
    }

    [Fact]
    public void A_text_that_is_hardly_a_record_yields_no_fit_item()
    {
        Assert.All(Texts, text =>
            Assert.DoesNotContain(Outcomes(Decided.FromText(text)), o => o.StartsWith("fit", StringComparison.Ordinal))
        );
    }

    /// <summary>An adverse word in an odd place still withdraws the item; it does not merely leave it undetermined.</summary>
    [Theory]
    [InlineData("state twice, worse first")]
    [InlineData("state twice, worse last")]
    [InlineData("conclusion twice")]
    [InlineData("conclusion twice, worse first")]
    [InlineData("observations twice")]
    [InlineData("examinations twice")]
    [InlineData("defects twice")]
    public void Of_a_member_written_twice_the_worse_value_holds(string name)
    {
        var (_, from, to) = Replacements.First(r => string.Equals(r.Name, name, StringComparison.Ordinal));
        var text = GoodRecord.For("rope-bridge").ToJsonString();

        Assert.Contains("withdraw", Outcomes(Decided.FromText(text.Replace(from, to, StringComparison.Ordinal))), StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("a second examination that withdraws, same day")]
    [InlineData("a second examination, its item with a space")]
    [InlineData("a second examination, its day empty")]
    [InlineData("a second examination, its day unreadable")]
    [InlineData("an earlier examination, its day unreadable")]
    [InlineData("a second examination, later")]
    [InlineData("an earlier examination that withdraws")]
    public void A_second_examination_that_withdraws_is_not_outvoted(string name)
    {
        var record = GoodRecord.For("rope-bridge");
        Rows[name](record);

        Assert.Equal("withdraw", Decided.From(record).Outcome());
    }

    private static JsonObject Second(JsonObject record, string item, string on = GoodRecord.ExaminedOn)
    {
        var second = GoodRecord.Examination(item, "rope-bridge", on).With("conclusion", "withdraw");
        var heat = second["observations"]!.AsArray().First(o => (string?)o!["criterion"] is "heat")!;
        heat["state"] = "defect";
        heat["note"] = "glazed";
        record["examinations"]!.AsArray().Add(second);
        return record;
    }

    private static List<string> Outcomes(Decided decided) => [.. Enumerable.Range(0, decided.Count).Select(decided.OutcomeAt)];
}
