using ExamDocs.Core.Regimes;
using ExamDocs.Register;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using ExamDocs.UseCases.Tests.Issuing;
using NodaTime;
using static ExamDocs.UseCases.Tests.BetweenRecords.Stories.Story;

namespace ExamDocs.UseCases.Tests.Commands;

/// <summary>A sheet of labels is one file; what it is printed over is looked at before any number is taken.</summary>
public sealed class PrintLabelsTests : IDisposable
{
    private readonly Workspace _workspace = new();

    private string Sheet => Path.Combine(_workspace.Out, "sheet.pdf");

    [Fact]
    public async Task Labels_of_many_items_leave_one_sheet_and_the_register_keeps_each()
    {
        var record = _workspace.Write(Workspace.Example().Only("CON-07", "COR-03"));
        var result = await RunAsync(record);

        Assert.Equal(2, result.Labels.Count);
        Assert.Equal([Sheet], Directory.GetFileSystemEntries(_workspace.Out));
        using var register = DocumentRegister.Open(_workspace.Register);
        Assert.All(result.Labels, l => Assert.Equal(l.Document.Sha256, register.FindByNumber(l.Number)!.Sha256));
        Assert.Empty(register.Check());
    }

    [Fact]
    public async Task What_issue_printed_is_the_label_that_the_sheet_shows()
    {
        var record = _workspace.Write(Workspace.Example().Only("CON-07"));
        var label = Assert.Single((await RunAsync(record)).Labels);
        var issued = await _workspace.IssueAsync(record);
        Assert.Contains(issued.Documents, d => d.Number == label.Number && !d.IssuedNow && File.Exists(_workspace.FileOf(d)));
    }

    [Fact]
    public async Task A_name_that_is_taken_takes_no_number()
    {
        Directory.CreateDirectory(_workspace.Out);
        await File.WriteAllTextAsync(Sheet, "last month's", TestContext.Current.CancellationToken);
        await Assert.ThrowsAsync<OutputRefusedException>(() => RunAsync(_workspace.Write(Workspace.Example().Only("CON-07"))));
        Assert.False(File.Exists(_workspace.Register));
        Assert.Equal("last month's", await File.ReadAllTextAsync(Sheet, TestContext.Current.CancellationToken));
    }

    /// <summary>Old paper that comes in late ends no label of a later examination, which did not know of it.</summary>
    [Fact]
    public async Task No_next_examination_label_is_printed_again_for_what_may_not_be_used()
    {
        Import(Visit("V-9", "2026-11-02").Bridge("RB-1", "Q100"));
        LabelIsOut();
        Import(Visit("V-1", "2026-05-11").Bridge("RB-1", "Q100", i => i.Cut()));
        await IsNotPrintedAgain("D-2026-000001 is not printed again, as it would say that RB-1 may be used: withdrawn on 11 May 2026");
    }

    /// <summary>A corrected record that only came in as history has printed nothing that takes the place of the label.</summary>
    [Fact]
    public async Task No_next_examination_label_is_printed_again_with_a_day_that_a_correction_brought_forward()
    {
        Import(Visit("V-9", "2026-11-02").Bridge("RB-1", "Q100"));
        LabelIsOut();
        Import(Visit("V-9", "2026-11-02").Bridge("RB-1", "Q100", i => i.NextBy("2026-12-01")));
        await IsNotPrintedAgain("D-2026-000001 is not printed again, as it would say that RB-1 may be used: a later version of its record");
    }

    private static LocalDate Later { get; } = new(2026, 11, 9);

    private void Import(StoryVisit visit)
    {
        var path = Path.Combine(_workspace.Folder, visit.Reference + ".json");
        File.WriteAllText(path, visit.Json);
        ImportVisits.Run([path], _workspace.Register, Later, KnownRules.BuiltIn);
    }

    private void LabelIsOut()
    {
        using var register = DocumentRegister.Open(_workspace.Register, Later);
        var number = register.Take(new('D', 2026, "due-label", "V-9 RB-1", ["RB-1"], Folder: null) { Visit = 1 });
        register.Publish(number, "%PDF-1.7"u8.ToArray(), 1, """{"RB-1":"fit"}""");
    }

    private async Task IsNotPrintedAgain(string because)
    {
        var result = await RunAsync("D-2026-000001 RB-1", Later);
        Assert.StartsWith(because, result.Refused);
        Assert.Empty(result.Labels);
        Assert.False(File.Exists(Sheet));
    }

    private Task<LabelResult> RunAsync(string record, LocalDate? today = null) =>
        PrintLabels.RunAsync(
            new LabelRequest
            {
                InputsOrNumbers = [record],
                OutFile = Sheet,
                RegisterPath = _workspace.Register,
                Today = today ?? Workspace.Today,
                Browser = OpenBrowser.Instance,
            },
            TestContext.Current.CancellationToken
        );

    public void Dispose() => _workspace.Dispose();
}
