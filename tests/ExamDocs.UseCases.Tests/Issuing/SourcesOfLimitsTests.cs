using System.Diagnostics;
using System.Text.Json.Nodes;
using ExamDocs.UseCases.Commands;

namespace ExamDocs.UseCases.Tests.Issuing;

/// <summary>Limits that are taken from several entries are printed with the document of each.</summary>
public sealed class SourcesOfLimitsTests
{
    [Theory]
    [InlineData("evidence")]
    [InlineData("record")]
    public async Task Every_document_that_binds_is_named(string kind)
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CLR-01");
        var item = record["items"]!.AsArray().Single(i => (string?)i!["id"] is "CLR-01")!;
        item["partNumber"] = "OS-99";
        var limits = record["limits"]!.AsArray().First(l => (string?)l!["model"] == (string?)item["model"])!.AsObject();
        var other = limits.DeepClone().AsObject();
        (other["partNumber"], other["maxUseYears"]) = ("OS-45", 4);
        other["source"] = JsonNode.Parse("""{"title":"Sheet for sewn eyes","revision":"8","page":"3"}""");
        record["limits"]!.AsArray().Add(other);

        var result = await IssueDocuments.RunAsync(
            workspace.Request(workspace.Write(record)) with
            {
                Only = [kind],
            },
            TestContext.Current.CancellationToken
        );

        var document = Assert.Single(result.Documents).Document;
        var text = PdfText(Path.Combine(document.Folder, document.FileName));
        Assert.Contains((string)limits["source"]!["title"]!, text, StringComparison.Ordinal);
        Assert.Contains("Sheet for sewn eyes, revision 8, page 3", text, StringComparison.Ordinal);
    }

    private static string PdfText(string file)
    {
        using var process = Process.Start(new ProcessStartInfo("pdftotext", [file, "-"]) { RedirectStandardOutput = true })!;
        var text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }
}
