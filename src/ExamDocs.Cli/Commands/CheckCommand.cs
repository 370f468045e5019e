using System.CommandLine;
using ExamDocs.Core.Findings;
using ExamDocs.UseCases;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs check</c>: reads, checks, determines; issues nothing.</summary>
internal static class CheckCommand
{
    private static readonly Argument<string[]> Inputs = new("INPUT")
    {
        Description = "Records: workbooks (.xlsx), JSON, .csv files or folders of them.",
        Arity = ArgumentArity.OneOrMore,
    };

    private static readonly Option<FileInfo?> Json = new("--json")
    {
        Description = "Also write outcomes and findings to this file.",
        HelpName = "FILE",
    };

    public static Command Create()
    {
        var command = new Command("check", "Reads, checks and determines; prints findings and outcomes.") { Inputs, Json, CommonOptions.Rules };
        command.SetAction((parsed, _) => Machinery.GuardAsync(() => Task.FromResult(Run(parsed))));
        return command;
    }

    private static int Run(ParseResult parsed)
    {
        if (CommonOptions.KnownRules(parsed) is not { } rules)
            return ExitCode.Refused;
        var today = CommonOptions.Today();
        var inputs = CheckRecord.All(parsed.GetRequiredValue(Inputs), today, rules);
        if (parsed.GetValue(Json) is { } file)
            FindingsFile.WriteTo(file.FullName, inputs);
        FindingsPrinter.Print(inputs, quiet: parsed.GetValue(CommonOptions.Quiet));
        return ExitOf(inputs);
    }

    internal static int ExitOf(IReadOnlyList<CheckedInput> inputs) =>
        inputs.Any(i => i.Unreadable is not null) ? ExitCode.Refused
        : inputs.Any(i => i.Visit!.Findings.Any(f => f.Severity is Severity.Error)) ? ExitCode.Findings
        : ExitCode.Done;
}
