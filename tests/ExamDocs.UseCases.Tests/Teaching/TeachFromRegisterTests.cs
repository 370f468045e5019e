using ClosedXML.Excel;
using ExamDocs.Templates.Lessons;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Tests.SeededYears;
using NodaTime;
using UglyToad.PdfPig;

namespace ExamDocs.UseCases.Tests.Teaching;

public sealed class TeachFromRegisterTests(SeededRegister seeded)
{
    private static readonly LocalDate Today = new(2026, 6, 1);

    [Fact]
    public async Task The_pages_say_what_was_counted_and_that_it_decides_nothing()
    {
        var (result, text) = await PrintedAsync("en.pdf", new PrintStyle());

        Assert.Null(result.Refused ?? result.Failure);
        var lessons = result.Lessons!;
        Assert.Contains(FormattableString.Invariant($"visits: {lessons.Visits}, items: {lessons.Items}"), text, StringComparison.Ordinal);
        Assert.Contains("of this register only", text, StringComparison.Ordinal);
        Assert.Contains("Hardware on the bridge", text, StringComparison.Ordinal);
        Assert.Contains("shackle", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("de", "Was die Aufzeichnungen lehren")]
    [InlineData("fr", "Ce que les enregistrements apprennent")]
    public async Task The_pages_are_printed_whole_in_each_language(string language, string title)
    {
        var (result, text) = await PrintedAsync($"{language}.pdf", new PrintStyle { Language = Language.Find(language)! });

        Assert.Null(result.Refused ?? result.Failure);
        Assert.Contains(title, text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task No_examiner_is_named()
    {
        var (_, text) = await PrintedAsync("names.pdf", new PrintStyle());

        Assert.Contains("Do two examiners see the same?", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Brennick", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Tarrow", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_the_invented_firm_wears_out_by_is_found_in_its_records()
    {
        var (result, _) = await PrintedAsync("found.pdf", new PrintStyle());

        // Shackles wear a bridge more than twice as fast as rings do.
        var wear = result.Lessons!.Wear.ToDictionary(w => w.Name!, w => w.Median, StringComparer.Ordinal);
        Assert.InRange(wear["shackle"] / wear["ring"], 1.6, 3.2);
        var hardware = result.Lessons.Survival.Single(s => s.By is GroupedBy.Hardware).Groups;
        Assert.InRange(hardware.Single(g => g.Name is "shackle").AgainstOthers!.Probability, 0, 0.01);
        Assert.InRange(hardware.Sum(g => g.Curve.Events), 20, 300);
    }

    [Fact]
    public async Task The_workbook_has_a_table_with_filters_for_each_kind_of_number_and_no_formula()
    {
        var result = await RunAsync(new TeachRequest(seeded.Place, seeded.At("book.pdf"), Today) { WorkbookFile = seeded.At("book.xlsx") });

        using var workbook = new XLWorkbook(seeded.At("book.xlsx"));
        Assert.All(workbook.Worksheets, sheet => Assert.True(Assert.Single(sheet.Tables).ShowAutoFilter));
        Assert.DoesNotContain(workbook.Worksheets.SelectMany(s => s.CellsUsed()), cell => cell.HasFormula);
        // Bars show no group that is too small to compare.
        Assert.All(workbook.Worksheets.Where(s => s.ConditionalFormats.Any(f => f.StopIfTrue)), s =>
            Assert.Contains("Enough to compare", s.Row(1).CellsUsed().Select(c => c.GetString()))
        );
        Assert.Equal(
            ["Withdrawals", "Bridges", "Bridges step by step", "Wear", "Reasons"],
            workbook
                .Worksheets.Where(s => s.ConditionalFormats.Any(f => f.ConditionalFormatType is XLConditionalFormatType.DataBar))
                .Select(s => s.Name)
        );
        var bridges = result.Lessons!.Rates.Single(r => r.By is GroupedBy.Category).Groups.Single(g => g.Name is "rope-bridge").Withdrawn;
        var row = workbook.Worksheet("Withdrawals").RowsUsed().Single(r => r.Cell(2).GetString() is "rope-bridge");
        Assert.Equal((bridges.Total, bridges.Count), (row.Cell(3).GetValue<int>(), row.Cell(4).GetValue<int>()));
        Assert.Equal(bridges.Wilson.High, row.Cell(7).GetDouble(), 1e-12);
    }

    [Fact]
    public void Employers_with_kit_on_record_are_named_once_each()
    {
        Assert.Equal(["Harrowmere Tree Works Ltd"], TeachFromRegister.Employers(seeded.Place, Today));
        Assert.Null(TeachFromRegister.Workbook(new LessonsRequest(seeded.Place, Today) { Employer = "Nobody" }));
    }

    [Fact]
    public async Task A_file_that_is_there_is_not_written_over()
    {
        await File.WriteAllTextAsync(seeded.At("taken.xlsx"), "mine", TestContext.Current.CancellationToken);

        await Assert.ThrowsAsync<OutputRefusedException>(() =>
            RunAsync(new TeachRequest(seeded.Place, seeded.At("free.pdf"), Today) { WorkbookFile = seeded.At("taken.xlsx") })
        );
        Assert.False(File.Exists(seeded.At("free.pdf")));
    }

    [Fact]
    public async Task An_employer_without_kit_is_refused()
    {
        var result = await RunAsync(new TeachRequest(seeded.Place, seeded.At("none.pdf"), Today) { Employer = "Nobody" });

        Assert.Contains("Nobody", result.Refused, StringComparison.Ordinal);
        Assert.False(File.Exists(seeded.At("none.pdf")));
    }

    private async Task<(TeachResult Result, string Text)> PrintedAsync(string name, PrintStyle style)
    {
        var result = await RunAsync(new TeachRequest(seeded.Place, seeded.At(name), Today) { Style = style });
        using var pdf = PdfDocument.Open(seeded.At(name));
        return (result, string.Join(' ', pdf.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text)));
    }

    private static Task<TeachResult> RunAsync(TeachRequest request) =>
        TeachFromRegister.RunAsync(request, TestContext.Current.CancellationToken);
}
