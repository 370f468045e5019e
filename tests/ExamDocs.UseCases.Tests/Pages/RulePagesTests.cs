using ExamDocs.UseCases.Commands;

namespace ExamDocs.UseCases.Tests.Pages;

/// <summary>Every rule has its section on the page of its family, and the section says what the rule says.</summary>
public sealed class RulePagesTests : IDisposable
{
    /// <summary>Set to 1, the pages are written anew before they are compared.</summary>
    private const string Update = "EXAMDOCS_UPDATE_PAGES";

    private static readonly RuleText First = new("ABC001", "error", null, "A title", "A reason.", "A hint.", "A source");

    private static readonly RuleText Second = new("ABC002", "note", null, "Another title", "A reason.", "A hint.", "A source");

    private static readonly RuleFamily Family = new("abc.md", "Invented", "ABC001-002");

    private readonly string folder = Directory.CreateTempSubdirectory("examdocs-pages-").FullName;

    private string Page => Path.Combine(folder, "abc.md");

    [Fact]
    public void Every_rule_has_a_section_that_says_what_the_rule_says()
    {
        var pages = new RulePages(Path.Combine(RepositoryRoot.Path, "docs", "rules"), RuleList.All, RuleFamily.All);
        if (string.Equals(Environment.GetEnvironmentVariable(Update), "1", StringComparison.Ordinal))
            pages.Rewrite();
        var faults = string.Join("; ", pages.Faults());
        Assert.True(faults.Length == 0, $"{faults}. Run these tests with {Update}=1 to write the pages anew.");
    }

    [Fact]
    public void A_missing_and_a_superfluous_page_are_each_named()
    {
        Assert.Equal(["abc.md is missing", "README.md is missing"], Of(First, Second).Faults());
        Of(First, Second).Rewrite();
        Assert.Empty(Of(First, Second).Faults());
        File.WriteAllText(Path.Combine(folder, "xyz.md"), "# nothing");
        Assert.Equal(["xyz.md belongs to no rule"], Of(First, Second).Faults());
    }

    [Fact]
    public void A_rule_that_changed_is_named_in_its_page_and_in_the_index()
    {
        Of(First, Second).Rewrite();
        Assert.Equal(["abc.md says something else of ABC002 than the rule"], Of(First, Second with { Why = "Another reason." }).Faults());
        Assert.Equal(
            ["abc.md says something else of ABC001 than the rule", "README.md says something else than the rules"],
            Of(First with { Title = "Renamed" }, Second).Faults()
        );
    }

    [Fact]
    public void A_section_too_few_or_too_many_is_named()
    {
        Of(First).Rewrite();
        Assert.Equal(
            ["abc.md says something else of ABC002 than the rule", "README.md says something else than the rules"],
            Of(First, Second).Faults()
        );
        Of(First, Second).Rewrite();
        Assert.Equal(
            ["abc.md has another head, order or section than the rules", "README.md says something else than the rules"],
            Of(First).Faults()
        );
    }

    [Fact]
    public void A_rule_of_no_family_and_one_of_two_are_named()
    {
        var stray = First with { Code = "ABC003" };
        Assert.Equal("ABC003 belongs to no page, or to several", Of(First, stray).Faults()[0]);
        var twice = new RulePages(folder, [First], [Family, new("also.md", "Also", "ABC")]);
        Assert.Equal("ABC001 belongs to no page, or to several", twice.Faults()[0]);
    }

    [Fact]
    public void Written_anew_a_page_keeps_what_was_written_by_hand()
    {
        Of(First, Second).Rewrite();
        var text = File.ReadAllText(Page);
        var at = text.IndexOf(RulePage.Marker, StringComparison.Ordinal) + RulePage.Marker.Length;
        File.WriteAllText(Page, text[..at] + "\n\nBetween.\n" + text[at..] + "\n### Example\n\nLast.\n");
        Assert.Empty(Of(First, Second).Faults());
        Of(First with { Why = "Changed." }, Second).Rewrite();
        var anew = File.ReadAllText(Page);
        Assert.Contains("**Why.** Changed.", anew, StringComparison.Ordinal);
        Assert.Contains($"{RulePage.Marker}\n\nBetween.\n\n<a id=\"abc002\"></a>", anew, StringComparison.Ordinal);
        Assert.EndsWith($"{RulePage.Marker}\n\n### Example\n\nLast.\n", anew, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_written_by_hand_goes_with_its_rule_to_another_page_and_is_never_lost()
    {
        Of(First, Second).Rewrite();
        File.AppendAllText(Page, "\nAn example.\n");
        Assert.Throws<InvalidOperationException>(() => Of(First).Rewrite());
        var moved = new RulePages(folder, [First, Second], [Family with { Codes = "ABC001" }, new("two.md", "Two", "ABC002")]);
        moved.Rewrite();
        Assert.Empty(moved.Faults());
        Assert.EndsWith("\nAn example.\n", File.ReadAllText(Path.Combine(folder, "two.md")), StringComparison.Ordinal);
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private RulePages Of(params RuleText[] rules) => new(folder, rules, [Family]);
}
