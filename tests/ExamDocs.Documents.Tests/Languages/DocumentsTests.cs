using System.Net;
using System.Text.Json;
using System.Text.RegularExpressions;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences.Messages;
using ExamDocs.Documents.Rendering;
using ExamDocs.Documents.Tests.Printing;
using ExamDocs.Templates;
using ExamDocs.Templates.Certificate;
using ExamDocs.Templates.Evidence;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Label.Wording;
using ExamDocs.Templates.Notice;
using ExamDocs.Templates.Report;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Documents.Tests.Languages;

/// <summary>The example's documents in each language: in that language from end to end, but for what the user typed.</summary>
public sealed partial class DocumentsTests(SharedBrowser browser)
{
    public static TheoryData<string> Tags => [.. Language.All.Select(l => l.Tag)];

    public static TheoryData<string> Foreign => [.. Language.All.Select(l => l.Tag).Where(t => t != "en")];

    [Theory]
    [MemberData(nameof(Tags))]
    public async Task The_page_says_which_language_it_is_in(string tag) =>
        Assert.All(await All(Language.Find(tag)!), html => Assert.Contains($"<html lang=\"{tag}\">", html, StringComparison.Ordinal));

    [Theory]
    [MemberData(nameof(Foreign))]
    public async Task Nothing_is_left_in_English_but_what_was_typed(string tag)
    {
        var left = (await All(Language.Find(tag)!))
            .SelectMany(Lines)
            .SelectMany(line => English.LeftIn(line).Select(word => $"{word}: {line}"))
            .Distinct(StringComparer.Ordinal)
            .ToList();
        Assert.True(left.Count == 0, string.Join('\n', left));
    }

    /// <summary>The same test on the English pages finds English on every one of them.</summary>
    [Fact]
    public async Task English_would_be_seen() =>
        Assert.All(await All(Language.English), html => Assert.NotEmpty(Lines(html).SelectMany(English.LeftIn)));

    [Theory]
    [MemberData(nameof(Foreign))]
    public async Task What_a_check_found_is_in_the_language_too(string tag)
    {
        var item = Example.Visit.Items.First(i => i.MayBeReported && i.Findings.Any(f => f.Code is "IDN004"));
        var html = WebUtility.HtmlDecode(
            await Language
                .Find(tag)!
                .InAsync(() =>
                    browser.Renderer.HtmlAsync(new EvidenceModel(Example.Identity(DocumentTypes.Evidence), Example.Visit, [item]))
                )
        );
        var said = item.Findings.First(f => f.Code is "IDN004").Message;
        var translated = said.In(TranslatedMessages.AndEnglish.First(l => string.Equals(l.Tag, tag, StringComparison.Ordinal)));
        // A line begins with a capital.
        Assert.Contains(translated[1..], html, StringComparison.Ordinal);
        Assert.DoesNotContain(said.Text[1..], html, StringComparison.Ordinal);
        Assert.DoesNotContain("[en: ", html, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Foreign))]
    public async Task What_the_user_typed_stays_as_typed(string tag)
    {
        const string typed = "the harness is not to be used, 1.5 kN; May 2024";
        var (visit, item) = Example.With("HAR-01", i => i with { Description = typed });
        var html = await Language.Find(tag)!.InAsync(() => browser.Renderer.HtmlAsync(Report(visit, [item])));
        Assert.Contains(typed, WebUtility.HtmlDecode(html), StringComparison.Ordinal);
    }

    /// <summary>Documents made at the same time in several languages come out as those made alone.</summary>
    [Fact]
    public async Task Documents_made_at_once_do_not_mix()
    {
        var alone = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var language in Language.All)
            alone.Add(language.Tag, await Make(language));
        Assert.Equal(Language.All.Count, alone.Values.Distinct(StringComparer.Ordinal).Count());
        var together = await Task.WhenAll(
            Enumerable
                .Range(0, 24)
                .Select(n => Language.All[n % Language.All.Count])
                .Select(language => Task.Run(async () => (language.Tag, Html: await Make(language))))
        );
        Assert.All(together, made => Assert.Equal(alone[made.Tag], made.Html));
        Assert.Equal("en", Language.Current.Tag);

        static Task<string> Make(Language language) =>
            language.InAsync(async () =>
            {
                await Task.Yield();
                await using var renderer = new DocumentRenderer();
                return await renderer.HtmlAsync(Report(Example.Visit, [.. Example.Visit.Items.Where(i => i.MayBeReported).Take(3)]));
            });
    }

    // Letters of a signal word: h = l / Z with Z = 300 (German workplace rule ASR A1.3, from memory), read from 1.5 m.
    [Theory]
    [MemberData(nameof(Tags))]
    public async Task The_signal_word_stands_whole_and_large_enough(string tag)
    {
        var language = Language.Find(tag)!;
        var item = Example.Visit.Items.First(i => i.Outcome is Outcome.Withdraw);
        var pdf = await browser.PrintAsync(
            await language.InAsync(() =>
                browser.Renderer.HtmlAsync(new LabelModel(Example.Identity(DocumentTypes.QuarantineLabel), Example.Visit, item))
            )
        );
        using var document = UglyToad.PdfPig.PdfDocument.Open(pdf);
        Assert.Equal(1, document.NumberOfPages);
        foreach (var line in LabelPhrases.Languages.In(language).Signal)
        {
            foreach (var part in line.Split(' '))
            {
                var word = document.GetPage(1).GetWords().First(w => w.Text == part);
                var capitals = word.Letters.Max(l => l.BoundingBox.Height) * 25.4 / 72;
                Assert.True(capitals >= 1500 / 300.0, $"{part}: capitals of {capitals:0.0} mm");
                Assert.InRange(word.BoundingBox.Right * 25.4 / 72, 50, 97);
            }
        }
    }

    private async Task<IReadOnlyList<string>> All(Language language)
    {
        var visit = Example.Visit;
        var renewal = Example.Record.Renewals.First(r => r.FittedPart is not null && Fit(r.Item) && Fit(r.FittedPart));
        var html = new List<string>();
        await language.InAsync(async () =>
        {
            html.Add(await browser.Renderer.HtmlAsync(new EvidenceModel(Example.Identity(DocumentTypes.Evidence), visit, visit.Items)));
            foreach (var regime in visit.Items.Where(i => i.MayBeReported).GroupBy(i => i.RegimeId))
                html.Add(await browser.Renderer.HtmlAsync(Report(visit, [.. regime])));
            foreach (var item in visit.Everything.Where(i => i.Outcome is Outcome.Withdraw || i.Examination?.Defects.Count > 0))
                html.Add(await browser.Renderer.HtmlAsync(new NoticeModel(Example.Identity(DocumentTypes.Notice), visit, item)));
            foreach (var item in visit.Everything.Where(i => i.Outcome is Outcome.Withdraw or Outcome.Undetermined))
                html.Add(await browser.Renderer.HtmlAsync(new LabelModel(Example.Identity(DocumentTypes.QuarantineLabel), visit, item)));
            html.Add(
                await browser.Renderer.HtmlAsync(
                    new CertificateModel(
                        Example.Identity(DocumentTypes.Certificate),
                        visit,
                        Example.Item(renewal.Item!),
                        [renewal],
                        [Example.Item(renewal.FittedPart!)]
                    )
                )
            );
            return 0;
        });
        return html;
    }

    private static bool Fit(string? id) => Example.Visit.Items.Any(i => i.Item.Id == id && i.Outcome is Outcome.Fit or Outcome.FitUntil);

    private static ReportModel Report(DeterminedVisit visit, IReadOnlyList<DeterminedItem> items)
    {
        var author = visit.Person(items[0].Examination!.Examiner)!;
        return new ReportModel(Example.Identity(DocumentTypes.Report), visit, items, author, author);
    }

    /// <summary>The text of the page, line by line, without what stands in the record and without what is marked as English.</summary>
    private static IEnumerable<string> Lines(string html)
    {
        var text = WebUtility.HtmlDecode(Markup().Replace(Style().Replace(html, ""), "\n"));
        return Typed
            .Aggregate(text, (all, typed) => all.Replace(typed, "§", StringComparison.OrdinalIgnoreCase))
            .Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
    }

    /// <summary>Every text of the example's record, the longest first.</summary>
    private static readonly IReadOnlyList<string> Typed =
    [
        .. Texts(JsonDocument.Parse(File.ReadAllText(Example.File)).RootElement)
            .Where(t => t.Length > 3)
            .Distinct(StringComparer.Ordinal)
            .OrderByDescending(t => t.Length),
    ];

    private static IEnumerable<string> Texts(JsonElement element) =>
        element.ValueKind switch
        {
            JsonValueKind.Object => element.EnumerateObject().SelectMany(p => Texts(p.Value)),
            JsonValueKind.Array => element.EnumerateArray().SelectMany(Texts),
            JsonValueKind.String => [element.GetString()!],
            _ => [],
        };

    [GeneratedRegex("<span lang=\"en\">.*?</span>|<[^>]*>", RegexOptions.Singleline, 2000)]
    private static partial Regex Markup();

    [GeneratedRegex("<(style|svg)[^>]*>.*?</(style|svg)>", RegexOptions.Singleline | RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex Style();
}
