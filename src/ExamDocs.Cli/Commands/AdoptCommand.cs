using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using ExamDocs.UseCases.Commands;
using NodaTime;
using Spectre.Console;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs adopt</c>: a firm's own list of kit into a workbook to record a visit in.</summary>
internal static class AdoptCommand
{
    private static readonly Argument<string> List = new("LIST")
    {
        Description = "Your own list of kit: a workbook (.xlsx) or a .csv file, with whatever headings it has.",
    };

    private static readonly Option<FileInfo> Out = new("--out")
    {
        Description = "The workbook to write (.xlsx). A file that is there already is never written over.",
        HelpName = "FILE",
        Required = true,
    };

    private static readonly Option<FileInfo?> Map = new("--map")
    {
        Description =
            "Which column of the list is what, and which of its words mean what (docs/map.schema.json). Where the file is not there "
            + "it is written, with what is to be settled in it.",
        HelpName = "FILE",
    };

    private static readonly Option<LocalDate?> AsOf = new("--as-of")
    {
        Description = "The day taken for what the list has as out of use without saying since when. Default: today.",
        HelpName = "YYYY-MM-DD",
        CustomParser = CommonOptions.Day,
    };

    public static Command Create()
    {
        var command = new Command("adopt", "Takes your own list of kit into a workbook to record a visit in; decides nothing.")
        {
            List,
            Out,
            Map,
            AsOf,
            CommonOptions.Rules,
        };
        command.SetAction((parsed, _) => RunGuard.RunAsync(() => Task.FromResult(Run(parsed))));
        return command;
    }

    private static int Run(ParseResult parsed)
    {
        if (CommonOptions.KnownRules(parsed) is not { } rules)
            return ExitCode.Refused;
        var result = AdoptList.Run(
            new AdoptRequest(
                parsed.GetRequiredValue(List),
                parsed.GetRequiredValue(Out).FullName,
                parsed.GetValue(AsOf) ?? CommonOptions.Today()
            )
            {
                MapFile = parsed.GetValue(Map)?.FullName,
                Ask = IsTerminal ? new QuestionPrompt(Console.In, Console.Error).Ask : null,
                Rules = rules,
            }
        );
        foreach (var sentence in result.Refused)
            Console.Error.WriteLine(sentence);
        if (result.Refused.Count > 0)
            return ExitCode.Refused;
        if (!parsed.GetValue(CommonOptions.Quiet) && result.MapWritten is { } map)
            Console.Error.WriteLine($"The map was written: {map}");
        return result.Written is { } written ? Report(result, written, parsed.GetValue(CommonOptions.Quiet)) : AskToSettle(result, parsed);
    }

    private static int Report(AdoptResult result, string written, bool quiet)
    {
        if (quiet)
            return ExitCode.Done;
        foreach (var remark in result.Remarks)
            Console.Error.WriteLine(QuestionPrompt.Shown(remark));
        foreach (var sheet in result.LeftOut.GroupBy(r => r.Sheet, StringComparer.Ordinal))
            Console.Error.WriteLine(
                QuestionPrompt.Shown($"not items: {sheet.Key}: {string.Join(", ", sheet.OrderBy(r => r.Row).Select(Row))}")
            );
        Console.Error.WriteLine("Nothing in the list counts as an examination: every item is still to be examined.");
        var items = string.Join(", ", result.Items.Select(i => string.Create(CultureInfo.InvariantCulture, $"{i.Items} {i.Kind}")));
        Console.WriteLine(
            QuestionPrompt.Shown(string.Create(CultureInfo.InvariantCulture, $"{result.Items.Sum(i => i.Items)} items: {items}"))
        );
        Console.WriteLine(written);
        return ExitCode.Done;
    }

    private static int AskToSettle(AdoptResult result, ParseResult parsed)
    {
        Console.Error.WriteLine("No workbook was written; this has to be settled first:");
        foreach (var open in result.ToSettle)
            Console.Error.WriteLine($"- {QuestionPrompt.Shown(open)}");
        Console.Error.WriteLine(
            parsed.GetValue(Map) is { } map
                ? $"Settle it in {map} and run the command again."
                : "Run the command again with --map FILE: it writes the file, and you settle it there. At a terminal it asks."
        );
        return ExitCode.Findings;
    }

    private static string Row((string Sheet, int Row, string Why) row) =>
        string.Create(CultureInfo.InvariantCulture, $"row {row.Row} ({row.Why})");

    /// <summary>Nothing is asked where nobody can answer.</summary>
    private static bool IsTerminal =>
        AnsiConsole.Profile.Capabilities.Interactive && !Console.IsInputRedirected && !Console.IsErrorRedirected;
}
