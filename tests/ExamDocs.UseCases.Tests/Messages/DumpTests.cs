using ExamDocs.UseCases.Commands;

namespace ExamDocs.UseCases.Tests.Messages;

public sealed class DumpTests
{
    [Fact]
    public void Dump()
    {
        var all = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var p in new[] { "Core", "Intake", "Documents", "Register", "UseCases", "Cli" })
        foreach (var k in MessagesInCode.In(Path.Combine(AppContext.BaseDirectory, $"ExamDocs.{p}.dll")))
            all.TryAdd(k, p);
        foreach (var r in RuleList.All)
        {
            all.TryAdd(r.Why, "why " + r.Code);
            all.TryAdd(r.Title, "title " + r.Code);
        }
        File.WriteAllText("/dev/shm/findings/keys.json", System.Text.Json.JsonSerializer.Serialize(all));
    }
}
