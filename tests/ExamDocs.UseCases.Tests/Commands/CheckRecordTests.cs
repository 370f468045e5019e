using System.Text.Json;
using System.Text.Json.Nodes;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Tests.Issuing;

namespace ExamDocs.UseCases.Tests.Commands;

public sealed class CheckRecordTests
{
    [Fact]
    public void Json_and_workbook_give_identical_outcomes_with_identical_reasons()
    {
        var json = Items(CheckRecord.Of(Workspace.ExampleJson, Workspace.Today));
        var workbook = Items(CheckRecord.Of(Workspace.ExampleWorkbook, Workspace.Today));

        Assert.InRange(json.Count, 48, 1000);
        Assert.Equal(json.Order(StringComparer.Ordinal), workbook.Order(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    private static List<string> Items(CheckedInput input)
    {
        Assert.Null(input.Unreadable);
        return [.. JsonNode.Parse(FindingsFile.Write([input]))!["items"]!.AsArray().Select(i => i!.ToJsonString())];
    }
}
