using ExamDocs.Proof.Tests.Histories.Making;

namespace ExamDocs.Proof.Tests.Histories;

/// <summary>Safe is not the same as refusing everything: sound kit of many firms is hardly ever asked who it is.</summary>
public sealed class SoundKitIsNotRefusedTests
{
    [Fact]
    public void At_most_three_of_a_hundred_sound_items_are_asked_who_they_are()
    {
        SoundFirms firms = new(Effort.Full ? 40 : 8, Effort.Full ? 100 : 50);
        using var programme = Programme.InMemory();
        var (sound, asked, refused, first) = (0, 0, 0, "");
        for (var round = 0; round < 4; round++)
        {
            foreach (var (json, isSound) in firms.Round(round))
            {
                var said = programme.Run(new Run([json], new DateOnly(2027, 1, 1)))[0].Where((_, at) => isSound[at]).ToList();
                sound += said.Count;
                asked += said.Count(item => item.Asked);
                refused += said.Count(item => item is { Outcome: not ("fit" or "fit-until"), Asked: false });
                first =
                    first.Length > 0
                        ? first
                        : said.Find(item => item is { Outcome: not ("fit" or "fit-until"), Asked: false })?.ToString() ?? "";
            }
        }

        Console.WriteLine($"{sound} sound items at visits, {asked} asked who they are, {refused} refused for another reason");
        // Nobody answers here, so that whoever is asked once is asked at each visit after it, and counted each time.
        Assert.True(asked * 100 <= 3 * sound, $"{asked} of {sound} are asked who they are");
        // Of two firms' connectors of one batch under one tag the rules make one item: those count as refused.
        Assert.True(refused * 100 <= sound, $"{refused} of {sound} may not be used: {first}");
        Assert.True(asked > 0, "Nobody was asked anything: withdrawn kit was not replaced under its old tag.");
    }
}
