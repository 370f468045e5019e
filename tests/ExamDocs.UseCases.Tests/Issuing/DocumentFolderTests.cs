using System.Text.Json.Nodes;
using ExamDocs.Register;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Tests.Registered;
using static ExamDocs.UseCases.Tests.Registered.Visits;

namespace ExamDocs.UseCases.Tests.Issuing;

/// <summary>What a folder holds after a run: what is current, what was replaced set apart, and a list of both.</summary>
public sealed class DocumentFolderTests : IDisposable
{
    private readonly Visits _visits = new();

    public void Dispose() => _visits.Dispose();

    [Fact]
    public async Task What_is_replaced_is_set_apart_named_and_listed_apart()
    {
        var first = Report(await IssueAsync("Connector, oval"));
        var bytes = await File.ReadAllBytesAsync(_visits.FileOf(first), TestContext.Current.CancellationToken);
        var corrected = await IssueAsync("Connector, oval, triple action");
        var second = Report(corrected);

        Assert.Contains($"{first.Number} is replaced by {second.Number} and was moved into replaced.", corrected.Remarks);
        Assert.Equal(bytes, await File.ReadAllBytesAsync(Apart(first), TestContext.Current.CancellationToken));
        Assert.False(File.Exists(_visits.FileOf(first)));
        var list = List();
        Assert.Equal([second.Number], Numbers(list, "documents"));
        Assert.Equal([first.Number], Numbers(list, "replaced"));
        var old = list["replaced"]![0]!;
        Assert.Equal($"replaced/{first.Number}.pdf", (string)old["file"]!);
        Assert.Equal("replaced", (string)old["state"]!);
        Assert.Equal([second.Number], old["replacedBy"]!.AsArray().Select(n => (string)n!));
        Assert.Equal("current", (string)list["documents"]![0]!["state"]!);
    }

    [Fact]
    public async Task The_list_holds_what_earlier_runs_issued_and_what_was_taken_back_is_marked()
    {
        var first = Report(await IssueAsync("Connector, oval"));
        Assert.Null(WithdrawDocument.Run(_visits.Register, first.Number, "sent to the wrong firm", Today));
        var other = Visit("V-2", "2026-11-02");
        var second = Report(await _visits.IssueAsync(other, only: "report"));

        var list = List();
        Assert.Equal("examdocs-documents/1", (string)list["format"]!);
        Assert.Equal([(first.Number, "withdrawn"), (second.Number, "current")], list["documents"]!.AsArray().Select(State));
        Assert.Empty(list["replaced"]!.AsArray());
    }

    /// <summary>As a run leaves it that was killed after the new document was out, and in the midst of the move.</summary>
    [Fact]
    public async Task What_an_interrupted_run_left_the_next_one_finishes()
    {
        var first = Report(await IssueAsync("Connector, oval"));
        await IssueAsync("Connector, oval, triple action");
        File.Copy(Apart(first), _visits.FileOf(first));
        File.Delete(Path.Combine(_visits.Out, DocumentsFile.FileName));

        await _visits.IssueAsync(Visit("V-2", "2026-11-02"), only: "report");

        Assert.False(File.Exists(_visits.FileOf(first)));
        Assert.True(File.Exists(Apart(first)));
        Assert.Equal([first.Number], Numbers(List(), "replaced"));
    }

    [Fact]
    public async Task Another_file_among_the_replaced_ones_stays_and_is_named()
    {
        var first = Report(await IssueAsync("Connector, oval"));
        Directory.CreateDirectory(Path.GetDirectoryName(Apart(first))!);
        await File.WriteAllTextAsync(Apart(first), "somebody else's", TestContext.Current.CancellationToken);

        var corrected = await IssueAsync("Connector, oval, triple action");

        Assert.Contains(corrected.Remarks, r => r.EndsWith("another file of that name is in replaced.", StringComparison.Ordinal));
        Assert.Equal("somebody else's", await File.ReadAllTextAsync(Apart(first), TestContext.Current.CancellationToken));
        Assert.True(File.Exists(_visits.FileOf(first)));
        Assert.Equal([first.Number], Numbers(List(), "replaced"));
    }

    [Fact]
    public async Task A_file_that_is_not_as_issued_is_neither_listed_nor_moved()
    {
        var first = Report(await IssueAsync("Connector, oval"));
        await File.AppendAllTextAsync(_visits.FileOf(first), "edited", TestContext.Current.CancellationToken);
        var second = Report(await IssueAsync("Connector, oval, triple action"));

        Assert.True(File.Exists(_visits.FileOf(first)));
        Assert.Equal([second.Number], Numbers(List(), "documents"));
        Assert.Empty(Numbers(List(), "replaced"));
    }

    [Theory]
    [InlineData("documents.json", "")]
    [InlineData("documents.json", "{}")]
    [InlineData("documents.json", """{"format":"examdocs-documents/1","register":"00112233445566778899aabbccddeeff","documents":[]}""")]
    [InlineData("checkpoint.json", "my own notes")]
    [InlineData("replaced", "a file")]
    public async Task What_is_not_ours_in_the_folder_stops_the_run_before_anything_is_numbered(string name, string content)
    {
        Directory.CreateDirectory(_visits.Out);
        await File.WriteAllTextAsync(Path.Combine(_visits.Out, name), content, TestContext.Current.CancellationToken);

        var refused = await Assert.ThrowsAsync<OutputRefusedException>(() => IssueAsync("Connector, oval"));

        Assert.StartsWith(Path.Combine(_visits.Out, name), refused.Message, StringComparison.Ordinal);
        Assert.EndsWith("move it away, or name another folder", refused.Message, StringComparison.Ordinal);
        Assert.False(File.Exists(_visits.Register));
        Assert.Equal(content, await File.ReadAllTextAsync(Path.Combine(_visits.Out, name), TestContext.Current.CancellationToken));
        Assert.Single(Directory.GetFileSystemEntries(_visits.Out));
    }

    [Fact]
    public async Task A_list_of_an_earlier_version_is_brought_up_to_date()
    {
        Directory.CreateDirectory(_visits.Out);
        var list = Path.Combine(_visits.Out, DocumentsFile.FileName);
        await File.WriteAllTextAsync(list, """{"format":"examdocs-documents/1","documents":[]}""", TestContext.Current.CancellationToken);
        Assert.Equal([Report(await IssueAsync("Connector, oval")).Number], Numbers(List(), "documents"));
    }

    [Fact]
    public async Task A_document_that_is_replaced_and_lies_in_another_folder_is_named_with_it()
    {
        var first = Report(await IssueAsync("Connector, oval"));
        var elsewhere = Path.Combine(Path.GetDirectoryName(_visits.Register)!, "elsewhere");
        Directory.Move(_visits.Out, elsewhere);
        var corrected = await IssueAsync("Connector, oval, triple action");
        Assert.DoesNotContain(corrected.Remarks, r => r.StartsWith($"{first.Number} is replaced", StringComparison.Ordinal));

        using var register = DocumentRegister.Open(_visits.Register);
        Directory.Move(elsewhere, Path.Combine(_visits.Out, "back"));
        File.Move(Path.Combine(_visits.Out, "back", $"{first.Number}.pdf"), _visits.FileOf(first));
        Assert.Equal(
            [$"{first.Number} is replaced by {Report(corrected).Number}; its file is in {_visits.Out}: put it away."],
            new DocumentFolder(register, elsewhere).ReplacedElsewhere([Report(corrected).Number])
        );
    }

    private Task<IssueResult> IssueAsync(string description)
    {
        var record = Visit("V-1", "2026-05-11");
        record.Item(Item)["description"] = description;
        return _visits.IssueAsync(record, only: "report");
    }

    private string Apart(Issued issued) => Path.Combine(_visits.Out, "replaced", issued.Document.FileName);

    private JsonObject List() => JsonNode.Parse(File.ReadAllText(Path.Combine(_visits.Out, DocumentsFile.FileName)))!.AsObject();

    private static IEnumerable<string> Numbers(JsonObject list, string member) =>
        list[member]!.AsArray().Select(d => (string)d!["number"]!);

    private static (string Number, string State) State(JsonNode? document) => ((string)document!["number"]!, (string)document["state"]!);

    private static Issued Report(IssueResult result) => result.Documents.Single(d => d.Kind is "report");
}
