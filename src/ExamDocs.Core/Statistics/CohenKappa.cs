namespace ExamDocs.Core.Statistics;

/// <summary>How far two judgements of the same things agree beyond chance (Cohen 1960): yes or no, each judged twice.</summary>
public sealed class CohenKappa
{
    /// <param name="bothYes">Both said yes.</param>
    /// <param name="onlyFirst">The first said yes, the second no.</param>
    /// <param name="onlySecond">The second said yes, the first no.</param>
    /// <param name="bothNo">Both said no.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is negative, or nothing was judged.</exception>
    public CohenKappa(int bothYes, int onlyFirst, int onlySecond, int bothNo)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(bothYes);
        ArgumentOutOfRangeException.ThrowIfNegative(onlyFirst);
        ArgumentOutOfRangeException.ThrowIfNegative(onlySecond);
        ArgumentOutOfRangeException.ThrowIfNegative(bothNo);
        Pairs = bothYes + onlyFirst + onlySecond + bothNo;
        if (Pairs == 0)
            throw new ArgumentOutOfRangeException(nameof(bothNo), "nothing was judged");
        double n = Pairs;
        Alike = bothYes + bothNo;
        var (first, second) = ((bothYes + onlyFirst) / n, (bothYes + onlySecond) / n);
        var chance = (first * second) + ((1 - first) * (1 - second));
        Value = chance < 1 ? ((Alike / n) - chance) / (1 - chance) : null;
    }

    public int Pairs { get; }

    /// <summary>Pairs in which both said the same.</summary>
    public int Alike { get; }

    /// <summary>1 for full agreement, 0 for as much as chance gives; null where every answer was the same: chance alone agrees.</summary>
    public double? Value { get; }
}
