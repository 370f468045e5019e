using System.Globalization;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.UseCases.Reading;
using Spectre.Console;

namespace ExamDocs.Cli;

/// <summary>Prints the table of outcomes: a line for every item, and one for the rows of a sheet of which nothing was read.</summary>
internal static class OutcomesPrinter
{
    private const int PipedWidth = 400;

    private static Message NotRead => $"NOT READ";

    public static void Print(CheckedInput input)
    {
        var (items, unlisted) = (input.Outcomes, input.Unlisted);
        if (items.Count + unlisted.Count + input.UnreadRows.Count > 0)
            PrintTable(items, unlisted, UnreadRows(input));
        Console.WriteLine(
            string.Join(
                ", ",
                Enum.GetValues<Outcome>()
                    .Select(o => Screen.Say($"{items.Count(i => i.Outcome == o)} {o.Said()}"))
                    .Concat(unlisted.Count == 0 ? [] : [Screen.Say($"{unlisted.Count} withdrawn under an id that no item has")])
                    .Concat(Unread(input.UnreadRows.Count))
            )
        );
    }

    private static void PrintTable(IReadOnlyList<ItemOutcome> items, IReadOnlyList<ItemOutcome> unlisted, IEnumerable<string> unread)
    {
        var table = new Table { Border = TableBorder.Simple };
        table.AddColumns([.. new Message[] { $"Item", $"Outcome", $"Not after", $"Next examination by", $"Reasons" }.Select(Screen.Say)]);
        foreach (var item in items)
            AddRow(table, item, item.Item ?? NoId(item.Place));
        foreach (var item in unlisted)
            AddRow(
                table,
                item,
                item.Item is { } id ? Screen.Say($"{id} (no item of this id)") : Screen.Say($"(no id) (no item of this id)")
            );
        foreach (var rows in unread)
            table.AddRow(Markup.Escape(rows), Markup.Escape(Screen.Say(NotRead)), "", "", "");
        // A program that reads from a pipe takes each line for one item: lines must not wrap.
        if (Console.IsOutputRedirected)
            AnsiConsole.Profile.Width = PipedWidth;
        AnsiConsole.Write(table);
    }

    private static void AddRow(Table table, ItemOutcome item, string name) =>
        table.AddRow(
            Markup.Escape(name),
            Markup.Escape(Tone(item.Outcome)),
            Day(item.Until),
            Day(item.NextExaminationBy),
            Markup.Escape(string.Join(" ", item.Codes))
        );

    private static string NoId(SourcePlace? place) =>
        Screen.Say(
            place is null || place.At.Length == 0 ? (Message)$"(no id)"
            : place.Sheet is { } sheet ? (Message)$"(no id, {sheet} {place.At})"
            : $"(no id, {place.At})"
        );

    private static IEnumerable<string> UnreadRows(CheckedInput input) =>
        input
            .UnreadRows.GroupBy(p => p.Sheet ?? p.File, StringComparer.Ordinal)
            .Select(sheet => Screen.Say($"{sheet.Key}, {PlaceWords.Rows(sheet.Select(p => p.Cell?.Row).OfType<int>(), int.MaxValue)}"));

    private static IEnumerable<string> Unread(int rows) =>
        rows switch
        {
            0 => [],
            1 => [Screen.Say($"1 row not read")],
            _ => [Screen.Say($"{rows} rows not read")],
        };

    /// <summary>What may not be used is printed in capitals; nothing depends on colour.</summary>
    private static string Tone(Outcome outcome) =>
        outcome is Outcome.Withdraw or Outcome.Undetermined ? Screen.Say(outcome.Said()).ToUpperInvariant() : Screen.Say(outcome.Said());

    private static string Day(NodaTime.LocalDate? day) => day?.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture) ?? "";
}
