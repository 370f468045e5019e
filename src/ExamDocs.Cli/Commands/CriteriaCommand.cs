using System.CommandLine;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs criteria</c>: prints what is examined on each category of item.</summary>
internal static class CriteriaCommand
{
    private static readonly Option<string?> Only = new("--category")
    {
        Description = "One category, for example rope-bridge. Without it: all of them.",
        HelpName = "ID",
    };

    private static readonly Option<bool> Json = new("--json") { Description = "Print as JSON, every flag spelt out." };

    public static Command Create()
    {
        var command = new Command("criteria", "Prints the catalogue: every category with its criteria.")
        {
            Only,
            Json,
            CommonOptions.Rules,
        };
        command.SetAction(Run);
        return command;
    }

    private static int Run(ParseResult parsed)
    {
        if (CommonOptions.KnownRules(parsed) is not { } rules)
            return ExitCode.Refused;
        var (output, error) = (parsed.InvocationConfiguration.Output, parsed.InvocationConfiguration.Error);
        var id = parsed.GetValue(Only);
        IReadOnlyList<Category> categories =
            id is null ? rules.Categories
            : rules.FindCategory(id) is { } one ? [one]
            : [];
        if (categories.Count == 0)
        {
            error.WriteLine(
                $"There is no category '{id}'.{Hint(id!, rules)} There are: {string.Join(", ", rules.Categories.Select(c => c.Id))}."
            );
            return ExitCode.Refused;
        }
        output.WriteLine(
            parsed.GetValue(Json)
                ? Catalogue.ToJson(categories)
                : string.Join(Environment.NewLine + Environment.NewLine, categories.Select(Text))
        );
        return ExitCode.Done;
    }

    private static string Hint(string id, KnownRules rules) =>
        SpellingSuggestion.Of(id, rules.Categories.Select(c => c.Id)) is { } near ? $" Did you mean '{near}'?" : "";

    private static string Text(Category category) =>
        string.Join(
            Environment.NewLine,
            category
                .Criteria.Select(Text)
                .Prepend(
                    $"{category.Id}: {category.Name} "
                        + $"({Word(category.Material)}){(category.AddedFrom is { } file ? $", added by the user from {file}" : "")}"
                )
        );

    private static string Text(Criterion criterion) =>
        string.Join(
            Environment.NewLine,
            $"  {criterion.Id}: {criterion.Question}",
            $"    {Word(criterion.Class)}, {(criterion.Required ? "required" : "optional")}; "
                + $"{string.Join(", ", criterion.Means.Select(Word))}; answers: {string.Join(", ", Answers(criterion))}",
            $"    source: {criterion.Source}"
        );

    private static IEnumerable<string> Answers(Criterion criterion) =>
        Words.States.All.Where(w => criterion.Allows(Words.States.Find(w)!.Value));

    private static string Word<T>(T value)
        where T : struct, Enum => value.ToString().ToLowerInvariant();
}
