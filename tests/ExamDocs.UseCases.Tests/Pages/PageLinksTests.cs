using System.Text.RegularExpressions;

namespace ExamDocs.UseCases.Tests.Pages;

/// <summary>Every link between the pages leads to a file, and to a place in it, that exists.</summary>
public sealed partial class PageLinksTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("examdocs-links-").FullName;

    [Fact]
    public void Every_link_of_the_pages_leads_somewhere()
    {
        var links = new PageLinks(RepositoryRoot.Path);
        Assert.True(links.Pages.Count > 40 && links.Count > 400, $"only {links.Count} links on {links.Pages.Count} pages were looked at");
        Assert.True(links.Broken().Count == 0, string.Join(Environment.NewLine, links.Broken()));
    }

    [Fact]
    public void Every_page_that_the_program_names_is_there()
    {
        var named = new[] { "src", "templates" }
            .SelectMany(f => Directory.EnumerateFiles(Path.Combine(RepositoryRoot.Path, f), "*.cs", SearchOption.AllDirectories))
            .SelectMany(f => NamedPage().Matches(File.ReadAllText(f)).Select(m => m.Value))
            .Distinct(StringComparer.Ordinal)
            .ToList();
        Assert.Contains("docs/record-format.md", named);
        Assert.All(named, page => Assert.True(File.Exists(Path.Combine(RepositoryRoot.Path, page)), page));
    }

    [Theory]
    [InlineData("[a](docs/away.md)", "README.md: docs/away.md is not there")]
    [InlineData("[a](docs/page.md#away)", "README.md: docs/page.md#away names no place on its page")]
    [InlineData("[a](#away)", "README.md: #away names no place on its page")]
    [InlineData("[a](../outside.md)", "README.md: ../outside.md is not there")]
    [InlineData("[![a](docs/page.md)](docs/away.md)", "README.md: docs/away.md is not there")]
    [InlineData("a [b]\n\n[b]: docs/away.md", "README.md: docs/away.md is not there")]
    [InlineData("<img src=\"docs/away.png\">", "README.md: docs/away.png is not there")]
    [InlineData("[W1](docs/page.md#w2)", "README.md: W1 leads to docs/page.md#w2")]
    [InlineData("[a](docs/page.md#in-a-fence)", "README.md: docs/page.md#in-a-fence names no place on its page")]
    [InlineData("[a](docs/page.md#the-same-2)", "README.md: docs/page.md#the-same-2 names no place on its page")]
    public void A_link_that_leads_nowhere_is_named(string planted, string fault) => Assert.Equal([fault], With(planted).Broken());

    [Theory]
    [InlineData("[a](docs/page.md#what-blank-does-it)")]
    [InlineData("[a](docs/page.md#the-same-1)")]
    [InlineData("[W2](docs/page.md#w2)")]
    [InlineData("[the folder](docs) and [a](https://example.org/away.md#x)")]
    [InlineData("`[a](docs/away.md)`")]
    [InlineData("```\n[a](docs/away.md)\n```")]
    public void A_link_that_leads_somewhere_and_one_in_code_are_not_named(string planted) => Assert.Empty(With(planted).Broken());

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private PageLinks With(string planted)
    {
        Directory.CreateDirectory(Path.Combine(folder, "docs"));
        File.WriteAllText(Path.Combine(folder, "README.md"), $"# Top\n\n{planted}\n");
        File.WriteAllText(
            Path.Combine(folder, "docs", "page.md"),
            """
            # What `blank` does: [it](page.md)

            ## The same

            ## The same

            ```
            # In a fence
            ```

            <a id="w2"></a>
            """
        );
        return new PageLinks(folder);
    }

    [GeneratedRegex(@"docs/[\w/-]+\.(md|json)", RegexOptions.ExplicitCapture)]
    private static partial Regex NamedPage();
}
