namespace ExamDocs.UseCases.Tests.BetweenRecords.Stories;

/// <summary>What happened to some kit over several records, and what the last of them must say of it.</summary>
/// <param name="Name">In a few words.</param>
/// <param name="Why">Why it must come out so.</param>
internal sealed record Story(string Name, string Why)
{
    /// <summary>Runs of the program in order; each is the visits handed in together.</summary>
    public IReadOnlyList<StoryVisit[]> Runs { get; init; } = [];

    /// <summary>Of the last run: "RB-1 withdraw W10" is an item, its outcome and a reason it must have.</summary>
    public IReadOnlyList<string> Must { get; init; } = [];

    /// <summary>No finding about identity may be said in the last run: it is all as it should be.</summary>
    public bool IsSilent { get; init; }

    public static StoryVisit Visit(string reference, string day, string employer = "Alder Vale Ltd") => new(reference, day, employer);

    /// <summary>Adds a run.</summary>
    public Story Then(params StoryVisit[] visits) => this with { Runs = [.. Runs, visits] };

    public Story Gives(params string[] must) => this with { Must = must };

    public Story WithoutAWord() => this with { IsSilent = true };

    public override string ToString() => Name;
}
