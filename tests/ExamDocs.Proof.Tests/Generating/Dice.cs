namespace ExamDocs.Proof.Tests.Generating;

/// <summary>Numbers that look random and are the same for a seed on every machine (SplitMix64, Steele, Lea and Flood 2014).</summary>
public sealed class Dice(ulong seed)
{
    private ulong _state = seed;

    public ulong Next()
    {
        var z = _state += 0x9E3779B97F4A7C15;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    /// <summary>From 0 up to but without the end.</summary>
    public int Below(int end) => (int)(Next() % (ulong)end);

    /// <summary>Both ends inside.</summary>
    public int Between(int low, int high) => low + Below(high - low + 1);

    public bool Chance(int percent) => Below(100) < percent;

    public T Of<T>(IReadOnlyList<T> list) => list[Below(list.Count)];

    /// <summary>One of these.</summary>
    public T One<T>(params T[] list) => list[Below(list.Length)];

    /// <summary>The dice for one step of a seed, whatever other steps there are.</summary>
    public static Dice For(long seed, int step) => new(new Dice((ulong)seed * 1_000_003 + (ulong)step).Next());
}
