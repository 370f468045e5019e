using System.Text;
using System.Text.Json;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Histories;

/// <summary>A history in a few lines, for reading a disagreement.</summary>
internal static class Summary
{
    public static string Of(IReadOnlyList<Run> history)
    {
        StringBuilder text = new();
        foreach (var (run, at) in history.Select((run, at) => (run, at)))
        {
            text.AppendLine(FormattableString.Invariant($"run {at + 1}"));
            foreach (var json in run.Records)
            {
                Add(text, JsonDocument.Parse(json).RootElement);
            }
        }

        return text.ToString();
    }

    private static void Add(StringBuilder text, JsonElement record)
    {
        var visit = record.Member("visit")!.Value;
        text.AppendLine(
            $"  {visit.Text("reference")} {visit.Text("examinedOn")} {visit.Member("employer")?.Text("name")} "
                + $"{visit.Member("hiredFrom")?.Text("name")}"
        );
        foreach (var item in record.List("items"))
        {
            text.AppendLine(
                "    "
                    + string.Join(
                        ' ',
                        item.EnumerateObject()
                            .Where(m =>
                                m.Name
                                    is "id"
                                        or "category"
                                        or "maker"
                                        or "partNumber"
                                        or "serial"
                                        or "ownersMark"
                                        or "manufactured"
                                        or "fittedTo"
                                        or "formerly"
                                        or "notTheSameAs"
                                        or "status"
                            )
                            .Select(m => $"{m.Name}={m.Value}")
                    )
            );
            foreach (var examination in record.List("examinations").Where(e => e.Text("item") == item.Text("id")))
            {
                text.AppendLine(
                    $"      {examination.Text("conclusion")} "
                        + string.Join(
                            ' ',
                            examination
                                .List("observations")
                                .Where(o => o.Text("state") != "clear")
                                .Select(o => $"{o.Text("criterion")}={o.Text("state")}")
                        )
                        + $" {examination.Member("defects")}"
                );
            }
        }

        foreach (var list in new[] { "releases", "remedies", "renewals", "disposals" }.Where(list => record.List(list).Count > 0))
        {
            text.AppendLine($"    {list} {record.Member(list)}");
        }
    }
}
