namespace ExamDocs.Register.Checking;

/// <summary>A set of numbers that mostly follow one another: a bit for each.</summary>
internal sealed class VisitNumbers
{
    private readonly Dictionary<int, ulong> _bits = [];

    public void Add(int number) => _bits[number >> 6] = _bits.GetValueOrDefault(number >> 6) | (1UL << (number & 63));

    public bool Contains(int number) => (_bits.GetValueOrDefault(number >> 6) & (1UL << (number & 63))) != 0;
}
