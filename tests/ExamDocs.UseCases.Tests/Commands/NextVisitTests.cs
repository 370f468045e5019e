using System.Text.Json.Nodes;
using ExamDocs.Core;
using ExamDocs.Core.Records;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using ExamDocs.UseCases.Tests.Issuing;
using NodaTime;

namespace ExamDocs.UseCases.Tests.Commands;

/// <summary>The workbook for the next visit brings the last one along, so that what was withdrawn stays withdrawn.</summary>
public sealed class NextVisitTests
{
    private static readonly LocalDate Next = new(2026, 11, 9);

    /// <summary>That it was not shown is said of one visit; what became of an item holds on.</summary>
    [Theory]
    [InlineData("not-presented", null)]
    [InlineData("lost", ItemStatus.Lost)]
    [InlineData("stored", ItemStatus.Stored)]
    public void Nobody_has_said_yet_whether_an_item_is_shown_this_time(string last, ItemStatus? next)
    {
        using var workspace = new Workspace();
        var record = Path.Combine(workspace.Folder, "last.json");
        var workbook = Path.Combine(workspace.Folder, "next.xlsx");
        File.WriteAllText(
            record,
            new StoryVisit("V-1", "2025-11-10", "Alder Vale Ltd").Bridge("RB-1", "Q1", i => i.NotLookedAt(last)).Json
        );
        Assert.Null(WriteCaptureWorkbook.Run(new CaptureRequest(workbook, [], record, WithAnswers: false)));
        Assert.Equal(next, Assert.Single(ReadInput.From(workbook).Record!.Items).Status);
    }

    [Fact]
    public void Photos_of_the_last_visit_are_not_looked_for_beside_the_next()
    {
        using var workspace = new Workspace();
        var record = Path.Combine(workspace.Folder, "last.json");
        var workbook = Path.Combine(workspace.Folder, "next.xlsx");
        var last = JsonNode.Parse(new StoryVisit("V-1", "2025-11-10", "Alder Vale Ltd").Bridge("RB-1", "Q1").Json)!;
        last["examinations"]![0]!["observations"]![0]!["photo"] = "photos/last.jpg";
        File.WriteAllText(record, last.ToJsonString());
        Assert.Null(WriteCaptureWorkbook.Run(new CaptureRequest(workbook, [], record, WithAnswers: false)));
        var read = ReadInput.From(workbook);
        Assert.NotEmpty(read.Record!.Examinations);
        Assert.Empty(read.Findings);
    }

    [Fact]
    public void What_was_withdrawn_is_still_withdrawn_though_nobody_says_so_again()
    {
        using var workspace = new Workspace();
        var workbook = Path.Combine(workspace.Folder, "next.xlsx");
        Assert.Null(WriteCaptureWorkbook.Run(new CaptureRequest(workbook, [], Workspace.ExampleJson, WithAnswers: false)));
        var read = ReadInput.From(workbook);
        Assert.Null(read.Unreadable);
        Assert.Empty(read.Findings);
        var record = read.Record! with { Visit = read.Record.Visit with { Reference = "V-2", ExaminedOn = Next, ReportedOn = Next } };

        var next = Determine.Visit(record, read.Findings, History.None, Next);
        var last = CheckRecord.Of(Workspace.ExampleJson, Workspace.Today).Visit!;

        var withdrawn = last.Items.Where(i => i.Outcome is Outcome.Withdraw).Select(i => i.Item.Id!).ToList();
        Assert.NotEmpty(withdrawn);
        foreach (var id in withdrawn)
            Assert.Contains(next.Items.Single(i => i.Item.Id == id).Reasons, r => r.Code == "W10");
        Assert.All(next.Items.Where(i => !withdrawn.Contains(i.Item.Id, StringComparer.Ordinal)), i =>
            Assert.Equal(Outcome.Undetermined, i.Outcome)
        );
    }
}
