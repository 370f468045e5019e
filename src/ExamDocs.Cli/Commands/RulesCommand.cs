using System.CommandLine;
using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Commands;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs rules</c>: prints what is checked and determined, and why.</summary>
internal static class RulesCommand
{
    private static readonly Argument<string?> Code = new("CODE")
    {
        Description = "One rule, for example PAR005 or W1. Without it: all of them, one a line.",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private static readonly Option<bool> Json = new("--json") { Description = "Print as JSON." };

    public static Command Create()
    {
        var command = new Command("rules", "Prints the rules: code, severity or outcome, title; one in full.")
        {
            Code,
            Json,
            CommonOptions.Rules,
        };
        command.SetAction(Run);
        return command;
    }

    private static int Run(ParseResult parsed)
    {
        if (CommonOptions.KnownRules(parsed) is not { } known)
            return ExitCode.Refused;
        var (output, error) = (parsed.InvocationConfiguration.Output, parsed.InvocationConfiguration.Error);
        var code = parsed.GetValue(Code);
        var language = parsed.GetValue(Json) ? Screen.Asked(parsed) : Screen.Language;
        var rules =
            code is null ? RuleList.For(known, language)
            : RuleList.Find(code, known, language) is { } one ? [one]
            : [];
        if (rules.Count == 0)
        {
            error.WriteLine(NoSuchRule(code!));
            return ExitCode.Refused;
        }
        output.WriteLine(
            parsed.GetValue(Json) ? RuleList.ToJson(rules)
            : code is null ? string.Join(Environment.NewLine, rules.Select(Line))
            : InFull(rules[0])
        );
        return ExitCode.Done;
    }

    private static string NoSuchRule(string code) =>
        Screen.Say(
            SpellingSuggestion.Of(code, RuleList.All.Select(r => r.Code)) is { } near
                ? (Message)$"There is no rule '{code}'. Did you mean '{near}'? Run examdocs rules to see them all."
                : $"There is no rule '{code}'. Run examdocs rules to see them all."
        );

    private static string Line(RuleText rule) => $"{rule.Code, -7} {Screen.Say(rule.Said), -12} {rule.Title}";

    private static string InFull(RuleText rule) =>
        string.Join(
            Environment.NewLine,
            new Message?[]
            {
                $"{rule.Code}: {rule.Title}",
                rule.Outcome is null ? (Message)$"Severity: {rule.Said}" : $"Outcome: {rule.Said}",
                $"Why: {rule.Why}",
                rule.Hint is null ? null : (Message)$"What to type: {rule.Hint}",
                $"Source: {rule.Source}",
            }
                .OfType<Message>()
                .Select(Screen.Say)
        );
}
