using ClosedXML.Excel;
using ExamDocs.Core.Records;

namespace ExamDocs.UseCases.Tests.Commands;

/// <summary>
/// However a list says that something is out of use, in whatever place, it comes in withdrawn; the row beside it, which says
/// nothing of the kind, does not.
/// </summary>
public sealed class AdoptOutOfUseTests
{
    private static readonly object?[] Headings = ["Asset", "Type", "Serial No", "Status", "Location"];

    /// <summary>Three karabiners, the second of which is the suspect.</summary>
    private static IXLWorksheet Three(ListFile list, string status = "Pass", string location = "Van 1", string sheet = "Kit") =>
        list.Sheet(
            sheet,
            Headings,
            ["K-1", "Karabiner", "S1", "Pass", "Van 1"],
            ["K-2", "Karabiner", "S2", status, location],
            ["K-3", "Karabiner", "S3", "Pass", "Van 1"]
        );

    private static void AssertSecondAlone(ListFile list)
    {
        var outcomes = list.Checked();
        Assert.Equal(Outcome.Withdraw, outcomes["K-2"].Outcome);
        Assert.Contains(outcomes["K-2"].Codes, c => c is "W10" or "W11");
        Assert.Equal(Outcome.Undetermined, outcomes["K-1"].Outcome);
        Assert.Equal(Outcome.Undetermined, outcomes["K-3"].Outcome);
    }

    [Theory]
    [InlineData("Fail")]
    [InlineData("FAILED - gate")]
    [InlineData("faild")]
    [InlineData("scrapped")]
    [InlineData("Scraped")]
    [InlineData("scrapped 12.01.2026")]
    [InlineData("s c r a p p e d")]
    [InlineData("scr\u200Bapped")]
    [InlineData("sсrарреd")] // with Cyrillic letters
    [InlineData("ＳＣＲＡＰＰＥＤ")]
    [InlineData("Withdrawn")]
    [InlineData("witdrawn")]
    [InlineData("Pass, later withdrawn")]
    [InlineData("not OK")]
    [InlineData("quarantine")]
    [InlineData("do not use!")]
    [InlineData("U/S")]
    [InlineData("binned")]
    [InlineData("ausgesondert")]
    [InlineData("Ausgemustert")]
    [InlineData("n.i.O.")]
    [InlineData("nicht bestanden")]
    [InlineData("gesperrt")]
    [InlineData("zerstoert")]
    [InlineData("mis au rebut")]
    [InlineData("réformé")]
    [InlineData("H.S.")]
    [InlineData("hors service")]
    [InlineData("non conforme")]
    [InlineData("X")]
    [InlineData("❌")]
    [InlineData("no")]
    [InlineData("7")]
    [InlineData("?")]
    [InlineData("unknown")]
    [InlineData("no defects found but then dropped and scrapped")]
    public void A_word_in_the_column_of_states(string status)
    {
        using var list = new ListFile();
        Three(list, status);
        list.Adopt();
        AssertSecondAlone(list);
    }

    [Theory]
    [InlineData("Pass")]
    [InlineData("ok")]
    [InlineData("no defects")]
    [InlineData("keine Mängel")]
    [InlineData("R.A.S.")]
    [InlineData("bestanden")]
    [InlineData("In use")]
    [InlineData("✓")]
    [InlineData("n/a")]
    public void A_good_word_holds_nothing_back_and_decides_nothing(string status)
    {
        using var list = new ListFile();
        Three(list, status);
        list.Adopt();
        Assert.All(list.Checked().Values, i => Assert.Equal(Outcome.Undetermined, i.Outcome));
        Assert.Empty(list.Record().Examinations);
    }

    [Theory]
    [InlineData("scrapped")]
    [InlineData("in the bin: scrapped May 2025")]
    [InlineData("verschrottet")]
    [InlineData("mise au rebut")]
    [InlineData("destroied")]
    [InlineData("replaced by K-9")]
    [InlineData("verkauft an Ann")]
    public void A_word_in_a_column_for_something_else(string location)
    {
        using var list = new ListFile();
        Three(list, location: location);
        list.Adopt();
        AssertSecondAlone(list);
    }

    [Fact]
    public void A_line_through_the_row()
    {
        using var list = new ListFile();
        Three(list).Row(3).Style.Font.Strikethrough = true;
        list.Adopt();
        AssertSecondAlone(list);
    }

    [Fact]
    public void A_line_through_the_serial_alone_which_is_then_not_taken_for_it()
    {
        using var list = new ListFile();
        Three(list).Cell("C3").Style.Font.Strikethrough = true;
        list.Adopt();
        AssertSecondAlone(list);
        var item = list.Record().Items.Single(i => i.Id == "K-2");
        Assert.Null(item.Serial);
        Assert.Contains("S2 (struck out)", item.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_through_part_of_a_text()
    {
        using var list = new ListFile();
        var rich = Three(list).Cell("E3").RichText;
        rich.AddText("Van 1").SetStrikethrough();
        rich.AddText(" Van 2");
        list.Adopt();
        AssertSecondAlone(list);
    }

    [Fact]
    public void A_colour_that_few_rows_have()
    {
        using var list = new ListFile();
        Three(list).Range("A3:E3").Style.Fill.BackgroundColor = XLColor.Red;
        list.Adopt();
        AssertSecondAlone(list);
    }

    [Fact]
    public void Red_letters()
    {
        using var list = new ListFile();
        Three(list).Cell("A3").Style.Font.FontColor = XLColor.Red;
        list.Adopt();
        AssertSecondAlone(list);
    }

    [Fact]
    public void A_comment()
    {
        using var list = new ListFile();
        Three(list).Cell("B3").Comment.AddText("dropped from the crown, scrapped");
        list.Adopt();
        AssertSecondAlone(list);
    }

    [Fact]
    public void A_hidden_column_of_states()
    {
        using var list = new ListFile();
        Three(list, "scrapped").Column(4).Hide();
        var result = list.Adopt();
        AssertSecondAlone(list);
        Assert.Contains(result.Remarks, r => r.Contains("hidden columns", StringComparison.Ordinal));
    }

    [Fact]
    public void A_hidden_row()
    {
        using var list = new ListFile();
        Three(list, "scrapped").Row(3).Hide();
        var result = list.Adopt();
        AssertSecondAlone(list);
        Assert.Contains(result.Remarks, r => r.Contains("hidden rows", StringComparison.Ordinal));
    }

    [Fact]
    public void A_state_merged_over_several_rows()
    {
        using var list = new ListFile();
        var sheet = Three(list);
        sheet.Cell("D3").SetValue("scrapped");
        sheet.Cell("D4").Clear();
        sheet.Range("D3:D4").Merge();
        list.Adopt();
        var outcomes = list.Checked();
        Assert.Equal(Outcome.Withdraw, outcomes["K-2"].Outcome);
        Assert.Equal(Outcome.Withdraw, outcomes["K-3"].Outcome);
    }

    [Fact]
    public void The_name_of_a_sheet_though_another_sheet_has_the_same_item_in_use()
    {
        using var list = new ListFile();
        Three(list);
        list.Sheet("Scrapped 2025", ["Asset", "Type", "Serial No"], ["K-2", "Karabiner", "S2"]);
        var result = list.Adopt();
        Assert.Contains(result.Remarks, r => r.Contains("K-2 is in more than one row", StringComparison.Ordinal));
        var record = list.Record();
        Assert.Equal(4, record.Items.Count);
        Assert.Equal("K-2", Assert.Single(record.Examinations).Item);
        Assert.Equal(Conclusion.Withdraw, record.Examinations[0].Conclusion);
    }

    [Fact]
    public void The_name_of_the_file()
    {
        using var list = new ListFile { Name = "withdrawn kit.xlsx" };
        Three(list);
        list.Adopt();
        Assert.All(list.Checked().Values, i => Assert.Equal(Outcome.Withdraw, i.Outcome));
    }

    [Fact]
    public void A_hidden_sheet()
    {
        using var list = new ListFile();
        list.Sheet("Kit", ["Asset", "Type", "Serial No"], ["K-1", "Karabiner", "S1"], ["K-3", "Karabiner", "S3"]);
        list.Sheet("Old", ["Asset", "Type", "Status"], ["K-2", "Karabiner", "disposed of"]).Hide();
        var result = list.Adopt();
        AssertSecondAlone(list);
        Assert.Contains(result.Remarks, r => r.Contains("the sheet Old is hidden", StringComparison.Ordinal));
    }

    [Fact]
    public void A_title_within_the_table()
    {
        using var list = new ListFile();
        list.Sheet(
            "Kit",
            Headings,
            ["K-1", "Karabiner", "S1", "Pass", "Van 1"],
            ["K-3", "Karabiner", "S3", "Pass", "Van 1"],
            ["Withdrawn since the last visit"],
            ["K-2", "Karabiner", "S2", "Pass", "Van 1"]
        );
        list.Adopt();
        AssertSecondAlone(list);
    }

    [Theory]
    [InlineData("Withdrawn on", "03/02/2026")]
    [InlineData("Scrapped?", "x")]
    [InlineData("Disposal date", "yes")]
    [InlineData("In use", "No")]
    [InlineData("In use", null)]
    [InlineData("Out of service", "in store")]
    [InlineData("Ausgesondert am", "12.01.2026")]
    [InlineData("Date de mise au rebut", "2026-01")]
    [InlineData("Kaputt", "ja")]
    [InlineData("Last inspection", "withdrawn")]
    [InlineData("A heading of our own", "retired from use")]
    public void A_column_under_another_heading(string heading, string? value)
    {
        using var list = new ListFile();
        list.Sheet(
            "Kit",
            ["Asset", "Type", "Serial No", heading],
            ["K-1", "Karabiner", "S1", heading is "In use" ? "Yes" : null],
            ["K-2", "Karabiner", "S2", value],
            ["K-3", "Karabiner", "S3", heading is "In use" ? "Yes" : null]
        );
        list.Adopt(ListFile.Propose);
        AssertSecondAlone(list);
    }

    [Fact]
    public void A_formula_without_its_result_in_the_column_of_states()
    {
        using var list = new ListFile();
        Three(list).Cell("D3").FormulaA1 = "1/0";
        list.Adopt();
        AssertSecondAlone(list);
    }

    [Fact]
    public void The_day_of_it_is_the_list_s_or_the_one_asked_for()
    {
        using var list = new ListFile();
        list.Sheet(
            "Kit",
            ["Asset", "Type", "Withdrawn on", "Status", "Last inspection"],
            ["K-1", "Karabiner", new DateTime(2026, 2, 3, 0, 0, 0, DateTimeKind.Unspecified), null, "2025-03-01"],
            ["K-2", "Karabiner", null, "Fail", "2025-03-01"],
            ["K-3", "Karabiner", null, "Fail", null],
            ["K-4", "Karabiner", new DateTime(2031, 1, 1, 0, 0, 0, DateTimeKind.Unspecified), "Pass", "2025-03-01"]
        );
        var result = list.Adopt();
        var days = list.Record().Examinations.ToDictionary(e => e.Item!, e => e.ExaminedOn, StringComparer.Ordinal);
        Assert.Equal(new NodaTime.LocalDate(2026, 2, 3), days["K-1"]);
        Assert.Equal(new NodaTime.LocalDate(2025, 3, 1), days["K-2"]);
        Assert.Equal(ListFile.AsOf, days["K-3"]);
        Assert.Contains(result.Remarks, r => r.Contains("2026-04-01 was taken: K-3", StringComparison.Ordinal));
        Assert.False(days.ContainsKey("K-4"));
        Assert.Equal(new PartialDate(2031, 1, 1), list.Record().Items.Single(i => i.Id == "K-4").ObsoleteOn);
    }

    [Fact]
    public void What_came_in_withdrawn_is_fit_again_only_once_it_is_released()
    {
        using var list = new ListFile();
        Three(list, "Fail");
        list.Adopt();
        AssertSecondAlone(list);
        Assert.Equal(Outcome.Withdraw, ExaminedAgain.Outcome(list, "K-2", released: false));
        Assert.NotEqual(Outcome.Withdraw, ExaminedAgain.Outcome(list, "K-2", released: true));
    }
}
