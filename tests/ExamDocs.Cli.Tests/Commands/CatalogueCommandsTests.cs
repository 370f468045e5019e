using System.CommandLine;
using System.Text.Json;
using ExamDocs.Cli.Commands;
using ExamDocs.Core.Criteria;
using ExamDocs.UseCases.Commands;

namespace ExamDocs.Cli.Tests.Commands;

/// <summary>The commands that print the rules and the catalogue: results to one stream, complaints to the other.</summary>
public sealed class CatalogueCommandsTests
{
    [Fact]
    public void Rules_prints_one_line_for_every_rule()
    {
        var (exit, output, error) = Run(RulesCommand.Create());
        Assert.Equal((ExitCode.Done, ""), (exit, error));
        var lines = output.Split(Environment.NewLine, StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(RuleList.All.Select(r => r.Code).ToList(), lines.Select(l => l.Split(' ')[0]).ToList());
    }

    [Theory]
    [InlineData("PAR005", "Severity: error")]
    [InlineData("w10", "Outcome: withdraw")]
    [InlineData("U5", "Outcome: undetermined")]
    [InlineData("D1", "Outcome: fit-until")]
    [InlineData("INT028", "Severity: warning")]
    public void Rules_with_a_code_prints_that_rule_in_full(string code, string weight)
    {
        var (exit, output, _) = Run(RulesCommand.Create(), code);
        var rule = RuleList.Find(code)!;
        Assert.Equal(ExitCode.Done, exit);
        Assert.Contains(weight, output, StringComparison.Ordinal);
        Assert.All([rule.Title, rule.Why, rule.Source, rule.Hint ?? ""], text => Assert.Contains(text, output, StringComparison.Ordinal));
    }

    [Fact]
    public void Rules_as_JSON_holds_every_rule_with_its_text()
    {
        var (exit, output, _) = Run(RulesCommand.Create(), "--json");
        using var rules = JsonDocument.Parse(output);
        Assert.Equal(ExitCode.Done, exit);
        Assert.Equal(
            RuleList.All.Select(r => (r.Code, r.Hint)),
            rules.RootElement.EnumerateArray().Select(r => (r.GetProperty("code").GetString()!, r.GetProperty("hint").GetString()))
        );
    }

    [Theory]
    [InlineData("PAR05", "Did you mean 'PAR005'?")]
    [InlineData("nonsense", "There is no rule 'nonsense'.")]
    public void Rules_with_an_unknown_code_is_a_wrong_command(string code, string said)
    {
        var (exit, output, error) = Run(RulesCommand.Create(), code);
        Assert.Equal((ExitCode.Refused, ""), (exit, output));
        Assert.Contains(said, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Criteria_prints_every_question_of_every_category()
    {
        var (exit, output, error) = Run(CriteriaCommand.Create());
        Assert.Equal((ExitCode.Done, ""), (exit, error));
        Assert.All(Catalogue.All.SelectMany(c => c.Criteria), c => Assert.Contains(c.Question, output, StringComparison.Ordinal));
    }

    [Fact]
    public void Criteria_prints_one_category_alone()
    {
        var (exit, output, _) = Run(CriteriaCommand.Create(), "--category", "rope-bridge");
        Assert.Equal(ExitCode.Done, exit);
        Assert.StartsWith("rope-bridge: ", output, StringComparison.Ordinal);
        Assert.Contains("end-stitch", output, StringComparison.Ordinal);
        Assert.DoesNotContain("webbing-cut", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(16)]
    [InlineData(1, "--category", "helmet")]
    public void Criteria_as_JSON_holds_the_categories_asked_for(int count, params string[] arguments)
    {
        var (exit, output, _) = Run(CriteriaCommand.Create(), ["--json", .. arguments]);
        using var categories = JsonDocument.Parse(output);
        Assert.Equal(ExitCode.Done, exit);
        Assert.Equal(count, categories.RootElement.GetArrayLength());
    }

    [Fact]
    public void Criteria_of_an_unknown_category_is_a_wrong_command()
    {
        var (exit, output, error) = Run(CriteriaCommand.Create(), "--category", "harnes");
        Assert.Equal((ExitCode.Refused, ""), (exit, output));
        Assert.Contains("Did you mean 'harness'?", error, StringComparison.Ordinal);
    }

    private static (int Exit, string Output, string Error) Run(Command command, params string[] arguments)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var exit = command.Parse(arguments).Invoke(new InvocationConfiguration { Output = output, Error = error });
        return (exit, output.ToString(), error.ToString());
    }
}
