using System.Text.Json.Nodes;

namespace ExamDocs.Proof.Tests.Histories;

/// <summary>Takes away what a history does not need to show a disagreement.</summary>
internal static class Shrinking
{
    private static readonly string[] Lists = ["releases", "remedies", "renewals", "disposals", "examinations", "items"];

    public static IReadOnlyList<Run> Smallest(IReadOnlyList<Run> history, Func<IReadOnlyList<Run>, bool> isStill)
    {
        for (var changed = true; changed; )
        {
            changed = false;
            foreach (var fewer in Fewer(history))
            {
                if (isStill(fewer))
                {
                    (history, changed) = (fewer, true);
                    break;
                }
            }
        }

        return history;
    }

    private static IEnumerable<IReadOnlyList<Run>> Fewer(IReadOnlyList<Run> history)
    {
        for (var run = history.Count - 1; run >= 0; run--)
        {
            if (history.Count > 1)
            {
                yield return [.. history.Where((_, at) => at != run)];
            }

            for (var record = history[run].Records.Count - 1; record >= 0; record--)
            {
                if (history[run].Records.Count > 1)
                {
                    yield return With(history, run, Without(history[run], record));
                }

                foreach (var json in FewerRows(history[run].Records[record]))
                {
                    yield return With(
                        history,
                        run,
                        history[run] with
                        {
                            Records = [.. history[run].Records.Select((old, at) => at == record ? json : old)],
                        }
                    );
                }
            }
        }
    }

    private static IReadOnlyList<Run> With(IReadOnlyList<Run> history, int run, Run other) =>
        [.. history.Select((old, at) => at == run ? other : old)];

    private static Run Without(Run run, int record) =>
        run with
        {
            Records = [.. run.Records.Where((_, at) => at != record)],
            Labels = run.Labels is null ? null : [.. run.Labels.Where((_, at) => at != record)],
        };

    private static IEnumerable<string> FewerRows(string json)
    {
        var record = JsonNode.Parse(json)!.AsObject();
        foreach (var list in Lists)
        {
            for (var row = (record[list] as JsonArray)?.Count - 1 ?? -1; row >= 0; row--)
            {
                // An item keeps its place: labels are numbered by it.
                if (list == "items" && record[list]!.AsArray().Count == 1)
                {
                    continue;
                }

                var fewer = record.DeepClone().AsObject();
                fewer[list]!.AsArray().RemoveAt(row);
                yield return fewer.ToJsonString();
            }
        }

        foreach (var json2 in FewerMembers(record))
        {
            yield return json2;
        }
    }

    private static IEnumerable<string> FewerMembers(JsonObject record)
    {
        for (var row = 0; row < record["items"]!.AsArray().Count; row++)
        {
            foreach (
                var member in new[] { "fittedTo", "formerly", "notTheSameAs", "ownersMark", "partNumber" }.Where(m =>
                    record["items"]![row]![m] is not null
                )
            )
            {
                var fewer = record.DeepClone().AsObject();
                fewer["items"]![row]!.AsObject().Remove(member);
                yield return fewer.ToJsonString();
            }
        }
    }
}
