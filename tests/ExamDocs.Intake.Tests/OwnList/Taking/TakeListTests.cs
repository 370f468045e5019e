using ExamDocs.Core.Records;
using ExamDocs.Intake.OwnList.Mapping;
using ExamDocs.Intake.OwnList.Taking;

namespace ExamDocs.Intake.Tests.OwnList.Taking;

/// <summary>Lists of several shapes, and that no row of any list is lost without being named.</summary>
public sealed class TakeListTests
{
    private const string Headings = "Asset;Type;Serial No;Made;Status;Location";

    private static readonly string[] Against = ["scrapped", "withdrawn", "failed", "ausgesondert", "hors service", "destroyed", "retired"];

    [Fact]
    public void A_list_without_headings()
    {
        var taken = Lists.Take("K-1;Karabiner;2021;Pass", "K-2;Helm;2022;scrapped", "K-3;Gurt;2020;Pass");
        Assert.Equal(3, taken.Record.Items.Count);
        Assert.Empty(taken.LeftOut);
        Assert.Single(taken.Record.Examinations);
    }

    [Fact]
    public void Titles_within_the_table_are_the_kinds_and_a_further_table_has_headings_of_its_own()
    {
        var taken = Lists.Take(
            "Kit of Brackwater Tree Care;;;",
            "Asset;Serial No;Made;Location",
            "Karabiners;;;",
            "K-1;S1;2021;Van",
            "Helmets;;;",
            "K-2;S2;2021;Van",
            "Asset;Type;Maker;Serial No",
            "K-3;Gurt;Tarn;S3",
            "Total;3;;"
        );
        Assert.Equal(["connector", "helmet", "harness"], taken.Record.Items.Select(i => i.Category!));
        Assert.Equal("Tarn", taken.Record.Items[2].Maker);
        Assert.Equal([1, 2, 3, 5, 7, 9], taken.LeftOut.Select(r => r.Row).Order());
    }

    [Fact]
    public void Rows_without_an_id_go_by_their_serial_or_their_number()
    {
        var taken = Lists.Take(Headings, "K-1;Helm;S1;;;", ";Helm;S2;;;", ";Helm;;;;", ";Helm;B7;;;", ";Helm;B7;;;", "ROW-6;Helm;;;;");
        Assert.Equal(["K-1", "S2", "ROW-4", "ROW-5", "ROW-6-2", "ROW-6"], taken.Record.Items.Select(i => i.Id!));
        Assert.Contains(taken.Remarks, r => r.Contains("the serial was taken for it: our kit row 3", StringComparison.Ordinal));
        Assert.Contains(taken.Remarks, r =>
            r.Contains("the row's number was taken: our kit row 4, our kit row 5", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Two_rows_with_one_id_both_come_in_and_are_named()
    {
        var taken = Lists.Take(Headings, "K-1;Helm;S1;;;", "k1;Helm;S2;;;", "K-1;Helm;S3;;scrapped;");
        Assert.Equal(3, taken.Record.Items.Count);
        Assert.Contains(taken.Remarks, r => r.Contains("is in more than one row", StringComparison.Ordinal));
    }

    [Fact]
    public void What_finds_no_place_is_kept_in_the_description_under_its_heading()
    {
        var item = Lists.Take("Asset;Type;Bag colour;Made;WLL", "K-1;Helm;blue;Q1 2020;plenty", "K-2;Helm;;2020;").Record.Items[0];
        Assert.Equal("Helm (in the owner's list: Bag colour: blue; Made: Q1 2020; WLL: plenty)", item.Description);
        Assert.Null(item.Manufactured);
        Assert.Null(item.SafeWorkingLoad);
    }

    [Fact]
    public void A_row_that_stands_for_several_things_is_named() =>
        Assert.Contains(Lists.Take("Asset;Type;Qty", "K-1;Karabiner;12", "K-2;Karabiner;1").Remarks, r =>
            r.StartsWith("the row stands for more than one thing", StringComparison.Ordinal)
            && r.EndsWith("row 2", StringComparison.Ordinal)
        );

    [Theory]
    [InlineData("WLL;2,5 t", "2.5", "t")]
    [InlineData("WLL kg;140", "140", "kg")]
    [InlineData("SWL;150 kg", "150", "kg")]
    public void A_load_comes_in_with_its_unit(string column, string value, string unit)
    {
        var (heading, typed) = (column.Split(';')[0], column.Split(';')[1]);
        var load = Lists.Take($"Asset;Type;{heading}", $"K-1;Karabiner;{typed}").Record.Items[0].SafeWorkingLoad;
        Assert.Equal(value, load?.Value?.ToString(System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal(unit, load?.Unit);
    }

    [Fact]
    public void A_load_without_a_unit_is_not_taken_for_one() =>
        Assert.Null(Lists.Take("Asset;Type;WLL", "K-1;Karabiner;140").Record.Items[0].SafeWorkingLoad);

    [Fact]
    public void An_unknown_kind_stays_unknown_and_is_named()
    {
        var taken = Lists.Take(Headings, "K-1;Throw bag;;;;", "K-2;Helm;;;;");
        Assert.Equal("Throw bag", taken.Record.Items[0].Category);
        Assert.Contains(taken.Remarks, r => r.Contains("'Throw bag': our kit row 2", StringComparison.Ordinal));
    }

    /// <summary>Every filled row is an item or is named, whatever stands in it.</summary>
    [Fact]
    public void No_row_is_ever_lost()
    {
        var random = new Random(20260401);
        for (var run = 0; run < 400; run++)
        {
            string[] lines = [.. Enumerable.Range(0, random.Next(1, 30)).Select(_ => Line(random)), ListOfOne];
            var mapping = Lists.Mapping(lines);
            var taken = TakeList.Of(mapping, Lists.AsOf);
            Assert.True(
                mapping.Book.FilledRows == taken.Record.Items.Count + taken.LeftOut.Count,
                $"{taken.Record.Items.Count} items and {taken.LeftOut.Count} left out of\n{string.Join('\n', lines)}"
            );
            Assert.Equal(taken.LeftOut.Count, taken.LeftOut.Distinct().Count());
        }
    }

    /// <summary>A word against an item counts in whatever column of its row it stands.</summary>
    [Fact]
    public void A_word_against_an_item_is_never_overlooked()
    {
        var random = new Random(20260402);
        for (var run = 0; run < 400; run++)
        {
            var rows = Enumerable.Range(1, 12).Select(n => $"K-{n};Helm;S{n};202{n % 6};Pass;Van {n % 3}".Split(';')).ToList();
            var (row, column) = (random.Next(rows.Count), random.Next(1, 6));
            rows[row][column] = Against[random.Next(Against.Length)];
            var taken = Lists.Take([Headings, .. rows.Select(r => string.Join(';', r))]);
            Assert.Equal(rows[row][0], Assert.Single(taken.Record.Examinations).Item);
        }
    }

    [Fact]
    public void A_map_can_take_a_word_for_a_remark_which_is_said()
    {
        string[] lines = [Headings, "K-1;Helm;S1;;;Scrapped Oak Yard", "K-2;Helm;S2;;;Van"];
        Assert.Single(Lists.Take(lines).Record.Examinations);
        var given = new ListMap { Words = [new WordMap("scrapped oak yard", ExamDocs.Intake.OwnList.Words.UseMeaning.Remark)] };
        var taken = TakeList.Of(new ListMapping(Lists.Read(lines), Core.Regimes.KnownRules.BuiltIn, given), Lists.AsOf);
        Assert.Empty(taken.Record.Examinations);
        Assert.Contains("by the map 'Scrapped Oak Yard' says nothing against an item", taken.Remarks);
    }

    /// <summary>So that every file has the same number of columns.</summary>
    private const string ListOfOne = "K-99;Helm;S99;2020;Pass;Van";

    private static string Line(Random random)
    {
        string[] words =
        [
            "",
            "",
            "",
            "Helm",
            "Karabiner",
            "K-12",
            "Total",
            "scrapped",
            "Pass",
            "Serial No",
            "Asset",
            "Type",
            "Status",
            "03/04/2024",
            "2021",
            "17",
            "a remark of ours",
        ];
        return random.Next(8) == 0 ? Headings : string.Join(';', Enumerable.Range(0, 6).Select(_ => words[random.Next(words.Length)]));
    }
}
