using ClosedXML.Excel;

namespace ExamDocs.Cli.Tests;

/// <summary>What <c>examdocs check</c> prints of findings: one cause is one finding, in at most forty lines.</summary>
public sealed class FindingsPrinterTests : IDisposable
{
    private readonly Examdocs _examdocs = new();

    /// <summary>The labels of people on the form.</summary>
    private static IEnumerable<IXLCell> People(XLWorkbook workbook) =>
        workbook.Worksheet("Visit").Column(1).CellsUsed(c => c.GetString().StartsWith("person ", StringComparison.Ordinal));

    /// <summary>What the column lacks, its missing heading and the note on it follow from the slip.</summary>
    [Theory]
    [InlineData("id *", "idd *")]
    [InlineData("saw-contact *", "saw contct *")]
    [InlineData("conclusion *", "conclusin *")]
    [InlineData("serial *", "serail *")]
    [InlineData("maker *", "makr")]
    [InlineData("basis", "bassis")]
    [InlineData("manufactured", "manufactred")]
    public async Task A_misspelt_heading_is_one_finding(string heading, string typed)
    {
        await TwelveItems.WriteAsync(_examdocs, w =>
            w.Worksheet("Rope bridges").Row(1).CellsUsed().Single(c => c.GetString() == heading).Value = typed
        );
        var run = await _examdocs.RunAsync("check", TwelveItems.Workbook);

        Assert.Equal(1, run.ExitCode);
        Assert.Single(run.Findings(), f => f.TrimStart().StartsWith("error", StringComparison.Ordinal));
        Assert.Contains($"Did you mean '{heading.TrimEnd(' ', '*')}'?", run.Err, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_good_workbook_has_none()
    {
        await TwelveItems.WriteAsync(_examdocs);

        var run = await _examdocs.RunAsync("check", TwelveItems.Workbook);

        Assert.Empty(run.Findings());
        Assert.Contains("12 fit, 0 fit-until, 0 undetermined, 0 withdraw", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("clera", "undetermined")]
    [InlineData("okk", "undetermined")]
    [InlineData("clear: defect at 200 mm", "undetermined")]
    [InlineData("Defect!", "withdraw")]
    [InlineData("doubtful", "withdraw")]
    public async Task One_answer_that_is_not_one_of_the_words_is_one_finding(string typed, string outcome)
    {
        await TwelveItems.WriteAsync(_examdocs, w => w.Cell("Rope bridges", "BRG-01", "saw-contact").Value = typed);

        var run = await _examdocs.RunAsync("check", TwelveItems.Workbook);

        var finding = Assert.Single(run.Findings());
        Assert.Contains("(saw-contact): ", finding, StringComparison.Ordinal);
        // The bridge, and the harness that it is on.
        Assert.Contains($" 2 {outcome}", run.Out, StringComparison.Ordinal);
        Assert.Equal(1, run.ExitCode);
    }

    [Theory]
    [InlineData("Rope bridges", "BRG-01", "manufactured", "03/04/2024")]
    [InlineData("Connectors", "CON-01", "safe working load", "a lot")]
    [InlineData("Connectors", "CON-01", "basis", "every so often")]
    [InlineData("Connectors", "CON-01", "conclusion", "fine")]
    [InlineData("Connectors", "CON-01", "purpose", "lifting")]
    [InlineData("Connectors", "CON-01", "last examined", "last autumn")]
    [InlineData("Connectors", "CON-01", "examiner", "nobody")]
    public async Task One_value_that_cannot_be_read_is_one_finding(string sheet, string item, string heading, string typed)
    {
        await TwelveItems.WriteAsync(_examdocs, w => w.Cell(sheet, item, heading).Value = typed);

        var run = await _examdocs.RunAsync("check", TwelveItems.Workbook);

        Assert.Contains($"({heading}): ", Assert.Single(run.Findings()), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_row_written_twice_is_two_findings_at_most()
    {
        await TwelveItems.WriteAsync(_examdocs, w =>
        {
            var sheet = w.Worksheet("Connectors");
            var last = sheet.LastRowUsed()!;
            last.CopyTo(sheet.Row(last.RowNumber() + 1));
        });

        var run = await _examdocs.RunAsync("check", TwelveItems.Workbook);

        Assert.InRange(run.Findings().Count, 1, 2);
        Assert.Contains("rows 3, 4", run.Err, StringComparison.Ordinal);
        Assert.Contains("2 undetermined", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_person_who_is_missing_is_one_finding_with_every_row()
    {
        await TwelveItems.WriteAsync(_examdocs, w =>
        {
            foreach (var label in People(w))
                label.WorksheetRow().Cells(2, 7).Clear(XLClearOptions.Contents);
        });

        var run = await _examdocs.RunAsync("check", TwelveItems.Workbook);

        var finding = Assert.Single(run.Findings(), f => f.Contains("there is no person 'ex1'", StringComparison.Ordinal));
        Assert.All(run.Findings(), f => Assert.Contains("there is no person", f, StringComparison.Ordinal));
        Assert.Contains("Rope bridges ", finding, StringComparison.Ordinal);
        Assert.Contains("rows 2, 3", finding, StringComparison.Ordinal);
        Assert.Contains("0 fit, 0 fit-until, ", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_visit_without_a_date_is_one_finding()
    {
        await TwelveItems.WriteAsync(_examdocs, w =>
            w.Worksheet("Visit").RowsUsed().Single(r => r.Cell(1).GetString() is "examined on *").Cell(2).Value = "some day in May"
        );

        var run = await _examdocs.RunAsync("check", TwelveItems.Workbook);

        Assert.Single(run.Findings());
        Assert.Contains("12 undetermined", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_item_id_misspelt_at_its_examination_is_one_finding()
    {
        var record = Records.Small();
        record["examinations"]![0]!["item"] = "COR-1l";

        var run = await _examdocs.RunAsync("check", record.Write(_examdocs, "visit.json"));

        Assert.Contains("there is no item 'COR-1l'", Assert.Single(run.Findings()), StringComparison.Ordinal);
        Assert.Contains("1 undetermined", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_list_that_is_no_capture_workbook_is_told_in_one_sentence()
    {
        WriteOwnList("list.xlsx");

        var run = await _examdocs.RunAsync("check", "list.xlsx");

        Assert.Equal(2, run.ExitCode);
        Assert.InRange((run.Out + run.Err).TrimEnd().Split('\n').Length, 1, 25);
        Assert.StartsWith("list.xlsx: unreadable: this is not a capture workbook", run.Err, StringComparison.Ordinal);
        Assert.Contains("'Kit list' (301 rows)", run.Err, StringComparison.Ordinal);
    }

    [Fact]
    public async Task More_than_forty_lines_are_printed_only_when_asked_for()
    {
        await TwelveItems.WriteAsync(_examdocs, w =>
        {
            foreach (var row in w.Worksheet("Rope bridges").RowsUsed().Skip(1))
            {
                foreach (var cell in row.CellsUsed(c => c.GetString() is "clear"))
                    cell.Value = $"fine {cell.Address}";
            }
        });

        var run = await _examdocs.RunAsync("check", TwelveItems.Workbook);
        var all = await _examdocs.RunAsync("check", TwelveItems.Workbook, "--all");
        var lines = run.Err.TrimEnd().Split('\n');
        var more = Assert.Single(lines, l => l.Contains("'examdocs check --all' lists them", StringComparison.Ordinal));

        Assert.InRange(lines.TakeWhile(l => !string.Equals(l, more, StringComparison.Ordinal)).Count(), 10, 40);
        Assert.Contains("errors", more, StringComparison.Ordinal);
        Assert.True(all.Err.Split('\n').Length > 50);
        Assert.DoesNotContain("more finding", all.Err, StringComparison.Ordinal);
        Assert.Equal((run.ExitCode, run.Out), (all.ExitCode, all.Out));
    }

    [Fact]
    public async Task Of_too_many_the_gravest_are_shown()
    {
        await TwelveItems.WriteAsync(_examdocs, w =>
        {
            foreach (
                var sheet in w.Worksheets.Where(s => s.Row(1).CellsUsed().Any(c => c.GetString().TrimEnd(' ', '*') is "last examined"))
            )
                sheet
                    .Column(sheet.Row(1).CellsUsed().Single(c => c.GetString().TrimEnd(' ', '*') is "last examined").Address.ColumnNumber)
                    .CellsUsed()
                    .Skip(1)
                    .ToList()
                    .ForEach(c => c.Clear(XLClearOptions.Contents));
            w.Cell("Connectors", "CON-02", "conclusion").Value = "fine";
        });

        var run = await _examdocs.RunAsync("check", TwelveItems.Workbook);

        Assert.StartsWith("    error", run.Findings()[0], StringComparison.Ordinal);
        Assert.Equal(2, run.Findings().Count);
    }

    [Fact]
    public async Task Hints_name_the_headings_of_the_sheet()
    {
        var heading = "Date of manufacture";
        await TwelveItems.WriteAsync(_examdocs, w =>
        {
            People(w).Single(c => c.GetString() is "person self-employed *").CellRight().Clear(XLClearOptions.Contents);
            foreach (var cell in w.Worksheets.SelectMany(s => s.Row(1).CellsUsed(c => c.GetString().TrimEnd(' ', '*') is "manufactured")))
                cell.Value = heading;
            w.Cell("Connectors", "CON-01", heading).Value = "";
        });

        var run = await _examdocs.RunAsync("check", TwelveItems.Workbook);

        Assert.Contains(
            "Type yes for person self-employed, or no with the employer's name and address.",
            run.Err,
            StringComparison.Ordinal
        );
        Assert.Contains($"({heading}): the date of manufacture is not known.", run.Err, StringComparison.Ordinal);
        Assert.DoesNotContain("selfEmployed", run.Err, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_row_typed_is_in_the_table_or_named_as_unread()
    {
        await TwelveItems.WriteAsync(_examdocs, w =>
        {
            var sheet = w.Worksheet("Connectors");
            sheet.Cell(10, 200).Value = "see the back of the sheet";
            sheet.Cell(11, 200).Value = "and this";
            sheet.Cell(13, 2).Value = "a connector without an id";
            w.AddWorksheet("Van 2").Cell(3, 1).Value = "CON-99";
        });

        var run = await _examdocs.RunAsync("check", TwelveItems.Workbook);

        Assert.Matches(@"(?m)^\s*Connectors, rows 10, 11\s+NOT READ", run.Out);
        Assert.Matches(@"(?m)^\s*Van 2, row 3\s+NOT READ", run.Out);
        Assert.Matches(@"(?m)^\s*\(no id, Connectors A13\)\s+UNDETERMINED", run.Out);
        Assert.Contains("3 rows not read", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_withdrawn_under_an_unknown_id_is_in_the_table()
    {
        var record = Records.Cut();
        record["examinations"]![0]!["item"] = "COR-1l";

        var run = await _examdocs.RunAsync("check", record.Write(_examdocs, "visit.json"));

        Assert.Matches(@"(?m)^\s*COR-1l \(no item of this id\)\s+WITHDRAW", run.Out);
        Assert.Contains("1 withdrawn under an id that no item has", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_folder_of_workbooks_is_read_and_one_of_several_kinds_explained()
    {
        await TwelveItems.WriteAsync(_examdocs);
        Directory.CreateDirectory(_examdocs.At("visits"));
        File.Move(_examdocs.At(TwelveItems.Workbook), _examdocs.At("visits/one.xlsx"));
        File.Copy(Records.ExampleWorkbook, _examdocs.At("visits/two.xlsx"));
        using (var other = new XLWorkbook(_examdocs.At("visits/two.xlsx")))
        {
            other.Worksheet("Visit").RowsUsed().Single(r => r.Cell(1).GetString() is "reference").Cell(2).Value = "V-2026-TWO";
            other.Save();
        }

        var run = await _examdocs.RunAsync("check", "visits");
        Records.Small().Write(_examdocs, "visits/three.json");
        var mixed = await _examdocs.RunAsync("check", "visits");

        Assert.Contains("12 fit, ", run.Out, StringComparison.Ordinal);
        Assert.Contains("47 fit, ", run.Out, StringComparison.Ordinal);
        Assert.Equal(2, mixed.ExitCode);
        Assert.Contains("visits: unreadable: there are 2 workbooks in the folder", mixed.Err, StringComparison.Ordinal);
        Assert.Contains("three.json", mixed.Err, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("kit.png", "this is a picture")]
    [InlineData("notes.txt", "this is no file that can be read")]
    public async Task Another_kind_of_file_is_told_in_one_sentence(string name, string sentence)
    {
        byte[] content = name.EndsWith(".png", StringComparison.Ordinal)
            ? [0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10]
            : "Dear all"u8.ToArray();
        await File.WriteAllBytesAsync(_examdocs.At(name), content, TestContext.Current.CancellationToken);

        var run = await _examdocs.RunAsync("check", name);

        Assert.Equal(2, run.ExitCode);
        Assert.Contains(sentence, Assert.Single(run.Err.TrimEnd().Split('\n')), StringComparison.Ordinal);
    }

    private void WriteOwnList(string name)
    {
        using var workbook = new XLWorkbook();
        var sheet = workbook.AddWorksheet("Kit list");
        sheet.Cell(1, 1).InsertData(new[] { new[] { "No.", "Make/Model", "Serial No", "Date of manufacture", "Location", "Result" } });
        for (var n = 1; n <= 300; n++)
        {
            sheet.Cell(n + 1, 1).Value = n;
            sheet.Cell(n + 1, 2).Value = "Fennick Works carabiner";
            sheet.Cell(n + 1, 3).Value = $"FW-{n:0000}";
            sheet.Cell(n + 1, 4).Value = $"{n % 28 + 1:00}/04/2021";
            sheet.Cell(n + 1, 5).Value = $"Van {n % 4}";
            sheet.Cell(n + 1, 6).Value = n % 9 == 0 ? "Fail" : "Pass";
        }
        workbook.SaveAs(_examdocs.At(name));
    }

    public void Dispose() => _examdocs.Dispose();
}
