using ClosedXML.Excel;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Workbook;

namespace ExamDocs.Intake.Tests.Workbook;

/// <summary>How short a row is, and that what is folded away or joined is read as before.</summary>
public sealed class CaptureLayoutTests
{
    /// <summary>Id, serial, maker and model: all that a first visit asks of an item besides its answers and the conclusion.</summary>
    private const int NeededOfItem = 4;

    [Fact]
    public void The_smallest_connector_takes_twenty_cells_at_a_first_visit()
    {
        var starred = Starred("Connectors", Blank("connector"));
        Assert.Equal(Catalogue.Find("connector")!.Criteria.Count(c => c.Required) + NeededOfItem + 1, starred.Count);
        Assert.True(starred.Count <= 20, $"{starred.Count} cells");
    }

    /// <summary>Beside what bears a star its date of manufacture; and for each station its item, its position and a reading.</summary>
    [Fact]
    public void A_rope_bridge_with_five_stations_takes_thirty_six_cells() =>
        Assert.InRange(Starred("Rope bridges", Blank("rope-bridge")).Count + 1 + (5 * 3), 20, 36);

    /// <summary>On paper nobody can tell the rows of a second page apart without the ids.</summary>
    [Fact]
    public void Ids_and_headings_are_printed_on_every_page_by_their_place_on_the_sheet()
    {
        using var stream = Stream(Noted("dried soil"));
        using var zip = new System.IO.Compression.ZipArchive(stream);
        using var names = new StreamReader(zip.GetEntry("xl/workbook.xml")!.Open());
        var text = names.ReadToEnd();
        Assert.Contains(">'Rope bridges'!$A:$B,'Rope bridges'!$1:$1<", text, StringComparison.Ordinal);
        Assert.DoesNotMatch("Print_Titles\"[^>]*>[^<]*![A-Z0-9]", text);
    }

    [Fact]
    public void What_every_item_needs_stands_before_what_few_need_and_the_rest_is_folded_away()
    {
        using var workbook = Blank("rope-bridge");
        var sheet = workbook.Worksheet("Rope bridges");
        var folded = sheet.ColumnsUsed().Where(c => c.IsHidden).Select(c => c.ColumnNumber()).ToList();
        var headings = sheet.Row(1).CellsUsed().Select(c => c.GetString()).ToList();

        Assert.Equal(headings.Count, folded[^1]);
        Assert.Equal(Enumerable.Range(folded[0], folded.Count), folded);
        Assert.Equal("conclusion *", headings[folded[0] - 2]);
        Assert.All(folded, n => Assert.Equal(1, sheet.Column(n).OutlineLevel));
        Assert.DoesNotContain(folded, n => headings[n - 1].EndsWith('*'));
        Assert.Contains("description", headings.Skip(folded[0] - 1));
        Assert.False(sheet.IsProtected);
    }

    [Fact]
    public void A_note_stands_in_the_cell_of_its_answer()
    {
        using var workbook = Written(Noted("dried soil"));
        var sheet = workbook.Worksheet("Rope bridges");
        var at = sheet.Row(1).CellsUsed().Single(c => c.GetString() is "cover-cut *").Address.ColumnNumber;

        Assert.Equal("noted: dried soil", sheet.Cell(2, at).GetString());
        Assert.DoesNotContain(sheet.Row(1).CellsUsed(), c => c.GetString().EndsWith(" note", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("noted", "dried soil")]
    [InlineData("noted", "defect of an earlier owner, mended")]
    [InlineData("noted", " leading blank")]
    [InlineData("clear", "no doubt about it")]
    [InlineData("defect", "cut: 4 mm")]
    [InlineData("a word of nobody's", "dried soil")]
    [InlineData(null, "dried soil")]
    [InlineData("doubt", null)]
    public void Whatever_an_answer_and_its_note_say_is_read_again(string? state, string? note)
    {
        var record = Noted(note, state);
        var (back, _) = RecordBinder.Bind(WorkbookReader.Read(Stream(record), "kit.xlsx").Root!);
        var observation = Assert.Single(back.Examinations[0].Observations);

        Assert.Equal((state, note?.Trim()), (observation.StateAsTyped, observation.Note));
    }

    /// <summary>The words that an earlier version wrote on the guide and the name it gave to the sheet of limits.</summary>
    [Fact]
    public void A_workbook_of_an_earlier_version_is_read_without_a_word()
    {
        using var workbook = new XLWorkbook();
        var guide = workbook.AddWorksheet("How to fill this in");
        guide.Cell(1, 1).Value = "How to fill this in";
        (guide.Cell(2, 1).Value, guide.Cell(2, 2).Value) = (
            "1",
            "Fill in the Visit and People sheets first, then one row per item on the sheet of its kind."
        );
        (guide.Cell(3, 1).Value, guide.Cell(3, 2).Value) = (
            "Sheet Limits",
            "What the makers' instructions allow, with the document that says so. Nothing is assumed where nothing is recorded."
        );
        var limits = workbook.AddWorksheet("Limits");
        (limits.Cell(1, 1).Value, limits.Cell(1, 2).Value, limits.Cell(1, 3).Value) = ("maker", "model", "max age years");
        (limits.Cell(2, 1).Value, limits.Cell(2, 2).Value, limits.Cell(2, 3).Value) = ("Fennick Works", "F1", 10);
        using var stream = new MemoryStream();
        workbook.SaveAs(stream);
        stream.Position = 0;

        var read = WorkbookReader.Read(stream, "kit.xlsx");

        Assert.Empty(read.Findings);
        Assert.Equal(10, Assert.Single(RecordBinder.Bind(read.Root!).Record.Limits).MaxAgeYears);
    }

    /// <summary>Where items stand on several sheets, a list offers the ids that are known when the workbook is written.</summary>
    [Fact]
    public void Ids_of_items_on_several_sheets_are_offered_in_one_list_which_is_read_nowhere()
    {
        var record = new ExaminationRecord
        {
            Format = ExaminationRecord.FormatName,
            Items =
            [
                new Item { Id = "B-1", Category = "rope-bridge" },
                new Item { Id = "=H-1", Category = "harness" },
                new Item { Id = "FAIL-2", Category = "harness" },
            ],
        };
        using var stream = Stream(record);
        using var workbook = new XLWorkbook(stream);
        var list = workbook.Worksheet("Defects").Range("A2:A2").SetDataValidation();
        var offered = workbook.Worksheet("Words").Range(list.Value.Split('!')[1].Replace("$", "", StringComparison.Ordinal));
        Assert.Equal(["=H-1", "B-1"], offered.Cells().Select(c => c.GetString()).Order(StringComparer.Ordinal));
        Assert.False(list.ShowErrorMessage);

        stream.Position = 0;
        var read = WorkbookReader.Read(stream, "kit.xlsx");
        Assert.Empty(read.Findings);
        Assert.Equal(3, RecordBinder.Bind(read.Root!).Record.Items.Count);
    }

    [Fact]
    public void What_is_typed_below_the_ids_on_the_hidden_sheet_is_an_error_where_it_says_how_an_item_is()
    {
        using var written = RoundTripTests.Written(RoundTripTests.Example(), Catalogue.All, forNextVisit: false);
        using var workbook = new XLWorkbook(written);
        workbook
            .Worksheet("Words")
            .ColumnsUsed()
            .Single(c => c.FirstCell().GetString() is "ids of items")
            .LastCellUsed()
            .CellBelow()
            .Value = "B-1 cracked";
        using var saved = new MemoryStream();
        workbook.SaveAs(saved);
        saved.Position = 0;
        Assert.Contains(WorkbookReader.Read(saved, "kit.xlsx").Findings, f => f.Code is "INT067");
    }

    private static List<string> Starred(string sheet, XLWorkbook workbook)
    {
        using (workbook)
            return [.. workbook.Worksheet(sheet).Row(1).CellsUsed().Select(c => c.GetString()).Where(h => h.EndsWith('*'))];
    }

    private static XLWorkbook Blank(string category)
    {
        var stream = new MemoryStream();
        CaptureWorkbook.Write(stream, [Catalogue.Find(category)!], null, forNextVisit: false);
        stream.Position = 0;
        return new XLWorkbook(stream);
    }

    private static XLWorkbook Written(ExaminationRecord record) => new(Stream(record));

    private static MemoryStream Stream(ExaminationRecord record)
    {
        var stream = new MemoryStream();
        CaptureWorkbook.Write(stream, [], record, forNextVisit: false);
        stream.Position = 0;
        return stream;
    }

    private static ExaminationRecord Noted(string? note, string? state = "noted") =>
        new()
        {
            Format = ExaminationRecord.FormatName,
            Items = [new Item { Id = "B-1", Category = "rope-bridge" }],
            Examinations =
            [
                new Examination
                {
                    Item = "B-1",
                    Observations =
                    [
                        new Observation
                        {
                            Criterion = "cover-cut",
                            StateAsTyped = state,
                            State = Words.States.Find(state),
                            Note = note,
                        },
                    ],
                },
            ],
        };
}
