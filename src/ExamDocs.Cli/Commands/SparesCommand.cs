using System.CommandLine;
using System.CommandLine.Parsing;
using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Commands;
using NodaTime;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs spares</c>: parts that have to be replaced by a day, set against a stock.</summary>
internal static class SparesCommand
{
    private const int UsualMonths = 12;

    private static readonly Option<LocalDate?> To = new("--to")
    {
        Description = "The last day looked at, inclusive. Default: a year from today.",
        HelpName = "YYYY-MM-DD",
        CustomParser = CommonOptions.Day,
    };

    private static readonly Option<FileInfo?> Stock = new("--stock")
    {
        Description = "What is in stock (.xlsx, .csv): a column 'part number' and a column 'quantity'. Default: nothing.",
        HelpName = "FILE",
    };

    private static readonly Option<FileInfo?> Out = new("--out")
    {
        Description = "The order to write: a workbook (.xlsx) with what each part is for, or the order alone (.csv).",
        HelpName = "FILE",
    };

    public static Command Create()
    {
        var command = new Command(
            "spares",
            "Lists parts that have to be replaced by a day, by the part numbers that the maker permits, against what is in stock."
        )
        {
            To,
            Stock,
            CommonOptions.Employer,
            Out,
            OutputOptions.Replace,
        };
        command.Validators.Add(CheckOut);
        command.SetAction((parsed, _) => RunGuard.RunAsync(() => Task.FromResult(Run(parsed))));
        return command;
    }

    private static void CheckOut(CommandResult command)
    {
        if (
            command.GetResult(Out) is { Tokens: [var typed, ..] }
            && Path.GetExtension(typed.Value).ToLowerInvariant() is not (".xlsx" or ".csv")
        )
            command.AddError($"--out ends in .xlsx or .csv, not {typed.Value}");
    }

    private static int Run(ParseResult parsed)
    {
        if (RegisterCommand.Existing(parsed) is not { } register)
            return ExitCode.Refused;
        var error = parsed.InvocationConfiguration.Error;
        var outputs = OutputOptions.Guard(parsed, Out);
        outputs.Require(parsed.GetValue(Out)?.ToString());
        var stock = parsed.GetValue(Stock) is { } file ? WriteSpares.Stock(file.ToString()) : null;
        if (stock?.Refused is { } refused)
        {
            error.WriteLine($"{parsed.GetValue(Stock)}: {Screen.Say(refused)}");
            return ExitCode.Refused;
        }
        foreach (var remark in stock?.Remarks ?? [])
            error.WriteLine($"{parsed.GetValue(Stock)}: {Screen.Say(remark)}");
        var today = CommonOptions.Today();
        var plan = WriteSpares.Plan(
            new SparesRequest(register.Place, parsed.GetValue(To) ?? today.PlusMonths(UsualMonths), today)
            {
                Employer = parsed.GetValue(CommonOptions.Employer),
            },
            stock
        );
        if (parsed.GetValue(Out) is { } written)
            WriteSpares.Run(plan, written.ToString(), outputs, Screen.Asked(parsed) ?? MessageLanguage.English);
        if (!parsed.GetValue(CommonOptions.Quiet))
            SparesPrinter.Print(plan, parsed.InvocationConfiguration.Output);
        return ExitCode.Done;
    }
}
