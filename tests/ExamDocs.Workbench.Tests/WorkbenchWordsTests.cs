using System.Reflection;
using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Recording;
using ExamDocs.Workbench.Pages;
using Microsoft.Playwright;

namespace ExamDocs.Workbench.Tests;

/// <summary>The pages in German and French: the same pages, and nothing of them left in English.</summary>
public sealed class WorkbenchWordsTests(OpenedBrowser browser) : IClassFixture<OpenedBrowser>
{
    [Theory]
    [InlineData("de", 390)]
    [InlineData("fr", 1280)]
    public async Task No_page_says_in_english_what_it_has_words_for(string tag, int width)
    {
        await using var open = await OpenedWorkbench.StartAsync();
        LastVisit.Remember(open);
        var page = await browser.OpenAsync(width);
        var errors = BrowserErrors.Of(page);
        await open.EnterAsync(page, tag);
        await RequireAsync(page, tag, "desk");
        foreach (
            var address in new[]
            {
                "who",
                "verify",
                "returns",
                "all",
                "due",
                "spares",
                "recall",
                "pack",
                "lessons",
                $"find?q={LastVisit.Bridge}",
                "find?q=nobody",
            }
        )
        {
            await page.GotoAsync($"{open.Address}/{address}");
            await RequireAsync(page, tag, address.Split('?')[0]);
        }
        await page.GotoAsync(open.Address);
        await page.Locator("form[action='/start']:has([value=register]) button").ClickAsync();
        await page.ArriveAsync("**/particulars");
        await RequireAsync(page, tag, "particulars");
        await page.GotoAsync(page.Url.Replace("/particulars", "", StringComparison.Ordinal) + "/record");
        await RequireAsync(page, tag, "record");
        await page.Locator($".items a:text-is('{LastVisit.Bridge}')").ClickAsync();
        await page.ArriveAsync("**/item/*");
        await RequireAsync(page, tag, "item");
        var question = KnownRules.BuiltIn.FindCategory("rope-bridge")!.Criteria[0].Question;
        await Assertions.Expect(page.Locator("legend").First).ToContainTextAsync(WorkbenchWords.In(tag).Terms.Question(question));
        Assert.Empty(errors);
    }

    private static async Task RequireAsync(IPage page, string tag, string name)
    {
        Assert.Equal(tag, await page.Locator("html").GetAttributeAsync("lang"));
        var (own, english) = (WorkbenchWords.In(tag), WorkbenchWords.In("en"));
        var lines = (await page.Locator("body").InnerTextAsync())
            .Split('\n', StringSplitOptions.TrimEntries)
            .ToHashSet(StringComparer.Ordinal);
        foreach (var words in Words.Where(w => !string.Equals(Text(w, own), Text(w, english), StringComparison.Ordinal)))
            Assert.DoesNotContain(Text(words, english), lines);
        Assert.Contains(own.Caution, lines);
        // The rest of a page is the same in every language.
        if (name is "desk" or "item")
            await SoundPage.RequireAsync(page, $"{name}-{tag}");
    }

    [Theory]
    [InlineData("de")]
    [InlineData("fr")]
    public void Every_word_is_translated_and_french_keeps_its_marks_on_the_line(string tag)
    {
        var (own, english) = (WorkbenchWords.In(tag), WorkbenchWords.In("en"));
        Assert.Equal(tag, own.Tag);
        var same = Words.Where(w => string.Equals(Text(w, own), Text(w, english), StringComparison.Ordinal)).Select(w => w.Name);
        Assert.Equal(tag is "de" ? [] : ["Documents", "Qualifications"], same.Order(StringComparer.Ordinal));
        Assert.All(Words, w =>
            Assert.Equal(tag is "fr" ? Text(w, own).Replace(" :", "\u00A0:", StringComparison.Ordinal) : Text(w, own), Text(w, own))
        );
        Assert.All(Members, m => Assert.NotEqual(m, own.Member(m)));
        Assert.All(Lists.Keys, list =>
        {
            string[] Told(WorkbenchWords w) => [w.EntriesOf(list), w.EntriesHow(list), w.AddEntry(list), w.TakeRowOff("1")];
            Assert.DoesNotContain(Told(own), t => Told(english).Contains(t, StringComparer.Ordinal));
            Assert.All(Lists[list], m => Assert.DoesNotContain(own.RowMember(list, m), Lists[list]));
        });
        Assert.All(Chosen.Where(m => english.Choices(m) is not null), m =>
            Assert.Equal(english.Choices(m)!.Select(c => c.Value), own.Choices(m)!.Select(c => c.Value))
        );
    }

    private static readonly Dictionary<string, IReadOnlyList<string>> Lists = new(ItemRows.Lists.Concat(PeopleRows.Lists));

    private static readonly string[] Members =
    [
        "visit/basis",
        "examiner/selfEmployed",
        "item/status",
        "item/purpose",
        "item/safeWorkingLoad/unit",
        "defect/danger",
        "defect/cover-cut/danger",
        "examination/conclusion",
        "answer/cover-cut",
        .. Lists.SelectMany(l => l.Value.Select(m => $"{l.Key}/0/{m}").Append($"{l.Key}/0")),
    ];

    private static readonly string[] Chosen = [.. Members, "releases/because", "disposals/action"];

    /// <summary>What is said without anything to fill in.</summary>
    private static IReadOnlyList<PropertyInfo> Words =>
        [.. typeof(WorkbenchWords).GetProperties().Where(p => p.PropertyType == typeof(string) && p.Name is not "Tag")];

    private static string Text(PropertyInfo words, WorkbenchWords language) => (string)words.GetValue(language)!;
}
