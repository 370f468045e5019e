using System.Globalization;
using ExamDocs.Core.Records;
using ExamDocs.UseCases.Commands;

namespace ExamDocs.UseCases.Tests.Commands;

/// <summary>A firm's own list comes into the workbook whole, with few questions, and nothing in it passes for an examination.</summary>
public sealed class AdoptListTests
{
    private static readonly string[] Kinds =
    [
        "Harness",
        "Rope bridge",
        "Karabiner",
        "Lanyard",
        "Climbing rope",
        "Pulley",
        "Prusik",
        "Sling",
        "Rigging block",
        "Swivel",
    ];

    private static readonly string[] Products =
    [
        "Fennick Works Talon",
        "Fennick Works Heron 2",
        "Osk and Lund Brig",
        "Osk and Lund Sloop",
        "Tarn Rigging T4",
        "Tarn Rigging T9",
    ];

    /// <summary>Title, blank row, headings, 270 rows, a total; and a sheet of 30 helmets.</summary>
    private static ListFile ThreeHundred()
    {
        var list = new ListFile();
        object?[] headings =
        [
            "Asset",
            "Type",
            "Make/Model",
            "Serial No.",
            "Made",
            "Bought",
            "Last insp. date",
            "Result",
            "Location",
            "WLL",
            "Hours on rope",
        ];
        list.Sheet(
            "Kit",
            [
                ["Kit of Brackwater Tree Care, spring"],
                [],
                headings,
                .. Enumerable.Range(1, 270).Select(KitRow),
                ["Total", null, 270],
            ]
        );
        list.Sheet(
            "Helmets",
            [
                ["Asset", "Make/Model", "Serial No.", "Made", "Result"],
                .. Enumerable.Range(1, 30).Select(n => new object?[] { Id("HM", n), Products[n % 6], $"H{n:0000}", "Mar 2023", "Pass" }),
            ]
        );
        return list;
    }

    private static object?[] KitRow(int n) =>
        [
            Id("K", n),
            Kinds[n % 10],
            Products[n % 6],
            $"SN{n:00000}",
            n % 3 == 0 ? "2022"
            : n % 3 == 1 ? new DateTime(2022, 1 + (n % 12), 5, 0, 0, 0, DateTimeKind.Unspecified)
            : "Sep 2021",
            $"{1 + (n % 28):00}/{1 + (n % 12):00}/2023",
            new DateTime(2025, 11, 3, 0, 0, 0, DateTimeKind.Unspecified),
            n % 90 == 0 ? "Scrapped"
            : n % 27 == 0 ? "Fail"
            : "Pass",
            $"Van {1 + (n % 4)}",
            n % 10 == 2 ? "22 kN" : null,
            n,
        ];

    private static string Id(string letters, int n) => string.Create(CultureInfo.InvariantCulture, $"{letters}-{n:000}");

    [Fact]
    public void All_three_hundred_rows_come_in_with_fewer_than_ten_questions()
    {
        using var list = ThreeHundred();
        var result = list.Adopt(ListFile.Propose);
        Assert.Empty(result.Refused);
        Assert.True(list.Asked.Count < 10, string.Join('\n', list.Asked.Select(q => q.Text)));
        var record = list.Record();
        Assert.Equal(
            Enumerable
                .Range(1, 270)
                .Select(n => Id("K", n))
                .Concat(Enumerable.Range(1, 30).Select(n => Id("HM", n)))
                .Order(StringComparer.Ordinal),
            record.Items.Select(i => i.Id!).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void Each_value_comes_in_where_it_belongs()
    {
        using var list = ThreeHundred();
        list.Adopt(ListFile.Propose);
        var item = list.Record().Items.Single(i => i.Id == "K-052");
        Assert.Equal("connector", item.Category);
        Assert.Equal("Tarn Rigging", item.Maker);
        Assert.Equal("T4", item.Model);
        Assert.Equal("SN00052", item.Serial);
        Assert.Equal(new PartialDate(2022, 5, 5), item.Manufactured);
        Assert.Equal(new PartialDate(2023, 5, 25), item.Purchased);
        Assert.Equal(new PartialDate(2025, 11, 3), item.LastExamined);
        Assert.Equal(22m, item.SafeWorkingLoad?.Value);
        Assert.Equal("kN", item.SafeWorkingLoad?.Unit);
        Assert.Contains("Location: Van 1", item.Description, StringComparison.Ordinal);
        Assert.Contains("Hours on rope: 52", item.Description, StringComparison.Ordinal);
        Assert.Equal("helmet", list.Record().Items.Single(i => i.Id == "HM-007").Category);
        Assert.Equal(new PartialDate(2023, 3), list.Record().Items.Single(i => i.Id == "HM-007").Manufactured);
    }

    [Fact]
    public void What_the_list_has_as_out_of_use_is_withdrawn_and_nothing_is_fit()
    {
        using var list = ThreeHundred();
        list.Adopt(ListFile.Propose);
        var outcomes = list.Checked();
        Assert.Equal(300, outcomes.Count);
        Assert.All(outcomes, o => Assert.True(o.Value.Outcome is Outcome.Withdraw or Outcome.Undetermined, o.Key));
        foreach (var n in Enumerable.Range(1, 270).Where(n => n % 27 == 0))
            Assert.Contains("W10", outcomes[Id("K", n)].Codes);
        foreach (var n in Enumerable.Range(1, 270).Where(n => n % 90 == 0))
            Assert.Contains("W11", outcomes[Id("K", n)].Codes);
        Assert.Equal(12, outcomes.Count(o => o.Value.Outcome is Outcome.Withdraw));
    }

    [Fact]
    public void Rows_that_are_no_items_are_named()
    {
        using var list = ThreeHundred();
        var result = list.Adopt(ListFile.Propose);
        Assert.Equal(
            [("Helmets", 1), ("Kit", 1), ("Kit", 3), ("Kit", 274)],
            result.LeftOut.Select(r => (r.Sheet, r.Row)).OrderBy(r => r.Sheet, StringComparer.Ordinal).ThenBy(r => r.Row)
        );
    }

    [Fact]
    public void Nothing_is_written_over()
    {
        using var list = ThreeHundred();
        File.WriteAllText(list.Out, "mine");
        Assert.Contains("is there already", Assert.Single(list.Adopt(ListFile.Propose).Refused), StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(list.Out));
    }

    [Fact]
    public void Where_nobody_can_be_asked_a_map_says_what_is_to_be_settled_and_is_read_the_next_time()
    {
        using var list = new ListFile();
        list.Sheet(
            "Kit",
            ["Plate", "Kind", "Bought"],
            ["A1", "Karabiner", "03/04/2024"],
            ["A2", "Karabiner", "05/06/2024"],
            ["A3", "Throwbag", "05/06/2024"]
        );
        var first = list.Adopt(map: "map.json");
        Assert.Equal(2, first.ToSettle.Count);
        Assert.Null(first.Written);
        Assert.False(File.Exists(list.Out));
        var map = File.ReadAllText(first.MapWritten!);
        Assert.Contains("examdocs-map/1", map, StringComparison.Ordinal);
        File.WriteAllText(
            first.MapWritten!,
            map.Replace("\"dates\": null", "\"dates\": \"month-day-year\"", StringComparison.Ordinal)
                .Replace("\"to\": null", "\"to\": \"id\"", StringComparison.Ordinal)
        );
        var second = list.Adopt(map: "map.json");
        Assert.Empty(second.Refused);
        Assert.Empty(second.ToSettle);
        var items = list.Record().Items;
        Assert.Equal(["A1", "A2", "A3"], items.Select(i => i.Id!));
        Assert.Equal(new PartialDate(2024, 3, 4), items[0].Purchased);
        Assert.Equal("Throwbag", items[2].Category);
        Assert.Contains(second.Remarks, r => r.Contains("'Throwbag'", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("{\"format\":\"examdocs-map/1\",\"colums\":[]}", "no such member")]
    [InlineData("{\"format\":\"examdocs-map/1\",\"kinds\":[{\"word\":\"x\",\"category\":\"zip-line\"}]}", "not a category")]
    [InlineData("{", "commas, quotes and brackets")]
    public void A_map_at_fault_is_refused_with_its_place(string map, string expected)
    {
        using var list = ThreeHundred();
        File.WriteAllText(Path.Combine(list.Folder, "map.json"), map);
        Assert.Contains(expected, string.Join(' ', list.Adopt(map: "map.json").Refused), StringComparison.Ordinal);
        Assert.False(File.Exists(list.Out));
    }
}
