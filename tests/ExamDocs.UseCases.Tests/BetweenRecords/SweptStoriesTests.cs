using System.Text.Json.Nodes;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using ExamDocs.UseCases.Tests.Issuing;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.UseCases.Tests.BetweenRecords;

/// <summary>
/// A sweep of a safety notice comes between the visits of every story: what the record of the sweep says of the kit lets nothing come out
/// better than without it.
/// </summary>
public sealed class SweptStoriesTests : IDisposable
{
    private static readonly LocalDate Today = new(2027, 12, 31);

    private static readonly IReadOnlyDictionary<string, Story> Told = ToldStories
        .All.Values.Where(story => story.Runs.Count > 1)
        .ToDictionary(story => story.Name, StringComparer.Ordinal);

    private static readonly NamedKit All = new() { Models = ["Model rope-bridge", "Model harness", "Model connector"] };
    private static readonly NamedKit Nobody = new() { Batches = ["B-1"] };

    private readonly Workspace _plain = new();
    private readonly Workspace _swept = new();
    private int _files;

    public static TheoryData<string> Names => [.. Effort.OneIn(12, Told.Keys)];

    public void Dispose()
    {
        _plain.Dispose();
        _swept.Dispose();
    }

    [Theory]
    [MemberData(nameof(Names))]
    public Task Where_everything_is_withdrawn(string name) => RequireAsync(Told[name], All);

    [Theory]
    [MemberData(nameof(Names))]
    public Task Where_everything_is_held(string name) => RequireAsync(Told[name], Nobody);

    private async Task RequireAsync(Story story, NamedKit named)
    {
        foreach (var run in story.Runs.SkipLast(1))
        {
            foreach (var workspace in new[] { _plain, _swept })
                ImportVisits.Run(Files(workspace, run), workspace.Register, Today, KnownRules.BuiltIn);
        }
        await SweepAsync(named, story.Runs.SkipLast(1).SelectMany(run => run).Max(DayOf));
        var without = Decided(_plain, story);
        var with = Decided(_swept, story);
        Assert.Equal(without.Select(i => i.Item.Id), with.Select(i => i.Item.Id));
        Assert.All(without.Zip(with), pair =>
            Assert.True(pair.Second.Outcome >= pair.First.Outcome, $"{Words(pair.First)}; swept, {Words(pair.Second)}")
        );
    }

    /// <summary>Stopped before the first paper: what was decided is in the register then.</summary>
    private async Task SweepAsync(NamedKit named, LocalDate day)
    {
        using var stopped = new CancellationTokenSource();
        await stopped.CancelAsync();
        var request = new SweepRequest
        {
            Notice = new()
            {
                Maker = "Fennick Works",
                Reference = "FW-1",
                On = day,
                Demands = "Take it out of use.",
                ReadAt = "letter",
                Affected = [named],
            },
            RegisterPath = _swept.Register,
            Today = day,
            OutFolder = _swept.Out,
            Examiner = new Person { Name = "Ada Fenn" },
            Browser = OpenBrowser.Instance,
        };
        var swept = await SweepRecall.RunAsync(request, stopped.Token);
        Assert.Equal(RunFailure.ByUser, swept.Issued!.Failure);
        Assert.Empty(swept.Issued.Documents);
    }

    private IReadOnlyList<DeterminedItem> Decided(Workspace workspace, Story story) =>
        [
            .. CheckAgainstRegister
                .All(Files(workspace, story.Runs[^1]), Today, KnownRules.BuiltIn, workspace.Register)
                .SelectMany(i => i.Visit!.Items),
        ];

    private static LocalDate DayOf(StoryVisit visit) =>
        LocalDatePattern.Iso.Parse((string)JsonNode.Parse(visit.Json)!["visit"]!["examinedOn"]!).Value;

    private static string Words(DeterminedItem item) => $"{item.Item.Id} is {item.Outcome} by {string.Join(", ", item.Reasons)}";

    private string[] Files(Workspace workspace, IEnumerable<StoryVisit> visits) =>
        [
            .. visits.Select(visit =>
            {
                var path = Path.Combine(workspace.Folder, FormattableString.Invariant($"visit-{++_files}.json"));
                File.WriteAllText(path, visit.Json);
                return path;
            }),
        ];
}
