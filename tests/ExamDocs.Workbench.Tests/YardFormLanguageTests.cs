using System.Text.Json.Nodes;
using ExamDocs.Intake.Yard.Wording;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;

namespace ExamDocs.Workbench.Tests;

/// <summary>The form for the yard in German and French: other words on the phone, the same record in the file.</summary>
public sealed class YardFormLanguageTests(OpenedBrowser browser) : IClassFixture<OpenedBrowser>
{
    private static readonly string Last = new StoryVisit("V-1", "2025-11-12", "Alder Vale Ltd")
        .Connector("CN-1", "K200")
        .Connector("CN-2", "K201")
        .Json;

    [Fact]
    public async Task Answered_alike_it_gives_the_same_record_in_every_language()
    {
        var english = await RecordedAsync("en");
        Assert.Equal(english, await RecordedAsync("de"));
        Assert.Equal(english, await RecordedAsync("fr"));
        Assert.Contains("\"defect\"", english, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("de", "Missing", "NotBegun")]
    [InlineData("fr", "Missing", "NotBegun")]
    public void Every_word_is_translated_with_its_gaps(string tag, params string[] some)
    {
        var (own, english) = (YardPhrases.In(tag).ByName(), YardPhrases.English.ByName());
        Assert.Equal(english.Keys.Order(StringComparer.Ordinal), own.Keys.Order(StringComparer.Ordinal));
        Assert.All(some, n => Assert.Contains(own.Keys, k => string.Equals(k, n, StringComparison.OrdinalIgnoreCase)));
        Assert.All(own, w => Assert.Equal(Gaps(english[w.Key]), Gaps(w.Value)));
        var same = own.Count(w => string.Equals(w.Value, english[w.Key], StringComparison.Ordinal));
        Assert.InRange(same, 1, 5);
    }

    private static IEnumerable<string> Gaps(string text) =>
        Enumerable.Range(0, 3).Select(n => $"{{{n}}}").Where(g => text.Contains(g, StringComparison.Ordinal));

    /// <summary>What the form saves of two connectors, one with a defect, without the reference that it drew.</summary>
    private async Task<string> RecordedAsync(string language)
    {
        await using var form = await OpenedForm.OpenAsync(browser, language, Last);
        await form.GoAsync("#item/known-0");
        await form.Criterion("cracks").Locator("input[value=defect]").CheckAsync();
        await form.Criterion("cracks").Locator("textarea, input[type=text]").First.FillAsync("a crack at the nose");
        await SoundPage.RequireAsync(form.Page, $"yard-item-{language}");
        await form.GoAsync("#item/known-1");
        await form.AnswerAsync("clear");
        await form.ConcludeAsync("fit");
        var lines = (await form.Page.Locator("body").InnerTextAsync()).Split('\n', StringSplitOptions.TrimEntries);
        Assert.Equal(language, await form.Page.Locator("html").GetAttributeAsync("lang"));
        Assert.Contains(YardPhrases.In(language).ByName().Values, w => lines.Contains(w, StringComparer.Ordinal));
        if (language is not "en")
        {
            var own = YardPhrases.In(language).ByName();
            var english = YardPhrases
                .English.ByName()
                .Where(w => !string.Equals(own[w.Key], w.Value, StringComparison.Ordinal))
                .Select(w => w.Value);
            Assert.Empty(english.Intersect(lines, StringComparer.Ordinal));
        }
        await form.GoAsync("#save");
        await SoundPage.RequireAsync(form.Page, $"yard-save-{language}");
        var record = JsonNode.Parse(await File.ReadAllTextAsync(await form.SaveAsync(), TestContext.Current.CancellationToken))!;
        record["visit"]!["reference"] = "";
        Assert.Empty(form.Errors);
        return record.ToJsonString();
    }
}
