using System.IO.Compression;
using System.Text;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Tests.Issuing;

namespace ExamDocs.UseCases.Tests.Commands;

/// <summary>The annotated copy of the example: its outcomes stay what they were, and it is written whole or not at all.</summary>
public sealed class AnnotateWorkbookTests : IDisposable
{
    private readonly Workspace _workspace = new();

    [Fact]
    public void The_copy_gives_the_same_outcomes_and_findings_however_often_it_is_annotated()
    {
        var input = Spoilt();
        var before = CheckRecord.Of(input, Workspace.Today);
        Assert.NotEmpty(before.Visit!.Findings);
        var said = FindingsFile.Write([before]);
        foreach (var name in new[] { "once.xlsx", "twice.xlsx" })
        {
            var copy = Path.Combine(_workspace.Folder, name);
            Assert.Null(AnnotateWorkbook.Run(CheckRecord.Of(input, Workspace.Today), copy));
            var after = CheckRecord.Of(copy, Workspace.Today);
            Assert.Null(after.Unreadable);
            Assert.Equal(said, FindingsFile.Write([after]).Replace(copy, before.File, StringComparison.Ordinal));
            input = copy;
        }
    }

    [Fact]
    public void Every_cause_with_a_cell_has_its_note_and_every_cause_its_row()
    {
        var input = CheckRecord.Of(Spoilt(), Workspace.Today);
        var copy = Path.Combine(_workspace.Folder, "copy.xlsx");
        Assert.Null(AnnotateWorkbook.Run(input, copy));
        Assert.Contains(input.Findings, f => f.FollowsFrom is not null);
        var findings = input.Findings.Where(f => f.FollowsFrom is null).ToList();
        using var zip = ZipFile.OpenRead(copy);
        var notes = string.Concat(zip.Entries.Where(e => e.Name.StartsWith("comments", StringComparison.Ordinal)).Select(Text));
        var list = Text(zip.Entries.Single(e => e.Name.StartsWith("findings", StringComparison.Ordinal)));
        var missing = list.Split(">U1<").Length - 1;
        Assert.Equal(findings.Count + missing + 2, list.Split("<row ").Length - 1);
        Assert.Equal(findings.Count(f => input.Sources.CellOf(f.Path) is not null) + missing, list.Split("<hyperlink ").Length - 1);
        Assert.All(findings.Where(f => input.Sources.CellOf(f.Path) is not null), f =>
            Assert.Contains(
                System
                    .Security.SecurityElement.Escape(f.Message.Text)!
                    .Replace("&apos;", "'", StringComparison.Ordinal)
                    .Replace("&quot;", "\"", StringComparison.Ordinal),
                notes,
                StringComparison.Ordinal
            )
        );
    }

    [Fact]
    public void An_answer_that_is_missing_is_asked_for_in_its_cell()
    {
        var record = Workspace.Example().Only("CON-01");
        record["items"] = new System.Text.Json.Nodes.JsonArray(record.Item("CON-01").DeepClone());
        var observations = record.ExaminationOf("CON-01")["observations"]!.AsArray();
        observations.RemoveAt(observations.ToList().FindIndex(o => (string?)o!["criterion"] == "cracks"));
        var workbook = Path.Combine(_workspace.Folder, "kit.xlsx");
        Assert.Null(WriteCaptureWorkbook.Run(new CaptureRequest(workbook, [], _workspace.Write(record), WithAnswers: true)));
        var input = CheckRecord.Of(workbook, Workspace.Today);
        Assert.Equal("U1", Assert.Single(Assert.Single(input.Visit!.Items).Reasons).Code);

        var copy = Path.Combine(_workspace.Folder, "copy.xlsx");
        Assert.Null(AnnotateWorkbook.Run(input, copy));

        using (var zip = ZipFile.OpenRead(copy))
        {
            var list = Text(zip.Entries.Single(e => e.Name.StartsWith("findings", StringComparison.Ordinal)));
            Assert.Contains("cracks has no answer, so the item is undetermined", list, StringComparison.Ordinal);
        }
        var (sheet, cell) = input.Sources.CellOf("/examinations/0/observations/cracks")!.Value;
        Assert.Equal("Connectors", sheet);
        Assert.Matches("^[A-Z]+2$", cell);
        Assert.Equal("U1", Assert.Single(Assert.Single(CheckRecord.Of(copy, Workspace.Today).Visit!.Items).Reasons).Code);
        Assert.DoesNotContain(CheckRecord.Of(copy, Workspace.Today).Visit!.Findings, f => f.Code == "INT020");
    }

    [Fact]
    public void It_never_takes_the_place_of_the_workbook()
    {
        var input = Spoilt();
        var bytes = File.ReadAllBytes(input);
        var link = Path.Combine(_workspace.Folder, "link.xlsx");
        File.CreateSymbolicLink(link, input);
        var folder = Path.Combine(_workspace.Folder, "folder");
        Directory.CreateSymbolicLink(folder, _workspace.Folder);
        foreach (var same in new[] { input, link, Path.Combine(folder, "kit.xlsx"), Path.Combine(_workspace.Folder, ".", "kit.xlsx") })
            Refused(input, same);
        Refused(link, input);
        Assert.Equal(bytes, File.ReadAllBytes(input));
    }

    private static void Refused(string input, string copy) =>
        Assert.Contains(
            "an input of this run",
            Assert
                .Throws<OutputRefusedException>(() =>
                    AnnotateWorkbook.Run(CheckRecord.Of(input, Workspace.Today), copy, new OutputGuard { Replace = true })
                )
                .Message,
            StringComparison.Ordinal
        );

    [Fact]
    public void Only_one_workbook_can_be_annotated()
    {
        Assert.Contains("one workbook at a time", AnnotateWorkbook.WhyNot(["a.xlsx", "b.xlsx"]), StringComparison.Ordinal);
        Assert.Contains("only a workbook", AnnotateWorkbook.WhyNot(["a.json"]), StringComparison.Ordinal);
        Assert.Contains("only a workbook", AnnotateWorkbook.WhyNot([_workspace.Folder]), StringComparison.Ordinal);
        Assert.Null(AnnotateWorkbook.WhyNot(["a.XLSX"]));
    }

    [Fact]
    public void An_unreadable_workbook_leaves_the_earlier_copy_alone()
    {
        var torn = Path.Combine(_workspace.Folder, "torn.xlsx");
        var copy = Path.Combine(_workspace.Folder, "copy.xlsx");
        File.WriteAllText(torn, "PK");
        File.WriteAllText(copy, "earlier");
        Assert.Contains("unreadable", AnnotateWorkbook.Run(CheckRecord.Of(torn, Workspace.Today), copy), StringComparison.Ordinal);
        Assert.Equal("earlier", File.ReadAllText(copy));
        Assert.Equal(2, Directory.GetFiles(_workspace.Folder).Length);
    }

    public void Dispose() => _workspace.Dispose();

    /// <summary>The example with an answer misspelt and a serial number gone.</summary>
    private string Spoilt()
    {
        var file = Path.Combine(_workspace.Folder, "kit.xlsx");
        File.Copy(Workspace.ExampleWorkbook, file, overwrite: true);
        using var zip = ZipFile.Open(file, ZipArchiveMode.Update);
        var entry = zip.GetEntry("xl/sharedStrings.xml")!;
        var text = Text(entry);
        Assert.Contains(">clear<", text, StringComparison.Ordinal);
        entry.Delete();
        using var stream = zip.CreateEntry("xl/sharedStrings.xml").Open();
        stream.Write(Encoding.UTF8.GetBytes(text.Replace(">clear<", ">claer<", StringComparison.Ordinal)));
        return file;
    }

    private static string Text(ZipArchiveEntry entry)
    {
        using var reader = new StreamReader(entry.Open());
        return reader.ReadToEnd();
    }
}
