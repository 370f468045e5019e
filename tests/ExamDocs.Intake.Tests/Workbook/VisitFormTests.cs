using System.Text;
using ClosedXML.Excel;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Csv;
using ExamDocs.Intake.Workbook;

namespace ExamDocs.Intake.Tests.Workbook;

/// <summary>The sheet about the visit is a form with the people on it; what earlier versions wrote is read as before.</summary>
public sealed class VisitFormTests
{
    private const string Visit = "Visit";

    [Fact]
    public void People_stand_side_by_side_on_the_form_and_are_read_in_their_order()
    {
        using var workbook = Opened(With(3));
        Assert.False(workbook.TryGetWorksheet("People", out _));
        var names = Row(workbook, "person name");
        Assert.Equal(["Person 1", "Person 2", "Person 3"], Enumerable.Range(2, 3).Select(n => names.Cell(n).GetString()));

        var read = Read(workbook);
        Assert.Empty(read.Findings);
        Assert.Equal(With(3).People, read.Record!.People);
        Assert.Equal($"kit.xlsx!{Visit}!C{names.RowNumber()}", read.Sources.Locate("/people/1/name"));
        Assert.Equal("person name", read.Sources.HeadingOf("/people/1/name"));
    }

    [Fact]
    public void More_people_than_fit_have_a_sheet_of_their_own_as_in_earlier_versions()
    {
        using var workbook = Opened(With(7));
        Assert.Equal(8, workbook.Worksheet("People").RowsUsed().Count());
        Assert.DoesNotContain(workbook.Worksheet(Visit).Column(1).CellsUsed(), c =>
            c.GetString().StartsWith("person", StringComparison.Ordinal)
        );
        Assert.Equal(With(7).People, Read(workbook).Record!.People);
    }

    [Fact]
    public void A_sheet_of_people_beside_the_form_adds_to_it()
    {
        using var workbook = Opened(With(1));
        var people = workbook.AddWorksheet("People");
        (people.Cell(1, 1).Value, people.Cell(1, 2).Value) = ("id", "name");
        (people.Cell(2, 1).Value, people.Cell(2, 2).Value) = ("p9", "Somebody Else");
        Assert.Equal(["p1", "p9"], Read(workbook).Record!.People.Select(p => p.Id));
    }

    [Fact]
    public void What_is_left_empty_is_nobody_and_a_place_left_free_between_two_counts_for_nothing()
    {
        using var workbook = Opened(With(1));
        Assert.True(Row(workbook, "person id").Cell(3).IsEmpty());
        Row(workbook, "person id").Cell(4).Value = "p4";
        Assert.Equal(["p1", "p4"], Read(workbook).Record!.People.Select(p => p.Id));
    }

    [Theory]
    [InlineData("person name", "persn name", "INT021", "person name")]
    [InlineData("employer name", "emploier name", "INT021", "employer name")]
    public void A_misspelt_label_is_named_with_the_one_meant(string label, string typed, string code, string meant)
    {
        using var workbook = Opened(With(1));
        Row(workbook, label).Cell(1).Value = typed;
        var found = Read(workbook).Findings.Where(f => f.Code == code).ToList();
        Assert.Contains(meant, Assert.Single(found).Hint.Text, StringComparison.Ordinal);
    }

    /// <summary>A sentence below the form, with nothing beside it, is no label that was left empty: it may be about a danger.</summary>
    [Fact]
    public void What_is_typed_below_the_form_is_named()
    {
        using var workbook = Opened(With(1));
        var sheet = workbook.Worksheet(Visit);
        var cell = sheet.Cell(sheet.LastRowUsed()!.RowNumber() + 2, 1);
        cell.Value = "COR-11: eye pulled, do not use";
        var read = Read(workbook);
        var found = Assert.Single(read.Findings, f => f.Code is "INT021");
        Assert.Contains("'COR-11: eye pulled, do not use' is not a particular", found.Message.Text, StringComparison.Ordinal);
        Assert.EndsWith(FormattableString.Invariant($"!{cell.Address}"), $"{read.Sources.Locate(found.Path)}", StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_typed_above_a_person_is_an_error_and_so_is_a_line_through_any_of_them()
    {
        using var workbook = Opened(With(2));
        workbook.Worksheet(Visit).Column(2).CellsUsed().Single(c => c.GetString() is "person 1").Value = "ill, did not sign";
        Row(workbook, "person address").Cell(3).Style.Font.Strikethrough = true;
        Assert.Equal(["INT064", "INT067"], Read(workbook).Findings.Select(f => f.Code).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_comment_on_a_person_is_an_error()
    {
        using var workbook = Opened(With(2));
        Row(workbook, "person qualifications").Cell(3).Comment.AddText("expired");
        var read = Read(workbook);
        var finding = Assert.Single(read.Findings);
        Assert.Equal(
            ("INT065", $"kit.xlsx!{Visit}!C{Row(workbook, "person qualifications").RowNumber()}"),
            (finding.Code, read.Sources.Locate(finding.Path))
        );
    }

    [Fact]
    public void The_examiner_is_chosen_from_the_ids_on_the_form()
    {
        using var workbook = Opened(With(2));
        var ids = Row(workbook, "person id").RowNumber();
        var list = Row(workbook, "examiner").Cell(2).AsRange().SetDataValidation();
        Assert.Contains($"$B${ids}:$C${ids}", list.Value, StringComparison.Ordinal);
        Assert.False(list.ShowErrorMessage);
    }

    [Fact]
    public void It_is_printed_upright_on_one_page()
    {
        using var workbook = Opened(With(2));
        var page = workbook.Worksheet(Visit).PageSetup;
        Assert.Equal((XLPageOrientation.Portrait, 1, 1), (page.PageOrientation, page.PagesWide, page.PagesTall));
    }

    [Fact]
    public void As_a_file_of_separated_values_it_is_read_alike()
    {
        using var workbook = Opened(With(2));
        var rows = workbook
            .Worksheet(Visit)
            .RangeUsed()!
            .Rows()
            .Select(r => string.Join(';', r.Cells().Select(c => $"\"{c.GetString()}\"")));
        var read = CsvRecordReader.Read([new CsvFile("Visit.csv", Encoding.UTF8.GetBytes(string.Join('\n', rows)))], "kit");
        Assert.Equal(["INT040"], read.Findings.Select(f => f.Code));
        Assert.Equal(With(2).People, read.Record!.People);
        Assert.Equal(With(2).Visit, read.Record.Visit);
    }

    private static IXLRow Row(XLWorkbook workbook, string label) =>
        workbook.Worksheet(Visit).Column(1).CellsUsed().Single(c => FitCord.IsHeading(c, label)).WorksheetRow();

    private static ReadResult Read(XLWorkbook workbook)
    {
        using var stream = new MemoryStream();
        workbook.SaveAs(stream);
        stream.Position = 0;
        return WorkbookRecordReader.Read(stream, "kit.xlsx");
    }

    private static XLWorkbook Opened(ExaminationRecord record)
    {
        var stream = new MemoryStream();
        CaptureWorkbook.Write(stream, [], record, forNextVisit: false);
        stream.Position = 0;
        return new XLWorkbook(stream);
    }

    private static ExaminationRecord With(int people) =>
        new()
        {
            Format = ExaminationRecord.FormatName,
            Visit = new()
            {
                Reference = "V-1",
                Regime = "gb-loler",
                Employer = new() { Name = "Fenmark Trees", Address = "1 Mill Lane" },
            },
            People =
            [
                .. Enumerable
                    .Range(1, people)
                    .Select(n => new Person
                    {
                        Id = $"p{n}",
                        Name = $"Person {n}",
                        Address = "2 Mill Lane",
                        Qualifications = "Years of it",
                        SelfEmployed = n % 2 == 0,
                    }),
            ],
        };
}
