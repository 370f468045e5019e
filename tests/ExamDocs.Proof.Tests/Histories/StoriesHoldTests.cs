using ExamDocs.UseCases.Tests.BetweenRecords.Stories;

namespace ExamDocs.Proof.Tests.Histories;

/// <summary>The second evaluator tells every story as the table does.</summary>
public sealed class StoriesHoldTests
{
    private static readonly Dictionary<string, Story> Told = IdentityStories
        .All.Concat(AssemblyStories.All)
        .Concat(EndingStories.All)
        .Concat(AsideStories.All)
        .Concat(CorrectedAwayStories.All)
        .ToDictionary(story => story.Name, StringComparer.Ordinal);

    public static TheoryData<string> Names => [.. Told.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_has_its_outcome(string name)
    {
        var story = Told[name];
        using Recalled model = new();
        List<Said> last = [];
        foreach (var run in story.Runs)
        {
            last = [.. model.Run(new Run([.. run.Select(visit => visit.Json)], new DateOnly(2027, 12, 31))).SelectMany(record => record)];
        }

        foreach (var must in story.Must)
        {
            var said = last.Where(item => must.StartsWith(item.Item + " ", StringComparison.Ordinal)).ToList();
            Assert.NotEmpty(said);
            Assert.All(said, item =>
                Assert.True(
                    Holds(must[(item.Item.Length + 1)..].Split(' '), item),
                    $"{must} expected: {story.Why}\n{item.Outcome} {item.Deciding}"
                )
            );
        }
    }

    private static bool Holds(string[] must, Said said) => said.Outcome == must[0] && (must.Length == 1 || said.Codes.Contains(must[1]));
}
