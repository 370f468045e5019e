using ExamDocs.UseCases.Commands;
using UglyToad.PdfPig;

namespace ExamDocs.UseCases.Tests.Issuing;

public sealed class PrintCheckSheetsTests
{
    [Fact]
    public async Task The_pile_holds_every_sheet_page_by_page_and_the_single_sheets_lie_beside_it()
    {
        using var workspace = new Workspace();
        var result = await RunAsync(workspace, workspace.Write(Workspace.Example().Only("CON-01", "CON-07", "PUL-02")));

        Assert.Null(result.Refused);
        Assert.Equal(
            ["CON-01", "CON-07", "PUL-02"],
            result.Sheets.Select(s => Assert.Single(s.Document.Items)).Order(StringComparer.Ordinal),
            StringComparer.Ordinal
        );
        var pile = Path.Combine(workspace.Out, "pile.pdf");
        Assert.Equal([pile], Directory.GetFiles(workspace.Out));
        Assert.Null(Pdf.Objection(pile));
        using var pdf = PdfDocument.Open(pile);
        var numbers = pdf.GetPages()
            .Select(p => result.Sheets.Single(s => p.GetWords().Any(w => w.Text == s.Document.Number)).Document.Number)
            .ToList();
        Assert.Equal(
            result.Sheets.SelectMany(s => Enumerable.Repeat(s.Document.Number, s.Document.Pages)),
            numbers,
            StringComparer.Ordinal
        );
    }

    [Fact]
    public async Task Printed_again_it_is_the_same_pile_under_the_same_numbers()
    {
        using var workspace = new Workspace();
        var input = workspace.Write(Workspace.Example().Only("CON-01"));
        var first = await RunAsync(workspace, input);
        var second = await RunAsync(workspace, input);

        Assert.Equal(first.Sheets.Single().Document.Number, second.Sheets.Single().Document.Number);
        Assert.False(second.Sheets.Single().IssuedNow);
    }

    [Fact]
    public async Task Only_the_categories_asked_for_are_in_it()
    {
        using var workspace = new Workspace();
        var result = await RunAsync(workspace, workspace.Write(Workspace.Example().Only("CON-01", "PUL-02")), "pulley");

        Assert.Equal("PUL-02", Assert.Single(Assert.Single(result.Sheets).Document.Items));
    }

    [Theory]
    [InlineData("spring", null, "Put it right first")]
    [InlineData(null, "hammock", "there is no category 'hammock'")]
    public async Task What_was_misread_is_not_handed_on_and_a_category_must_be_known(string? manufactured, string? category, string why)
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-01");
        if (manufactured is not null)
            record.Item("CON-01")["manufactured"] = manufactured;
        var result = await RunAsync(workspace, workspace.Write(record), category is null ? [] : [category]);

        Assert.Contains(why, result.Refused, StringComparison.Ordinal);
        Assert.Empty(result.Sheets);
        Assert.False(File.Exists(workspace.Register));
    }

    private static Task<CheckSheetResult> RunAsync(Workspace workspace, string input, params string[] categories) =>
        PrintCheckSheets.RunAsync(
            new CheckSheetRequest
            {
                From = input,
                Outputs = new() { Replace = true },
                OutFile = Path.Combine(workspace.Out, "pile.pdf"),
                Categories = categories,
                RegisterPath = workspace.Register,
                Today = Workspace.Today,
            },
            TestContext.Current.CancellationToken
        );
}
