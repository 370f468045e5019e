using System.Text;
using ExamDocs.Documents.PdfSyntax;
using ExamDocs.Documents.ReadingCopies;
using ExamDocs.Documents.Tests.Printing;
using NodaTime;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Outline;

namespace ExamDocs.Documents.Tests.ReadingCopies;

/// <summary>Many files become one that is sound, in which every bookmark and link leads to its page, and the same in gives the same out.</summary>
public sealed class ReadingCopyTests(SharedBrowser browser)
{
    private static readonly CopyFacts Facts = new("All \u05D0 of it", "en", new LocalDate(2026, 5, 12), number => $"Pack {number}");

    [Fact]
    public async Task Pages_bookmarks_labels_and_links_are_those_of_the_parts()
    {
        var front = await PrintAsync(
            "<title>t</title><h1>Front</h1><h2>Gaps</h2><p>"
                + $"<a href=\"{ReadingCopy.LinkStart}B%20%C3%A9\">to B</a></p><p><a href=\"{ReadingCopy.LinkStart}gone\">nowhere</a> "
                + "<a href=\"https://example.org/\">elsewhere</a></p><h2 style=\"break-before: page\">Second</h2>"
        );
        byte[] copy = Written(
            new CopyPart("front", null, [], 2, () => front) { IsFront = true },
            Part("A", "first of A", "second of A"),
            Part("B \u00E9", "only of B")
        );

        using var read = PdfDocument.Open(copy);
        Assert.Equal(5, read.NumberOfPages);
        var marks = Tool.QpdfJson(copy).Values.Count(d => (string?)d["/Subtype"] is "/Stamp");
        Assert.Equal(5, marks);
        Assert.Contains("only of B", read.GetPage(5).Text, StringComparison.Ordinal);
        Assert.True(read.TryGetBookmarks(out var bookmarks));
        Assert.Equal(
            ["Front 1", "Gaps 1", "Second 2", "Documents 3", "A 3", "B \u00E9 5"],
            bookmarks.GetNodes().OfType<DocumentBookmarkNode>().Select(b => $"{b.Title} {b.PageNumber}")
        );
        var objects = Tool.QpdfJson(copy);
        var pages = objects.Values.Single(o => (string?)o["/Type"] is "/Pages")["/Kids"]!.AsArray().Select(k => (string)k!).ToList();
        var link = Assert.Single(objects.Values, o => (string?)o["/Subtype"] is "/Link");
        Assert.Equal(pages[4], (string?)link["/Dest"]![0]);
        Assert.Contains(objects[$"obj:{pages[0]}"]["/Annots"]!.AsArray(), note => ReferenceEquals(objects[$"obj:{(string)note!}"], link));
    }

    [Fact]
    public void Page_labels_are_Roman_in_front_and_Arabic_from_the_first_document()
    {
        byte[] copy = Written(Part("F", "front") with { IsFront = true }, Part("A", "one"), Part("B", "two"));
        var catalog = Tool.QpdfJson(copy).Values.Single(o => (string?)o["/Type"] is "/Catalog");
        Assert.Equal("[0,{\"/S\":\"/r\"},1,{\"/S\":\"/D\"}]", catalog["/PageLabels"]!["/Nums"]!.ToJsonString());
    }

    [Fact]
    public void The_same_parts_give_the_same_bytes_and_another_day_another_identifier()
    {
        CopyPart[] parts = [Part("A", "one"), Part("B", "two")];
        Assert.Equal(Written(parts), Written(parts));
        Assert.NotEqual(Written(parts), Written(Facts with { On = Facts.On.PlusDays(1) }, parts));
    }

    [Fact]
    public void What_several_parts_have_alike_is_written_once()
    {
        var one = Written(Part("A", "one")).Length;
        var ten = Written([.. Enumerable.Range(0, 10).Select(n => Part($"P{n}", "one"))]).Length;
        Assert.True(ten < one * 7, $"{ten} bytes against {one}");
    }

    [Fact]
    public void Other_people_s_programs_find_it_sound()
    {
        var copy = Written(Part("F", "front") with { IsFront = true }, Part("A", "one", "two"), Part("B", "three"));
        Assert.DoesNotContain("WARNING", Tool.QpdfCheck(copy), StringComparison.Ordinal);
        Assert.Contains("three", Tool.PdfText(copy), StringComparison.Ordinal);
    }

    /// <summary>What a page does when it is opened, and where its notes lead, belong to the single document.</summary>
    [Fact]
    public void Actions_and_notes_of_a_part_are_not_carried_over()
    {
        var copy = Encoding.Latin1.GetString(Written(new CopyPart("A", "A", [], 1, () => TestPages.WithAction())));
        Assert.DoesNotContain("JavaScript", copy, StringComparison.Ordinal);
        Assert.DoesNotContain("/AA", copy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_with_other_pages_than_was_said_is_refused() =>
        Assert.Throws<PdfSyntaxException>(() => Written(Part("A", "one") with { Pages = 2 }));

    [Fact]
    public void It_stops_between_two_parts_where_it_is_cancelled()
    {
        using var source = new CancellationTokenSource();
        var parts = Enumerable.Range(0, 5).Select(n => Part($"P{n}", "one")).ToList();
        var done = 0;
        Assert.Throws<OperationCanceledException>(() =>
            ReadingCopy.Write(
                Stream.Null,
                parts,
                Facts,
                () =>
                {
                    if (++done == 2)
                        source.Cancel();
                },
                source.Token
            )
        );
        Assert.Equal(2, done);
    }

    [Theory]
    [InlineData(1, "i")]
    [InlineData(4, "iv")]
    [InlineData(9, "ix")]
    [InlineData(49, "xlix")]
    [InlineData(1994, "mcmxciv")]
    public void Roman_figures(int number, string figures) => Assert.Equal(figures, ReadingCopy.Roman(number));

    private static CopyPart Part(string key, params string[] pages) =>
        new(key, key, ["Documents"], pages.Length, () => TestPages.Of(pages));

    private static byte[] Written(params CopyPart[] parts) => Written(Facts, parts);

    private static byte[] Written(CopyFacts facts, params CopyPart[] parts)
    {
        using var copy = new MemoryStream();
        ReadingCopy.Write(copy, parts, facts, null, TestContext.Current.CancellationToken);
        return copy.ToArray();
    }

    private Task<byte[]> PrintAsync(string html) => browser.PrintAsync($"<!doctype html><html lang=\"en\"><meta charset=utf-8>{html}");
}
