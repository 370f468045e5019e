using ExamDocs.Core.Cases;

namespace ExamDocs.Core.Regimes;

/// <summary>One jurisdiction's law, as far as the rules need it.</summary>
public abstract class Regime
{
    /// <summary>Identifier in the record, for example gb-loler.</summary>
    public abstract string Id { get; }

    /// <summary>Name for print.</summary>
    public abstract string Name { get; }

    /// <summary>The law it stands for, with its number.</summary>
    public abstract string Law { get; }

    /// <summary>Longest time to the next examination, in whole months from the day examined, and why.</summary>
    public abstract (int Months, string Why) Interval(ExaminationCase examination);
}

/// <summary>The regimes there are: a new one is one file and one line here.</summary>
public static class RegimeIndex
{
    public static IReadOnlyList<Regime> All { get; } = [new GbLoler(), new GbWah()];

    /// <summary>Null where there is no such regime.</summary>
    public static Regime? Find(string? id) => All.FirstOrDefault(r => string.Equals(r.Id, id, StringComparison.Ordinal));
}
