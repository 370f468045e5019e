using System.CommandLine;
using System.CommandLine.Parsing;
using System.Text.Json;
using ExamDocs.Core.Findings;
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

    private static readonly Option<FileInfo?> Ics = new("--ics")
    {
        Description =
            "The calendar to write (.ics): an all-day event for each employer, premises and day. A calendar that takes in a later file "
            + "updates what it has.",
        HelpName = "FILE",
    };

    private static readonly Option<FileInfo?> Out = new("--out")
    {
        Description = "The workbook to write (.xlsx): the list, a plan by month, the visits proposed, and what may not be used.",
        HelpName = "FILE",
    };

    private static readonly Option<FileInfo?> Pdf = new("--pdf")
    {
        Description = "The plan to print (.pdf): what falls due month by month, the visits proposed, and the list.",
        HelpName = "FILE",
    };

    private static readonly Option<DirectoryInfo?> Letters = new("--letters")
    {
        Description = "A folder for a letter (.pdf) to each employer: what of its kit falls due when.",
        HelpName = "FOLDER",
    };

    private static readonly Option<(string Category, int Count)[]> Minutes = new("--minutes")
    {
        Description =
            "Minutes that an item of a category takes you, for example connector=6,harness=20: the proposed visits then say how long "
            + "they take. Nothing is assumed for the others.",
        HelpName = "ID=N,…",
        CustomParser = BlankCommand.Counted,
    };

    private static readonly Option<int> Together = new("--together")
    {
        Description = "How many days before its own an item may be examined so that it goes with an earlier one at the same premises.",
        HelpName = "DAYS",
        DefaultValueFactory = _ => VisitProposals.UsualTogetherDays,
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
            CommonOptions.Employer,
            Ics,
            Out,
            Pdf,
            Letters,
            CommonOptions.Letterhead,
            Minutes,
            Together,
            OutputOptions.Replace,
            Json,
        };
        command.Validators.Add(CheckDays);
        command.Validators.Add(CheckTogether);
        command.Validators.Add(CheckOut);
        command.SetAction((parsed, cancellation) => RunGuard.RunAsync(() => RunAsync(parsed, cancellation)));
        return command;
    }

    private static void CheckDays(CommandResult command)
    {
        if (command.GetValue(From) is { } from && command.GetValue(To) is { } to && to < from)
            command.AddError(FormattableString.Invariant($"--to {to:uuuu-MM-dd} is before --from {from:uuuu-MM-dd}"));
    }

    private static void CheckTogether(CommandResult command)
    {
        if (command.GetValue(Together) < 0)
            command.AddError("--together is a number of days, 0 for none");
    }

    private static void CheckOut(CommandResult command)
    {
        if (command.GetResult(Out) is { Tokens: [var typed, ..] } && !typed.Value.EndsWith(".xlsx", StringComparison.OrdinalIgnoreCase))
            command.AddError($"--out is a workbook: name it with .xlsx at the end, not {typed.Value}");
    }

    private static async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        if (CommonOptions.PrintStyle(parsed) is not { } style || RegisterCommand.Existing(parsed) is not { } register)
            return ExitCode.Refused;
        var outputs = OutputOptions.Guard(parsed, Ics, Out, Pdf, Letters);
        outputs.Require(parsed.GetValue(Ics)?.ToString(), parsed.GetValue(Out)?.ToString(), parsed.GetValue(Pdf)?.ToString());
        var list = ListDue.In(Request(parsed, register.Place));
        if (parsed.GetValue(CommonOptions.Employer) is { } employer && !list.HasItems)
        {
            parsed.InvocationConfiguration.Error.WriteLine(Screen.Say($"no kit of '{employer}' is on record"));
            return ExitCode.Refused;
        }
        var visits = VisitProposals.Of(list.Due, parsed.GetValue(Together), Figures(parsed, list));
        var language = Screen.Asked(parsed) ?? MessageLanguage.English;
        if (parsed.GetValue(Ics) is { } calendar)
            WriteDueCalendar.Run(list, calendar.ToString(), outputs, language);
        if (parsed.GetValue(Out) is { } workbook)
            WriteDueWorkbook.Run(list, visits, workbook.ToString(), outputs, language);
        var printed = await PrintDue.RunAsync(
            new DuePrintRequest(list, visits)
            {
                PlanFile = parsed.GetValue(Pdf)?.ToString(),
                LettersFolder = parsed.GetValue(Letters)?.ToString(),
                Employer = parsed.GetValue(CommonOptions.Employer),
                Outputs = outputs,
                Style = style,
            },
            cancellation
        );
        if ((printed.Refused ?? printed.Failure) is { } stopped)
        {
            await parsed.InvocationConfiguration.Error.WriteLineAsync(stopped);
            return printed.Refused is null ? ExitCode.Stopped : ExitCode.Refused;
        }
        var output = parsed.InvocationConfiguration.Output;
        if (parsed.GetValue(Json))
            output.WriteLine(JsonSerializer.Serialize(DueFile.Of(list, visits), RuleJson.Options));
        else if (!parsed.GetValue(CommonOptions.Quiet))
            DuePrinter.Print(list, visits, output);
        return ExitCode.Done;
    }

    private static DueRequest Request(ParseResult parsed, string register)
    {
        var today = CommonOptions.Today();
        var from = parsed.GetValue(From) ?? today;
        return new DueRequest(register, from, parsed.GetValue(To) ?? from.PlusMonths(UsualMonths), today)
        {
            Employer = parsed.GetValue(CommonOptions.Employer),
        };
    }

    private static Dictionary<string, int> Figures(ParseResult parsed, DueList list)
    {
        var figures = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var (category, count) in parsed.GetValue(Minutes) ?? [])
        {
            figures[category] = count;
            if (!list.Due.Any(i => string.Equals(i.Category, category, StringComparison.Ordinal)))
                parsed.InvocationConfiguration.Error.WriteLine(Screen.Say($"--minutes: no item of category '{category}' falls due"));
        }
        return figures;
    }
}
