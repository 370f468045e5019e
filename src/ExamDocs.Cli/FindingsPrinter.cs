using System.Globalization;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.UseCases.Reading;
using Spectre.Console;

namespace ExamDocs.Cli;

/// <summary>Prints findings to standard error, as a compiler does, and outcomes to standard output.</summary>
internal static class FindingsPrinter
{
    private const int PipedWidth = 400;

    public static void Print(IReadOnlyList<CheckedInput> inputs, bool quiet)
    {
        foreach (var input in inputs)
        {
            if (input.Unreadable is { } why)
                Console.Error.WriteLine($"{input.File}: unreadable: {why}");
            foreach (var finding in input.Findings)
            {
                if (!quiet || finding.Severity is Severity.Error)
                    Console.Error.WriteLine(Line(input, finding));
            }
            if (input.IsRead && !quiet)
                PrintOutcomes(input.Outcomes);
        }
    }

    /// <summary>place: severity code: words. Hint: what to type.</summary>
    public static string Line(CheckedInput input, Finding finding) =>
        $"{input.Sources.Locate(finding.Path)}: {finding.Severity.Word()} {finding.Code}: "
        + $"{(finding.Item is { } id ? $"{id}: " : "")}{finding.Message}. Hint: {finding.Hint}";

    private static void PrintOutcomes(IReadOnlyList<ItemOutcome> items)
    {
        if (items.Count > 0)
            PrintTable(items);
        Console.WriteLine(
            string.Join(
                ", ",
                Enum.GetValues<Outcome>()
                    .Select(o => string.Create(CultureInfo.InvariantCulture, $"{items.Count(i => i.Outcome == o)} {o.Word()}"))
            )
        );
    }

    private static void PrintTable(IReadOnlyList<ItemOutcome> items)
    {
        var table = new Table { Border = TableBorder.Simple };
        table.AddColumns("Item", "Outcome", "Not after", "Next examination by", "Reasons");
        foreach (var item in items)
        {
            table.AddRow(
                Markup.Escape(item.Item ?? "(no id)"),
                Markup.Escape(Tone(item.Outcome)),
                Day(item.Until),
                Day(item.NextExaminationBy),
                Markup.Escape(string.Join(" ", item.Codes))
            );
        }
        // A line that wraps is no line for the program that reads it from a pipe.
        if (Console.IsOutputRedirected)
            AnsiConsole.Profile.Width = PipedWidth;
        AnsiConsole.Write(table);
    }

    /// <summary>What may not be used stands out by its letters, not by colour.</summary>
    private static string Tone(Outcome outcome) =>
        outcome is Outcome.Withdraw or Outcome.Undetermined ? outcome.Word().ToUpperInvariant() : outcome.Word();

    private static string Day(NodaTime.LocalDate? day) => day?.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture) ?? "";
}
