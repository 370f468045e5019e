using System.CommandLine;
using System.CommandLine.Parsing;
using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Commands;

namespace ExamDocs.Cli.Commands;

/// <content>Check sheets, to record a visit on by hand.</content>
internal static partial class BlankCommand
{
    private static async Task<int> PrintAsync(ParseResult parsed, KnownRules rules, CancellationToken cancellation)
    {
        if (CommonOptions.PrintStyle(parsed) is not { } style)
            return ExitCode.Refused;
        var (file, outputs) = (parsed.GetRequiredValue(Out), OutputOptions.Guard(parsed, Out));
        outputs.Require(file.ToString());
        if (CommonOptions.RegisterToWrite(parsed, file.DirectoryName) is not { } register)
            return ExitCode.Refused;
        var wasThere = register.Exists;
        var result = await PrintCheckSheets.RunAsync(
            new CheckSheetRequest
            {
                From = parsed.GetValue(From)!,
                OutFile = file.ToString(),
                Outputs = outputs,
                Categories = parsed.GetValue(Categories) ?? [],
                RegisterPath = register.Place,
                Style = style,
                Today = CommonOptions.Today(),
                Rules = rules,
            },
            cancellation
        );
        CommonOptions.SayWhereMade(parsed, register, wasThere);
        foreach (var sentence in result.Unprintable)
            await Console.Error.WriteLineAsync(sentence);
        if ((result.Refused ?? result.Failure) is { } stopped)
        {
            await Console.Error.WriteLineAsync(stopped);
            return result.Refused is null ? ExitCode.Stopped : ExitCode.Refused;
        }
        if (!parsed.GetValue(CommonOptions.Quiet))
            PrintList(result, file.FullName);
        return result.Unprintable.Count > 0 ? ExitCode.Findings : ExitCode.Done;
    }

    private static void PrintList(CheckSheetResult result, string file)
    {
        foreach (var sheet in result.Sheets)
            Console.WriteLine(
                $"{sheet.Number}  {string.Join(", ", sheet.Items)}{(sheet.IssuedNow ? "" : Screen.Say($"  (issued before)"))}"
            );
        Console.WriteLine(result.Sheets.Count == 0 ? Screen.Say($"nothing to print") : file);
    }

    private static void CheckPaper(CommandResult command)
    {
        var from = command.GetValue(From);
        if (!IsRegister(from) && (command.GetResult(DueBefore) is not null || command.GetResult(Employer) is not null))
            command.AddError($"--due-before and --employer choose from the register: give --from {TheRegister} too");
        if (IsRegister(from) && IsPaper(command))
            command.AddError(
                $"check sheets are made from a record: write the workbook first (--from {TheRegister} --out next.xlsx), then "
                    + "--from next.xlsx"
            );
        if (!IsPaper(command))
        {
            if (command.GetResult(Items) is not null)
                command.AddError("--items counts check sheets (.pdf); a workbook has room for any number: choose sheets with --category");
            if (SigningOptions.IsGiven(command))
                command.AddError("--sign signs check sheets (.pdf); a workbook is to be filled in and is not signed");
            return;
        }
        if (command.GetValue(Known))
            command.AddError("--known fills in a workbook; check sheets show the people and limits of their record");
        if (command.GetValue(From) is null && SigningOptions.IsGiven(command))
            command.AddError("--sign signs check sheets of an earlier record (--from); those for a first visit are empty forms");
        if (command.GetValue(From) is not null && command.GetResult(Items) is not null)
            command.AddError("--items is for a first visit; with --from there is one sheet for each item of the record");
        if (command.GetValue(Answers))
            command.AddError("--answers fills in a workbook; a check sheet shows the answers of last time and ticks none");
    }

    /// <summary>Looks at the words typed, because reading a value that cannot be parsed would throw.</summary>
    private static bool IsPaper(CommandResult command) => command.GetResult(Out) is { Tokens: [var typed, ..] } && IsPaper(typed.Value);

    private static bool IsPaper(string file) => string.Equals(Path.GetExtension(file), ".pdf", StringComparison.OrdinalIgnoreCase);
}
