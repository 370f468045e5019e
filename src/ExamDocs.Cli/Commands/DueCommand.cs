using System.CommandLine;
using System.CommandLine.Parsing;
using System.Text.Json;
using ExamDocs.Core.Records;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Company;
using NodaTime;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs due</c>: what falls due from a day to a day, and what may not be used.</summary>
internal static class DueCommand
{
    private const int UsualMonths = 3;

    private static readonly Option<LocalDate?> From = new("--from")
    {
        Description = "The first day, inclusive. Default: today.",
        HelpName = "YYYY-MM-DD",
        CustomParser = CommonOptions.Day,
    };

    private static readonly Option<LocalDate?> To = new("--to")
    {
        Description = "The last day, inclusive. Default: three months after the first.",
        HelpName = "YYYY-MM-DD",
        CustomParser = CommonOptions.Day,
    };

    private static readonly Option<string?> Employer = new("--employer")
    {
        Description = "Whose kit. Default: everybody's.",
        HelpName = "NAME",
    };

    private static readonly Option<bool> Json = new("--json") { Description = "Print as JSON, everything spelt out." };

    public static Command Create()
    {
        var command = new Command(
            "due",
            "Lists what falls due from a day to a day by employer, premises and category; what may not be used today is listed apart."
        )
        {
            From,
            To,
            Employer,
            Json,
        };
        command.Validators.Add(CheckDays);
        command.SetAction((parsed, _) => RunGuard.RunAsync(() => Task.FromResult(Run(parsed))));
        return command;
    }

    private static void CheckDays(CommandResult command)
    {
        if (command.GetValue(From) is { } from && command.GetValue(To) is { } to && to < from)
            command.AddError(FormattableString.Invariant($"--to {to:uuuu-MM-dd} is before --from {from:uuuu-MM-dd}"));
    }

    private static int Run(ParseResult parsed)
    {
        if (RegisterCommand.Existing(parsed) is not { } register)
            return ExitCode.Refused;
        var today = CommonOptions.Today();
        var from = parsed.GetValue(From) ?? today;
        var list = ListDue.In(
            new DueRequest(register.Place, from, parsed.GetValue(To) ?? from.PlusMonths(UsualMonths), today)
            {
                Employer = parsed.GetValue(Employer),
            }
        );
        var output = parsed.InvocationConfiguration.Output;
        if (parsed.GetValue(Json))
            output.WriteLine(JsonSerializer.Serialize(DueFile.Of(list), RuleJson.Options));
        else if (!parsed.GetValue(CommonOptions.Quiet))
            DuePrinter.Print(list, output);
        return ExitCode.Done;
    }
}
