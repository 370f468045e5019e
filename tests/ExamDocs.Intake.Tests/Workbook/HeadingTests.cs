using ExamDocs.Core;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.RuleFiles;
using ExamDocs.Intake.Workbook.Shape;
using static ExamDocs.Intake.Tests.Workbook.XlsxFile;

namespace ExamDocs.Intake.Tests.Workbook;

/// <summary>Headings are matched by what they mean; nothing under one that means nothing is passed over in silence.</summary>
public sealed class HeadingTests
{
    [Theory]
    [InlineData("serial")]
    [InlineData("  SERIAL ")]
    [InlineData("Serial No.")]
    [InlineData("serial_number")]
    [InlineData("S/N")]
    [InlineData("Serial number:")]
    [InlineData("* Serial")]
    public void A_heading_is_known_by_its_meaning(string heading)
    {
        var read = Bridge(heading, "00123");
        Assert.Equal("00123", read.Record.Items[0].Serial);
        Assert.Empty(read.Places);
    }

    [Theory]
    [InlineData("cover cut", "cover cut remarks")]
    [InlineData("Cover-cut", "Cover_cut comment")]
    [InlineData("COVER-CUT", "cover-cut note")]
    public void A_criterion_and_its_note_are_known_by_theirs(string state, string note)
    {
        var read = new ReadWorkbook(new XlsxFile().Sheet("Rope bridges", Row("id", note, state) + Row("B-1", "fluffed", "noted")));
        var answer = Assert.Single(read.Record.Examinations[0].Observations);
        Assert.Equal(("cover-cut", "noted", "fluffed"), (answer.Criterion, answer.StateAsTyped, answer.Note));
        Assert.Empty(read.Places);
    }

    [Fact]
    public void A_near_miss_is_not_read_and_is_answered_with_what_it_resembles()
    {
        var read = Bridge("serail", "00123");
        Assert.Null(read.Record.Items[0].Serial);
        Assert.Equal("INT021 kit.xlsx!Rope bridges!B2", Assert.Single(read.Places));
        Assert.StartsWith("Did you mean 'serial'?", read.Hints[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_column_and_another_name_for_it_contradict_each_other()
    {
        var read = new ReadWorkbook(new XlsxFile().Sheet("Rope bridges", Row("id", "serial", "serial number") + Row("B-1", "1", "2")));
        Assert.StartsWith("INT002 ", Assert.Single(read.Places), StringComparison.Ordinal);
    }

    [Fact]
    public void Two_answers_under_two_names_of_one_criterion_both_count()
    {
        var read = new ReadWorkbook(
            new XlsxFile().Sheet("Rope bridges", Row("id", "cover-cut", "cover cut") + Row("B-1", "clear", "defect"))
        );
        Assert.Equal(["clear", "defect"], read.Record.Examinations[0].Observations.Select(o => o.StateAsTyped));
    }

    [Fact]
    public void A_missing_column_is_named_with_its_sheet()
    {
        var read = new ReadWorkbook(
            new XlsxFile().Sheet("Rope bridges", Row("id", "cover-cut") + Row("B-1", "clear")).Sheet("Tests", Row("result") + Row("held"))
        );
        Assert.Contains("the sheet Rope bridges has no column 'saw-contact'", read.Missing);
        Assert.Contains("the sheet Rope bridges has no column 'conclusion'", read.Missing);
        Assert.Contains("the sheet Tests has no column 'item'", read.Missing);
        Assert.DoesNotContain("the sheet Rope bridges has no column 'pinch'", read.Missing);
    }

    [Fact]
    public void Items_without_any_examination_lack_no_column_of_one() =>
        Assert.Equal(
            ["the sheet Rope bridges has no column 'id'"],
            new ReadWorkbook(new XlsxFile().Sheet("Rope bridges", Row("serial", "maker") + Row("1", "Fennick Works"))).Missing
        );

    [Fact]
    public void The_capture_workbook_lacks_nothing()
    {
        using var stream = new MemoryStream();
        ExamDocs.Intake.Workbook.CaptureWorkbook.Write(stream, KnownRules.BuiltIn.Categories, FullRecord.Make(), forNextVisit: false);
        stream.Position = 0;
        Assert.DoesNotContain(ExamDocs.Intake.Workbook.WorkbookReader.Read(stream, "kit.xlsx").Findings, f => f.Code == "INT052");
    }

    [Fact]
    public void The_users_own_words_are_known_too_for_criteria_and_their_notes_as_well()
    {
        var rules = KnownRules.BuiltIn.With(
            new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal)
            {
                ["serial"] = ["Seriennummer"],
                ["cover-cut"] = ["Mantelschnitt"],
            }
        );
        var read = new ReadWorkbook(
            new XlsxFile().Sheet(
                "Rope bridges",
                Row("id", "Seriennummer", "Mantelschnitt", "Mantelschnitt note") + Row("B-1", "7", "noted", "rau")
            ),
            rules
        );
        Assert.Empty(read.Places);
        Assert.Equal("7", read.Record.Items[0].Serial);
        Assert.Equal(
            ("cover-cut", "rau"),
            (read.Record.Examinations[0].Observations[0].Criterion, read.Record.Examinations[0].Observations[0].Note)
        );
    }

    [Theory]
    [InlineData("serail", "Seriennummer", "/serail: no sheet of the capture workbook has this heading; type one that it has")]
    [InlineData("serial", "Model", "/serial: 'Model' is a heading of the capture workbook itself; take it out")]
    [InlineData("serial", "cover cut", "/serial: 'cover cut' is a heading of the capture workbook itself; take it out")]
    [InlineData("serial", "Part No.", "/serial: 'Part No.' means 'part number' already; take it out")]
    [InlineData("serial", "Serial no", null)]
    [InlineData("serial", "Seriennummer", null)]
    public void Own_words_add_a_name_and_take_none_away(string heading, string other, string? fault) =>
        Assert.Equal(
            fault is null ? [] : [fault],
            RuleAdditions.Against(
                new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal) { [heading] = [other] },
                KnownRules.BuiltIn
            )
        );

    [Fact]
    public void One_word_for_two_headings_is_refused() =>
        Assert.Equal(
            ["/model: 'NUMMER' stands under 'serial' too; keep one of the two"],
            RuleAdditions.Against(
                new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal) { ["serial"] = ["Nummer"], ["model"] = ["NUMMER"] },
                KnownRules.BuiltIn
            )
        );

    [Theory]
    [InlineData("""{"serial":["Seriennummer"]}""", true)]
    [InlineData("""{"serial":"Seriennummer"}""", false)]
    [InlineData("""{"serial":[]}""", false)]
    [InlineData("""{}""", false)]
    [InlineData("""{"serial":["a"],"serial":["b"]}""", false)]
    public void The_file_of_own_words_keeps_to_its_schema(string json, bool sound)
    {
        var file = RuleFile.Headings(System.Text.Encoding.UTF8.GetBytes(json));
        Assert.Equal(sound, file.Value is not null);
        Assert.Equal(sound, file.Faults.Count == 0);
    }

    /// <summary>No common name is a heading itself, stands for two, or for one that no sheet has.</summary>
    [Fact]
    public void The_names_in_common_use_stand_for_one_heading_each()
    {
        var columns = WorkbookShape.Known.SelectMany(s => s.Columns).Select(c => Heading.Key(c.Heading)).ToHashSet(StringComparer.Ordinal);
        var others = HeadingWords.InCommonUse.Values.SelectMany(o => o).Select(Heading.Key).ToList();
        Assert.Equal(others.Count, others.Distinct(StringComparer.Ordinal).Count());
        Assert.Empty(others.Where(columns.Contains));
        Assert.Empty(HeadingWords.InCommonUse.Keys.Select(Heading.Key).Where(h => !columns.Contains(h)));
    }

    private static ReadWorkbook Bridge(string heading, string value) =>
        new(new XlsxFile().Sheet("Rope bridges", Row("id", heading) + Row("B-1", value)));
}
