using System.Text.Json.Nodes;
using ClosedXML.Excel;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Regimes;
using ExamDocs.Core.Sentences.Messages;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Company;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using ExamDocs.UseCases.Tests.Issuing;
using ExamDocs.UseCases.Tests.SeededYears;
using NodaTime;
using static ExamDocs.UseCases.Tests.BetweenRecords.Stories.Story;

namespace ExamDocs.UseCases.Tests.Commands;

public sealed class ListSparesTests(SeededRegister seeded) : IDisposable
{
    private static readonly LocalDate Today = new(2026, 11, 9);

    private readonly Workspace _workspace = new();
    private int _files;

    public void Dispose() => _workspace.Dispose();

    [Theory]
    [InlineData("2028-01-14", "")]
    [InlineData("2028-01-15", "RB-1 on H-1 by 2028-01-15 with SP-11")]
    public void A_part_whose_service_ends_is_needed_from_that_day_on(string to, string must)
    {
        Import(Assembly(permitted: "SP-11"));
        Assert.Equal(must, Said(List(to)));
    }

    [Fact]
    public void Where_the_maker_permits_none_on_record_none_is_guessed()
    {
        Import(Assembly(permitted: null));
        Assert.Equal("RB-1 on H-1 by 2028-01-15 with ", Said(List("2028-12-31")));
    }

    [Fact]
    public void A_withdrawn_part_that_is_still_fitted_is_needed_today()
    {
        Import(Assembly(permitted: "SP-11", more: i => i.Cut()));
        Assert.Equal("RB-1 on H-1 by 2026-11-09 with SP-11", Said(List("2027-01-01")));
    }

    [Fact]
    public void What_is_on_a_harness_that_is_withdrawn_itself_is_not_needed()
    {
        Import(Assembly(permitted: "SP-11"));
        Import(Visit("V-2", "2026-10-01").Harness("H-1", "H100", i => i.Doubt()).Bridge("RB-1", "Q100", i => i.On("H-1")).Json);
        Assert.Equal("", Said(List("2028-12-31")));
        Assert.Equal("1 what they are fitted to is out of service", LeftOut(List("2028-12-31")));
    }

    /// <summary>The bridge of H-1 has a day on which its service ends, though after the day asked for.</summary>
    [Fact]
    public void How_many_are_left_out_and_why_is_in_the_workbook_in_each_language()
    {
        Import(Assembly(permitted: "SP-11"));
        var unlimited = JsonNode.Parse(Visit("V-2", "2026-07-01").Harness("H-2", "H200").Connector("C-1", "C1", i => i.On("H-2")).Json)!;
        unlimited["limits"] = new JsonArray();
        Import(unlimited.ToJsonString());
        var needs = List("2027-01-01");
        Assert.Equal("1 no limit that can be counted and no projected wear is recorded", LeftOut(needs));
        var plan = SparesPlan.Of(needs, new Dictionary<string, int>(StringComparer.Ordinal));
        (MessageLanguage Language, string Sheet, string Why)[] must =
        [
            (MessageLanguage.English, "Left out", "no limit that can be counted and no projected wear is recorded"),
            (TranslatedMessages.German, "Nicht aufgeführt", "weder zählbare Grenze noch absehbare Abnutzung ist eingetragen"),
            (TranslatedMessages.French, "Non retenues", "ni limite calculable ni usure projetée n’est connue"),
        ];
        foreach (var (language, name, why) in must)
        {
            using var workbook = new XLWorkbook(new MemoryStream(WriteSpares.Workbook(plan, language)));
            var sheet = workbook.Worksheet(name);
            Assert.Equal(("1", why), (sheet.Cell(2, 1).GetString(), sheet.Cell(2, 2).GetString()));
            Assert.Equal("", sheet.Cell(3, 1).GetString());
        }
    }

    /// <summary>The examiner concludes that the whole is to go out on account of its part: the part is what has to be ordered.</summary>
    [Fact]
    public void What_took_its_harness_out_with_it_is_needed()
    {
        var visit = Visit("V-1", "2026-07-01").Harness("H-1", "H100", i => i.Concluded()).Bridge("RB-1", "Q100", i => i.Cut().On("H-1"));
        Import(Limited(visit.Json, "harness", "SP-11"));
        Assert.Equal("RB-1 on H-1 by 2026-11-09 with SP-11", Said(List("2027-01-01")));
    }

    [Theory]
    [InlineData("2027-01-30", "")]
    [InlineData("2027-01-31", "RB-1 on H-1 by 2027-01-31 with SP-11")]
    public void A_part_with_a_dated_defect_is_needed_by_its_last_day(string to, string must)
    {
        Import(Assembly(permitted: "SP-11", more: i => i.LaterDefect("2027-02-01")));
        Assert.Equal(must, Said(List(to)));
        // A later record that only names it says nothing else.
        Import(Visit("V-2", "2026-08-01").Harness("H-2", "H200").Bridge("RB-1", "Q100", i => i.On("H-1").NotLookedAt()).Json);
        Assert.Equal(must, Said(List(to)));
    }

    [Fact]
    public void A_later_record_without_the_limits_ends_none_of_them()
    {
        Import(Assembly(permitted: "SP-11").Replace("\"obsoleteOn\":\"2028-01-15\"", "\"neverUsed\":false", StringComparison.Ordinal));
        Assert.Equal(
            "RB-1 on H-1 by 2034-02-01 with SP-11",
            Said(List("2034-12-31")).Replace("2034-02-28", "2034-02-01", StringComparison.Ordinal)
        );
        var later = JsonNode.Parse(Visit("V-2", "2026-08-01").Harness("H-1", "H100").Bridge("RB-1", "Q100", i => i.On("H-1")).Json)!;
        later["limits"] = new JsonArray();
        Import(later.ToJsonString());
        Assert.StartsWith("RB-1 on H-1 by 2034-02-", Said(List("2034-12-31")), StringComparison.Ordinal);
        Assert.EndsWith("with SP-11", Said(List("2034-12-31")), StringComparison.Ordinal);
    }

    /// <summary>The bridge is hired, the harness is not; whichever of them is asked for, it is on the order.</summary>
    [Theory]
    [InlineData(null)]
    [InlineData("Alder Vale Ltd")]
    public void A_hired_part_on_a_harness_of_the_employer_is_needed(string? employer)
    {
        Import(Limited(Visit("V-1", "2026-07-01").Harness("H-1", "H100").Json, "harness", "SP-11"));
        Import(Visit("V-2", "2026-07-01").HiredFrom("Larch Hire Ltd").Bridge("RB-1", "Q100", i => i.Cut().On("H-1")).Json);
        Assert.Equal("RB-1 on H-1 by 2026-11-09 with SP-11", Said(List("2027-01-01", employer)));
    }

    [Fact]
    public void A_withdrawn_part_on_something_that_nobody_knows_is_named()
    {
        Import(Visit("V-1", "2026-07-01").Connector("C-1", "C1", i => i.Cut().On("H-9")).Json);
        Assert.Equal("C-1 on  by 2026-11-09 with ", Said(List("2027-01-01")));
    }

    /// <summary>Recorded last at another firm, it is still on the harness of this one.</summary>
    [Fact]
    public void A_part_that_another_firm_s_visit_recorded_last_is_needed_where_its_harness_is()
    {
        Import(Assembly(permitted: "SP-11"));
        Import(Visit("V-2", "2026-08-01", "Birch Lane Ltd").Bridge("RB-1", "Q100", i => i.Cut()).Json);
        Assert.Contains("RB-1 on H-1 by 2026-11-09 with SP-11", Said(List("2027-01-01", "Alder Vale Ltd")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_without_an_id_is_counted()
    {
        Import(Visit("V-1", "2026-07-01").Harness("H-1", "H100").Bridge("", "Q100", i => i.On("H-1")).Json);
        Assert.Equal("1 they have no id", LeftOut(List("2027-01-01")));
    }

    [Fact]
    public void A_part_that_was_taken_off_is_needed_no_more()
    {
        Import(Assembly(permitted: "SP-11", more: i => i.Cut()));
        Import(
            Visit("V-2", "2026-10-01").Harness("H-1", "H100").Bridge("RB-2", "Q2", i => i.On("H-1")).Renewed("H-1", "RB-1", "RB-2").Json
        );
        Assert.DoesNotContain("RB-1", Said(List("2027-01-01")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_bridge_of_which_no_record_says_what_it_is_on_is_named_without_a_part_number()
    {
        Import(Limited(Visit("V-1", "2026-07-01").Bridge("RB-1", "Q100").Json, "rope-bridge", null));
        Assert.Equal("RB-1 on  by 2028-01-15 with ", Said(List("2028-12-31")));
    }

    /// <summary>The seeded firm has bridges that wear: their trend is what a decision works out, and no limit is made of it.</summary>
    [Fact]
    public void Projected_wear_is_a_reason_and_called_a_proposal()
    {
        var today = new LocalDate(2026, 3, 20);
        var needs = ListSpares.In(new SparesRequest(seeded.Place, today.PlusYears(3), today));
        Assert.Contains(needs.All, n => n.Why.Text.Contains("projected", StringComparison.Ordinal));
        Assert.All(needs.All, n => Assert.True(n.By <= today.PlusYears(3)));
    }

    [Theory]
    [InlineData("xlsx")]
    [InlineData("csv")]
    public void The_order_holds_no_formula(string kind)
    {
        Import(Assembly(permitted: "=1+1"));
        var file = Path.Combine(_workspace.Folder, $"order.{kind}");
        var plan = SparesPlan.Of(List("2028-12-31"), new Dictionary<string, int>(StringComparer.Ordinal));
        WriteSpares.Run(plan, file, OutputGuard.NewFilesOnly, MessageLanguage.English);
        if (kind is "csv")
        {
            Assert.Contains("'=1+1", File.ReadAllText(file), StringComparison.Ordinal);
            return;
        }
        using var workbook = new XLWorkbook(file);
        Assert.DoesNotContain(workbook.Worksheets.SelectMany(s => s.CellsUsed()), cell => cell.HasFormula);
        Assert.Equal("=1+1", workbook.Worksheet("Order").Cell(2, 1).GetString());
    }

    private static string Assembly(string? permitted, Func<StoryItem, StoryItem>? more = null) =>
        Limited(
            Visit("V-1", "2026-07-01")
                .Harness("H-1", "H100")
                .Bridge("RB-1", "Q100", i => more is null ? i.On("H-1") : more(i.On("H-1")))
                .Json,
            "harness",
            permitted
        );

    /// <summary>The bridge is obsolete on a day; the maker of the whole permits a part, or names none.</summary>
    private static string Limited(string json, string category, string? permitted)
    {
        var record = JsonNode.Parse(json)!;
        foreach (var item in record["items"]!.AsArray().Where(i => (string)i!["category"]! == "rope-bridge"))
            item!["obsoleteOn"] = "2028-01-15";
        var whole = record["items"]!.AsArray().First(i => (string)i!["category"]! == category)!;
        foreach (var entry in record["limits"]!.AsArray())
            entry!.AsObject().Remove("permittedParts");
        if (permitted is not null)
        {
            var limits = record["limits"]!.AsArray().FirstOrDefault(l => (string?)l!["model"] == (string?)whole["model"]);
            if (limits is null)
                record["limits"]!
                    .AsArray()
                    .Add(
                        limits = new JsonObject
                        {
                            ["maker"] = (string?)whole["maker"],
                            ["model"] = (string?)whole["model"],
                            ["source"] = new JsonObject { ["title"] = "Instructions" },
                            ["noLimit"] = true,
                        }
                    );
            limits["permittedParts"] = new JsonArray(permitted);
            foreach (var part in record["items"]!.AsArray().Where(i => i!["fittedTo"] is not null))
                part!["partNumber"] = permitted;
        }
        return record.ToJsonString();
    }

    private SpareNeeds List(string to, string? employer = null) =>
        ListSpares.In(
            new SparesRequest(_workspace.Register, NodaTime.Text.LocalDatePattern.Iso.Parse(to).Value, Today) { Employer = employer }
        );

    private static string LeftOut(SpareNeeds needs) =>
        string.Join("; ", needs.LeftOut.Select(left => FormattableString.Invariant($"{left.Parts} {left.Why.Text}")));

    private static string Said(SpareNeeds needs) =>
        string.Join(
            "; ",
            needs.All.Select(n =>
                FormattableString.Invariant($"{n.Part} on {n.Whole} by {n.By:uuuu-MM-dd} with {string.Join(' ', n.Permitted)}")
            )
        );

    private void Import(string json)
    {
        var path = Path.Combine(_workspace.Folder, FormattableString.Invariant($"visit-{++_files}.json"));
        File.WriteAllText(path, json);
        ImportVisits.Run([path], _workspace.Register, Today, KnownRules.BuiltIn);
    }
}
