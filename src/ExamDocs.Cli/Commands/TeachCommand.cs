using System.CommandLine;
using System.Globalization;
using ExamDocs.UseCases.Commands;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs teach</c>: what the records of a register teach.</summary>
internal static class TeachCommand
{
    private static readonly Option<FileInfo> Out = new("--out")
    {
        Description = "The PDF to write.",
        HelpName = "FILE",
        Required = true,
    };

    private static readonly Option<FileInfo?> Workbook = new("--workbook")
    {
        Description = "A workbook (.xlsx) of the same numbers, with every group.",
        HelpName = "FILE",
    };

    private static readonly Option<string?> Employer = new("--employer")
    {
        Description = "Whose kit to count. Default: everybody's in the register.",
        HelpName = "NAME",
    };

    public static Command Create()
    {
        var command = new Command(
            "teach",
            "Counts what the register's records teach: withdrawals, how long rope bridges last, wear, reasons. Decides on no item."
        )
        {
            Out,
            Workbook,
            Employer,
            CommonOptions.Letterhead,
            OutputOptions.Replace,
        };
        command.SetAction((parsed, cancellation) => RunGuard.RunAsync(() => RunAsync(parsed, cancellation)));
        return command;
    }

    private static async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        if (CommonOptions.PrintStyle(parsed) is not { } style || RegisterCommand.Existing(parsed) is not { } register)
            return ExitCode.Refused;
        var (file, workbook) = (parsed.GetRequiredValue(Out), parsed.GetValue(Workbook));
        var result = await TeachFromRegister.RunAsync(
            new TeachRequest(register.Place, file.ToString(), CommonOptions.Today())
            {
                WorkbookFile = workbook?.ToString(),
                Employer = parsed.GetValue(Employer),
                Outputs = OutputOptions.Guard(parsed, Out, Workbook),
                Style = style,
            },
            cancellation
        );
        if ((result.Refused ?? result.Failure) is { } stopped)
        {
            await Console.Error.WriteLineAsync(stopped);
            return result.Refused is null ? ExitCode.Stopped : ExitCode.Refused;
        }
        if (!parsed.GetValue(CommonOptions.Quiet))
        {
            var (visits, items) = result.Counted;
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Counted: visits {visits}, items {items}"));
            Console.WriteLine(file.FullName);
            if (workbook is not null)
                Console.WriteLine(workbook.FullName);
        }
        return ExitCode.Done;
    }
}
