using System.CommandLine;
using System.CommandLine.Parsing;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Commands;
using NodaTime;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs blank</c>: a workbook to record a visit in, or check sheets to record it on by hand.</summary>
internal static partial class BlankCommand
{
    private static readonly Option<FileInfo> Out = new("--out")
    {
        Description =
            "The workbook to write (.xlsx); or check sheets to fill in by hand (.pdf): the pile to print. With --from, the register "
            + "keeps the single sheets.",
        HelpName = "FILE",
    };

    private static readonly Option<string[]> Categories = new("--category")
    {
        Description = "Category to make a sheet for; may be given several times. Default: all, or those of --from.",
        HelpName = "ID",
        AllowMultipleArgumentsPerToken = true,
        DefaultValueFactory = _ => [],
    };

    private const string TheRegister = "register";

    private static readonly Option<string?> From = new("--from")
    {
        Description =
            $"Fill in identities, limits and history from an earlier record; the word {TheRegister} takes them from the register.",
        HelpName = $"FILE|{TheRegister}",
    };

    private static readonly Option<LocalDate?> DueBefore = new("--due-before")
    {
        Description = $"With --from {TheRegister}: only what falls due by this day, the day itself included.",
        HelpName = "YYYY-MM-DD",
        CustomParser = CommonOptions.Day,
    };

    private static readonly Option<string?> Employer = new("--employer")
    {
        Description = $"With --from {TheRegister}: whose kit.",
        HelpName = "NAME",
    };

    private static readonly Option<bool> Answers = new("--answers")
    {
        Description = "With --from: fill in its answers too. Only in a workbook.",
    };

    private static readonly Option<bool> Known = new("--known")
    {
        Description =
            "Fill in the models with their makers' limits, and the people, that the register knows from earlier visits of anybody; offer "
            + "their employers and premises in lists. Only in a workbook; examdocs models lists the models.",
    };

    public static Command Create()
    {
        var command = new Command("blank", "Writes a workbook to record a visit in, or check sheets to record it on by hand.")
        {
            Out,
            Form,
            OutputOptions.Replace,
            Categories,
            Items,
            From,
            DueBefore,
            Employer,
            Answers,
            Known,
            CommonOptions.Rules,
        };
        SigningOptions.AddTo(command);
        command.Validators.Add(CheckPaper);
        command.Validators.Add(CheckForm);
        command.SetAction((parsed, cancellation) => RunGuard.RunAsync(() => RunAsync(parsed, cancellation)));
        return command;
    }

    private static async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        if (CommonOptions.KnownRules(parsed) is not { } rules)
            return ExitCode.Refused;
        if (parsed.GetValue(Form) is { } form)
            return Write(parsed, rules, form, Form, WriteYardForm.Run);
        var file = parsed.GetRequiredValue(Out);
        return !IsPaper(file.Name) ? Write(parsed, rules, file, Out, WriteCaptureWorkbook.Run)
            : parsed.GetValue(From) is null ? await PrintFirstVisitAsync(parsed, rules, cancellation)
            : await PrintAsync(parsed, rules, cancellation);
    }

    private static int Write(ParseResult parsed, KnownRules rules, FileInfo file, Option option, Func<CaptureRequest, string?> write)
    {
        string? known = null;
        if (parsed.GetValue(Known))
        {
            if (RegisterCommand.Existing(parsed) is not { } register)
                return ExitCode.Refused;
            known = register.Place;
        }
        var refused = write(
            new CaptureRequest(
                file.ToString(),
                parsed.GetValue(Categories) ?? [],
                IsRegister(parsed.GetValue(From)) ? null : parsed.GetValue(From),
                parsed.GetValue(Answers)
            )
            {
                Outputs = OutputOptions.Guard(parsed, option),
                Rules = rules,
                Language = Screen.Asked(parsed)?.Tag ?? MessageLanguage.English.Tag,
                Known = known is null ? null : (known, CommonOptions.Today()),
                Register = IsRegister(parsed.GetValue(From))
                    ? new FromRegister(
                        CommonOptions.RegisterPath(parsed),
                        parsed.GetValue(DueBefore),
                        parsed.GetValue(Employer),
                        CommonOptions.Today()
                    )
                    : null,
            }
        );
        if (refused is not null)
        {
            Console.Error.WriteLine(refused);
            return ExitCode.Refused;
        }
        if (!parsed.GetValue(CommonOptions.Quiet))
            Console.WriteLine(file.FullName);
        return ExitCode.Done;
    }

    // A file named register can be written as ./register.
    private static bool IsRegister(string? from) => string.Equals(from, TheRegister, StringComparison.Ordinal);
}
