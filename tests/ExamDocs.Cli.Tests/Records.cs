using System.Text.Json.Nodes;

namespace ExamDocs.Cli.Tests;

/// <summary>Records to run the program on.</summary>
internal static class Records
{
    private static readonly string Root = FindRoot();

    public static string ExampleJson => Path.Combine(Root, "examples", "visit.json");

    public static string ExampleWorkbook => Path.Combine(Root, "examples", "visit.xlsx");

    public static JsonObject Example() => JsonNode.Parse(File.ReadAllText(ExampleJson))!.AsObject();

    /// <summary>The small complete record of docs/record-format.md: one friction cord, fit.</summary>
    public static JsonObject Small()
    {
        var page = File.ReadAllText(Path.Combine(Root, "docs", "record-format.md"));
        const string Fence = "```json\n";
        var start = page.IndexOf(Fence, StringComparison.Ordinal) + Fence.Length;
        return JsonNode.Parse(page[start..page.IndexOf("```", start, StringComparison.Ordinal)])!.AsObject();
    }

    /// <summary>The same cord with a cut cover: withdrawn, its defect entered and told.</summary>
    public static JsonObject Cut()
    {
        var record = Small();
        var examination = record["examinations"]![0]!;
        SetState(record, "cover-cut", "defect");
        Observation(record, "cover-cut")["note"] = "Cut of 4 mm beside the upper eye";
        examination["defects"] = new JsonArray(
            new JsonObject
            {
                ["criterion"] = "cover-cut",
                ["part"] = "cover",
                ["description"] = "Cut of 4 mm beside the upper eye",
                ["danger"] = "now",
                ["remedy"] = "none; destroy it",
                ["imminentRisk"] = false,
                ["notified"] = new JsonObject
                {
                    ["whom"] = "Tarnfold Tree Care",
                    ["how"] = "by word of mouth",
                    ["on"] = "2026-06-03",
                },
            }
        );
        examination["conclusion"] = "withdraw";
        return record;
    }

    public static void SetState(JsonObject record, string criterion, string state, int examination = 0) =>
        Observation(record, criterion, examination)["state"] = state;

    public static string Write(this JsonObject record, Examdocs program, string name)
    {
        File.WriteAllText(program.At(name), record.ToJsonString());
        return name;
    }

    public static JsonObject Observation(JsonObject record, string criterion, int examination = 0) =>
        record["examinations"]![examination]!["observations"]!
            .AsArray()
            .Single(o => string.Equals((string?)o!["criterion"], criterion, StringComparison.Ordinal))!
            .AsObject();

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "ExamDocs.sln")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("no ExamDocs.sln above the tests");
    }
}
