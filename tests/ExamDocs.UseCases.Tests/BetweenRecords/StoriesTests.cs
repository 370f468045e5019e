using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using ExamDocs.UseCases.Tests.Issuing;

namespace ExamDocs.UseCases.Tests.BetweenRecords;

/// <summary>Every story comes out as it must, over a register in which the earlier runs were remembered.</summary>
public sealed class StoriesTests(ToldStories told) : IDisposable
{
    private readonly Workspace _workspace = new();

    public static TheoryData<string> Names => ToldStories.Names;

    public void Dispose() => _workspace.Dispose();

    [Theory]
    [MemberData(nameof(Names))]
    public void Over_a_register(string name) => AssertTold(ToldStories.All[name], told[name].Checked);

    /// <summary>The last run is imported too, so that the import decides it.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void By_imports_alone(string name) => AssertTold(ToldStories.All[name], told[name].Imported);

    /// <summary>All records in one run, the last named first: nothing that must not be used may come out fit.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void In_one_run_nothing_comes_out_better(string name)
    {
        var story = ToldStories.All[name];
        if (story.Runs.SelectMany(run => run).GroupBy(visit => visit.Reference, StringComparer.Ordinal).Any(same => same.Skip(1).Any()))
            return; // Versions of one visit in one run are one visit.
        var files = story.Runs.Reverse().SelectMany(run => ToldStories.Write(run, _workspace.Folder)).ToList();
        var last = CheckRecord.All(files, ToldStories.Today).Take(story.Runs[^1].Length).ToList();
        foreach (var must in story.Must.Select(Expected.Of).Where(must => must.Outcome is Outcome.Withdraw or Outcome.Undetermined))
            Assert.All(Items(last, must.Item), item => Assert.True(item.Outcome >= Outcome.Undetermined, Words(item)));
    }

    [Fact]
    public void The_table_has_stories_enough() => Assert.True(ToldStories.All.Count >= 33, $"{ToldStories.All.Count} stories");

    private static void AssertTold(Story story, IReadOnlyList<CheckedInput> inputs)
    {
        Assert.NotEmpty(story.Must);
        foreach (var must in story.Must.Select(Expected.Of))
        {
            var items = Items(inputs, must.Item);
            Assert.NotEmpty(items);
            Assert.All(items, item => Assert.True(must.Holds(item), $"{must} expected: {story.Why}\n{Words(item)}"));
        }
        if (story.IsSilent)
            Assert.DoesNotContain(inputs.SelectMany(i => i.Visit!.Findings), f => f.Code.StartsWith("IDN", StringComparison.Ordinal));
    }

    private static List<DeterminedItem> Items(IReadOnlyList<CheckedInput> inputs, string id) =>
        [.. inputs.SelectMany(i => i.Visit!.Items).Where(item => item.Item.Id == id)];

    private static string Words(DeterminedItem item) =>
        $"{item.Item.Id} is {item.Outcome} by {string.Join(", ", item.Reasons)}\n"
        + string.Join(
            "\n",
            item.Findings.Where(f => f.Severity is Core.Findings.Severity.Error).Select(f => $"{f.Code} {f.Path} {f.Message}")
        );

    /// <summary>Read from "RB-1 withdraw W10"; an id may hold blanks.</summary>
    private sealed record Expected(string Item, Outcome Outcome, string? Code)
    {
        public static Expected Of(string text)
        {
            var words = text.Split(' ');
            var at = Array.FindLastIndex(words, w => Enum.GetValues<Outcome>().Any(o => o.Word() == w));
            return new(
                string.Join(' ', words[..at]),
                Enum.GetValues<Outcome>().Single(o => o.Word() == words[at]),
                at + 1 < words.Length ? words[at + 1] : null
            );
        }

        public bool Holds(DeterminedItem item) => item.Outcome == Outcome && (Code is null || item.Reasons.Any(r => r.Code == Code));
    }
}
