namespace ExamDocs.UseCases.Tests;

/// <summary>Every rule has its page, and the page says what the rule says.</summary>
public sealed class RulePagesTests
{
    /// <summary>Set to 1, the pages are written anew before they are compared.</summary>
    private const string Update = "EXAMDOCS_UPDATE_PAGES";

    private static readonly RuleText Invented = new("ABC001", "error", null, "A title", "A reason.", "A hint.", "A source");

    [Fact]
    public void Every_rule_has_a_page_that_says_what_the_rule_says()
    {
        var pages = new RulePages(Path.Combine(RepositoryRoot.Path, "docs", "rules"), RuleList.All);
        if (string.Equals(Environment.GetEnvironmentVariable(Update), "1", StringComparison.Ordinal))
            pages.Rewrite();
        Assert.True(pages.Faults().Count == 0, $"{string.Join("; ", pages.Faults())}. Run these tests with {Update}=1 to write the pages anew.");
    }

    [Fact]
    public void A_missing_an_altered_and_a_superfluous_page_are_each_named()
    {
        var folder = Directory.CreateTempSubdirectory("examdocs-pages-").FullName;
        try
        {
            var pages = new RulePages(folder, [Invented]);
            Assert.Equal(["ABC001.md is missing", "README.md is missing"], pages.Faults());
            pages.Rewrite();
            Assert.Empty(pages.Faults());
            File.WriteAllText(Path.Combine(folder, "XYZ009.md"), "# nothing");
            Assert.Equal(["XYZ009.md belongs to no rule"], pages.Faults());
            File.Delete(Path.Combine(folder, "XYZ009.md"));
            Assert.Equal(
                ["ABC001.md says something else than the rule"],
                new RulePages(folder, [Invented with { Why = "Another reason." }]).Faults());
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void Written_anew_a_page_keeps_what_was_written_by_hand()
    {
        var folder = Directory.CreateTempSubdirectory("examdocs-pages-").FullName;
        try
        {
            new RulePages(folder, [Invented]).Rewrite();
            var page = Path.Combine(folder, "ABC001.md");
            File.AppendAllText(page, "\nAn example.\n");
            new RulePages(folder, [Invented with { Why = "Another reason." }]).Rewrite();
            var text = File.ReadAllText(page);
            Assert.Contains("Another reason.", text, StringComparison.Ordinal);
            Assert.EndsWith(RulePages.Marker + "\n\nAn example.\n", text, StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
