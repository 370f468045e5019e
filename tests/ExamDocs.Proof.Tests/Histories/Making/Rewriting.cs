using System.Text.Json.Nodes;
using ExamDocs.Proof.Tests.Generating;

namespace ExamDocs.Proof.Tests.Histories.Making;

/// <summary>The same facts, written down otherwise.</summary>
internal static class Rewriting
{
    private static readonly string[] References = ["item", "removedPart", "fittedPart"];

    /// <summary>
    /// Every record with its ids, serials, marks and firms in other spellings, the same all over one record. A part number is
    /// held against the maker's list letter by letter, so it stays.
    /// </summary>
    public static IReadOnlyList<Run> Respelt(IReadOnlyList<Run> history, Dice dice) =>
        [.. history.Select(run => run with { Records = [.. run.Records.Select(json => Respelt(json, dice))] })];

    /// <summary>Every record of two items or more in two files, each with what is said of its own items.</summary>
    public static IReadOnlyList<Run> Split(IReadOnlyList<Run> history) =>
        [.. history.Select(run => run with { Records = [.. run.Records.SelectMany(Halves)], Labels = null })];

    /// <summary>The same records in other runs' order, and in another order within each run.</summary>
    public static IReadOnlyList<Run> Shuffled(IReadOnlyList<Run> history, Dice dice) =>
        [
            .. history
                .OrderBy(_ => dice.Next())
                .Select(run => run with { Records = [.. run.Records.OrderBy(_ => dice.Next())], Labels = null }),
        ];

    /// <summary>A last visit to everything that was ever recorded: each item found clear, as it was written last.</summary>
    public static Run LookAgain(IReadOnlyList<Run> history, DateOnly on)
    {
        Dice dice = new(1);
        var records = history
            .SelectMany(run => run.Records)
            .Select(json => JsonNode.Parse(json)!.AsObject())
            .DistinctBy(record => (string?)record["visit"]!["employer"]!["name"])
            .Select(
                (record, at) =>
                {
                    var again = Visits.Empty(
                        $"LAST-{at}",
                        on,
                        (string)record["visit"]!["employer"]!["name"]!,
                        (string?)record["visit"]!["hiredFrom"]?["name"]
                    );
                    foreach (var row in record["items"]!.AsArray().Select(row => row!.DeepClone().AsObject()))
                    {
                        row["status"] = "in-use";
                        row.Remove("fittedTo");
                        Visits.Add(again, row, true, dice);
                    }

                    return again.ToJsonString();
                }
            );
        return new Run([.. records], on.AddDays(1));
    }

    private static string Respelt(string json, Dice dice)
    {
        var record = JsonNode.Parse(json)!.AsObject();
        Dictionary<string, string> ids = new(StringComparer.Ordinal);
        foreach (var row in record["items"]!.AsArray().Select(row => row!.AsObject()))
        {
            foreach (
                var member in new[] { "id", "serial", "ownersMark", "formerly", "fittedTo" }.Where(m => (string?)row[m] is { Length: > 0 })
            )
            {
                row[member] = Spelt(ids, (string)row[member]!, dice);
            }
        }

        foreach (
            var row in new[] { "examinations", "releases", "remedies", "renewals", "disposals" }.SelectMany(list =>
                record[list] as JsonArray ?? []
            )
        )
        {
            foreach (var member in References.Where(m => (string?)row![m] is { Length: > 0 }))
            {
                row![member] = Spelt(ids, (string)row[member]!, dice);
            }
        }

        foreach (var firm in new[] { "employer", "hiredFrom" }.Where(firm => record["visit"]![firm] is not null))
        {
            record["visit"]![firm]!["name"] = Respelling.Firm((string)record["visit"]![firm]!["name"]!, dice);
        }

        return record.ToJsonString();
    }

    private static string Spelt(Dictionary<string, string> ids, string text, Dice dice)
    {
        if (!ids.TryGetValue(text, out var spelt))
        {
            // A small l is both a letter and a 1; in capitals it would be the letter alone.
            spelt = text.Contains('l', StringComparison.Ordinal) ? text : Respelling.Marking(text, dice);
            ids[text] = spelt =
                Spelling.Of(spelt) is { } other && Spelling.Of(text)?.IsLike(other) == true && !ids.ContainsValue(spelt) ? spelt : text;
        }

        return spelt;
    }

    private static IEnumerable<string> Halves(string json)
    {
        var count = JsonNode.Parse(json)!["items"]!.AsArray().Count;
        return count < 2 ? [json] : [Half(json, 0), Half(json, 1)];
    }

    private static string Half(string json, int half)
    {
        var record = JsonNode.Parse(json)!.AsObject();
        var ids = record["items"]!.AsArray().Where((_, at) => at % 2 == half).Select(row => (string?)row!["id"]).ToHashSet();
        record["visit"]!["reference"] = (string)record["visit"]!["reference"]! + (half == 0 ? "" : "-more");
        foreach (
            var (list, key) in new[]
            {
                ("items", "id"),
                ("examinations", "item"),
                ("releases", "item"),
                ("remedies", "item"),
                ("renewals", "item"),
                ("disposals", "item"),
            }
        )
        {
            foreach (var row in (record[list] as JsonArray ?? []).Where(row => !ids.Contains((string?)row![key])).ToList())
            {
                record[list]!.AsArray().Remove(row);
            }
        }

        return record.ToJsonString();
    }
}
