using System.Net;
using System.Text.RegularExpressions;
using ClosedXML.Excel;
using ExamDocs.Core.Criteria;
using ExamDocs.Documents.Rendering;
using ExamDocs.Intake.Workbook;
using ExamDocs.Templates.FirstVisit;

namespace ExamDocs.UseCases.Tests.Commands;

/// <summary>The sheets for a first visit ask whatever the workbook marks as needed, for every category.</summary>
public sealed partial class PaperAsWorkbookTests
{
    public static TheoryData<string> Categories => [.. Catalogue.All.Select(c => c.Id)];

    [Theory]
    [MemberData(nameof(Categories))]
    public async Task What_the_workbook_marks_as_needed_is_asked_on_paper_and_marked_there_too(string id)
    {
        var category = Catalogue.Find(id)!;
        var paper = await PaperAsync(category);
        var needed = Needed(category).ToList();

        Assert.True(needed.Count > category.Criteria.Count(c => c.Required), $"{needed.Count}");
        Assert.Equal([], needed.Except(paper.Where(p => p.IsNeeded).Select(p => p.Asks), StringComparer.Ordinal));
    }

    [Fact]
    public async Task What_few_items_need_is_asked_under_a_name_that_the_workbook_has()
    {
        var category = Catalogue.Find("rope-bridge")!;
        using var workbook = Blank(category);
        var known = workbook.Worksheets.SelectMany(Headings).Select(h => h.Asks).ToHashSet(StringComparer.Ordinal);
        Assert.Equal([], (await PaperAsync(category)).Select(p => p.Asks).Where(a => a.Contains('/') && !known.Contains(a)));
    }

    private static async Task<List<(string Asks, bool IsNeeded)>> PaperAsync(Category category)
    {
        await using var renderer = new DocumentRenderer();
        var html = await renderer.HtmlAsync(new FirstVisitModel([new BlankItems(category, 1)], null, "0"));
        return
        [
            .. Asked()
                .Split(html)
                .Skip(1)
                .Chunk(2)
                .Select(p => (WebUtility.HtmlDecode(p[0]), p[1].IndexOf('*', StringComparison.Ordinal) is >= 0 and < 200)),
        ];
    }

    private static IEnumerable<string> Needed(Category category)
    {
        using var workbook = Blank(category);
        return
        [
            .. workbook.Worksheets.SelectMany(Headings).Where(h => h.IsNeeded).Select(h => h.Asks).Where(h => h is not "Visit/examiner"),
        ];
    }

    private static IEnumerable<(string Asks, bool IsNeeded)> Headings(IXLWorksheet sheet) =>
        // The examiner of all items is who is written down first on paper.
        from cell in sheet.Name is "Visit" ? sheet.Column(1).CellsUsed() : sheet.Row(1).CellsUsed()
        let heading = cell.GetString()
        let name = Catalogue.All.Any(c => c.Plural == sheet.Name) ? "item" : sheet.Name
        select ($"{name}/{heading.TrimEnd(' ', '*')}", heading.EndsWith('*'));

    private static XLWorkbook Blank(Category category)
    {
        var stream = new MemoryStream();
        CaptureWorkbook.Write(stream, [category], null, forNextVisit: false);
        stream.Position = 0;
        return new XLWorkbook(stream);
    }

    [GeneratedRegex("data-asks=\"([^\"]*)\"", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Asked();
}
