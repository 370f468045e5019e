using System.CommandLine;
using System.Globalization;
using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Registered;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs find</c>: what the register knows of an item today.</summary>
internal static class FindCommand
{
    private static readonly Argument<string> Marking = new("MARKING")
    {
        Description = "An id, a serial number, an owner's mark, a document's number or a scanned code; else words to look for.",
    };

    public static Command Create()
    {
        var command = new Command("find", "Finds items in the register: whether each may be used today, and its history.") { Marking };
        command.SetAction((parsed, _) => RunGuard.RunAsync(() => Task.FromResult(Run(parsed))));
        return command;
    }

    private static int Run(ParseResult parsed)
    {
        var (place, asked) = (CommonOptions.Place(parsed), parsed.GetRequiredValue(Marking));
        if (!place.Exists)
        {
            Console.Error.WriteLine(place.Missing);
            return ExitCode.Refused;
        }
        var (items, inAll, isMarked) = FindItems.Of(place.Place, asked, CommonOptions.Today());
        if (!isMarked)
        {
            Console.Error.WriteLine(
                Screen.Say(
                    items.Count == 0
                        ? $"The register knows nothing of '{asked}'. Treat it as never examined."
                        : (Message)$"No item is marked '{asked}'. These have its words:"
                )
            );
            foreach (var like in FindItems.SpeltLike(place.Place, asked, CommonOptions.Today()))
                Console.Error.WriteLine(Screen.Say($"Spelt much like it: {like.Id}  {Words(like.Standing)}: {like.Why}"));
        }
        foreach (var item in items)
            Print(item, parsed.GetValue(CommonOptions.Quiet));
        if (items.Count < inAll)
            Console.Error.WriteLine(Screen.Say($"{items.Count} of {inAll} items; type more to narrow it down."));
        if (!isMarked)
            return ExitCode.CannotTell;
        return items.All(i => i.Standing is Standing.InService) ? ExitCode.Done : ExitCode.Findings;
    }

    private static void Print(FoundItem item, bool quiet)
    {
        Console.WriteLine($"{item.Id}  {Screen.Say(Words(item.Standing))}: {Screen.Say(item.Why)}");
        if (quiet)
            return;
        var marks = new[]
        {
            item.Item.Maker,
            item.Item.Model,
            item.Item.Serial is { } serial ? Screen.Say($"serial {serial}") : null,
            item.Owner,
        };
        Console.WriteLine($"    {string.Join(", ", marks.Where(m => !string.IsNullOrWhiteSpace(m)))}");
        foreach (var visit in item.History)
        {
            var day = visit.Day?.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture) ?? Screen.Say($"no day");
            Console.WriteLine($"    {day}  {visit.Reference}  {visit.Outcome}  {string.Join(" ", visit.Codes)}".TrimEnd());
            foreach (var document in visit.Documents)
                Console.WriteLine(
                    $"        {document.Number}  {document.Kind}{(document.Ended is { } ended ? $"  ({Screen.Say(ended)})" : "")}"
                );
        }
    }

    private static Message Words(Standing standing) =>
        standing switch
        {
            Standing.Withdrawn => $"DO NOT USE",
            Standing.Held => $"NOT DETERMINED, DO NOT USE",
            Standing.Overdue => $"EXAMINATION OVERDUE, DO NOT USE",
            Standing.NotIssued => $"NO CURRENT REPORT, DO NOT USE",
            _ => $"in service",
        };
}
