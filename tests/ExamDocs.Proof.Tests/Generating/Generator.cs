namespace ExamDocs.Proof.Tests.Generating;

/// <summary>Makes the record of a seed: a flawless one with up to four changes.</summary>
public static class Generator
{
    private static readonly Slip[] Slips =
    [
        .. AnswerSlips.All,
        .. TimeSlips.All,
        .. AssemblySlips.All,
        .. WordSlips.All,
        .. LimitSlips.All,
    ];

    private static readonly Slip[] Weighted = [.. Slips.SelectMany(slip => Enumerable.Repeat(slip, slip.Weight))];

    public static Draft Make(long seed) => Make(seed, Chosen(seed));

    /// <summary>The changes drawn for a seed, each with its step.</summary>
    public static IReadOnlyList<(int Step, Slip Slip)> Chosen(long seed)
    {
        var dice = Dice.For(seed, 0);
        return [.. Enumerable.Range(1, dice.One(0, 1, 1, 2, 2, 3, 4)).Select(step => (step, dice.Of(Weighted)))];
    }

    /// <summary>With some of the changes only; each has dice of its own and stays what it was.</summary>
    public static Draft Make(long seed, IEnumerable<(int Step, Slip Slip)> changes)
    {
        var draft = Flawless.Make(Dice.For(seed, 100));
        foreach (var (step, slip) in changes)
        {
            var dice = Dice.For(seed, step);
            slip.Apply(draft, dice, dice.Below(draft.Count));
        }

        return draft;
    }
}
