using System.CommandLine;
using ExamDocs.UseCases;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs blank</c>: a workbook to record a visit in.</summary>
internal static class BlankCommand
{
    private static readonly Option<FileInfo> Out = new("--out") { Description = "The workbook to write (.xlsx).", HelpName = "FILE", Required = true };

    private static readonly Option<string[]> Categories = new("--category")
    {
        Description = "Category to make a sheet for; may be given several times. Default: all, or those of --from.",
        HelpName = "ID",
        AllowMultipleArgumentsPerToken = true,
        DefaultValueFactory = _ => [],
    };

    private static readonly Option<string?> From = new("--from") { Description = "Fill in identities, limits and history from an earlier record.", HelpName = "FILE" };

    private static readonly Option<bool> Answers = new("--answers") { Description = "With --from: fill in its answers too." };

    public static Command Create()
    {
        var command = new Command("blank", "Writes a workbook to record a visit in.") { Out, Categories, From, Answers, CommonOptions.Rules };
        command.SetAction((parsed, _) => Machinery.GuardAsync(() => Task.FromResult(Run(parsed))));
        return command;
    }

    private static int Run(ParseResult parsed)
    {
        if (CommonOptions.KnownRules(parsed) is not { } rules)
            return ExitCode.Refused;
        var file = parsed.GetRequiredValue(Out).FullName;
        var refused = WriteCaptureWorkbook.Run(new CaptureRequest(
            file, parsed.GetValue(Categories) ?? [], parsed.GetValue(From), parsed.GetValue(Answers)) { Rules = rules });
        if (refused is not null)
        {
            Console.Error.WriteLine(refused);
            return ExitCode.Refused;
        }
        if (!parsed.GetValue(CommonOptions.Quiet))
            Console.WriteLine(file);
        return ExitCode.Done;
    }
}
