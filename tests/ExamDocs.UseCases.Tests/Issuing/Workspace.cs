using System.Text.Json.Nodes;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using NodaTime;

namespace ExamDocs.UseCases.Tests.Issuing;

/// <summary>A folder of its own for one test, with a register in it.</summary>
internal sealed class Workspace : IDisposable
{
    public static readonly LocalDate Today = new(2026, 5, 12);

    public string Folder { get; } = Directory.CreateTempSubdirectory("examdocs-").FullName;

    public string Register => Path.Combine(Folder, "register.db");

    public string Out => Path.Combine(Folder, "out");

    public static string ExampleJson => Path.Combine(RepositoryRoot.Path, "examples", "visit.json");

    public static string ExampleWorkbook => Path.Combine(RepositoryRoot.Path, "examples", "visit.xlsx");

    public static JsonObject Example() => JsonNode.Parse(File.ReadAllText(ExampleJson))!.AsObject();

    public string Write(JsonObject record, string name = "visit.json")
    {
        var path = Path.Combine(Folder, name);
        File.WriteAllText(path, record.ToJsonString());
        return path;
    }

    public IssueRequest Request(params string[] inputs) =>
        new()
        {
            Inputs = inputs,
            OutFolder = Out,
            RegisterPath = Register,
            Today = Today,
            Browser = OpenBrowser.Instance,
        };

    public Task<IssueResult> IssueAsync(params string[] inputs) =>
        IssueDocuments.RunAsync(Request(inputs), TestContext.Current.CancellationToken);

    public string FileOf(Issued issued) => Path.Combine(Out, issued.Document.FileName);

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
