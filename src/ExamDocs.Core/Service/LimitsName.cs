using System.Numerics;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Service;

/// <summary>A maker's or a model's name, ready to be compared with many others.</summary>
/// <param name="folded">In the one spelling of <see cref="LimitsSpelling"/>.</param>
internal sealed class LimitsName(string folded)
{
    /// <summary>Of names this short, one letter makes another model of the same maker.</summary>
    private const int ShortName = 4;

    /// <summary>Two edits put in two letters and take out two at most.</summary>
    private const int LettersApart = 4;

    private readonly string _folded = folded;

    /// <summary>O as 0, I and L as 1: a slip of the eye makes no other model.</summary>
    private readonly string _toTheEye = folded
        .Replace("-", "", StringComparison.Ordinal)
        .Replace('O', '0')
        .Replace('I', '1')
        .Replace('L', '1');

    private readonly string _digits = string.Concat(folded.Where(char.IsDigit));

    /// <summary>One bit for each letter that is in it: names that share few are told apart without a search.</summary>
    private readonly ulong _letters = folded.Aggregate(0UL, (bits, letter) => bits | (1UL << (letter % 64)));

    public static LimitsName? Of(string? name) => name is null ? null : new LimitsName(LimitsSpelling.Folded(name));

    /// <param name="actual">The name at an item.</param>
    /// <param name="isOther">This name is that of other items: one that is short, or differs in its numbers, is another model's.</param>
    public bool IsNear(LimitsName actual, bool isOther)
    {
        if (string.Equals(_toTheEye, actual._toTheEye, StringComparison.Ordinal))
            return true;
        if (Math.Abs(_folded.Length - actual._folded.Length) > 2 || BitOperations.PopCount(_letters ^ actual._letters) > LettersApart)
            return false;
        if (isOther && (_folded.Length < ShortName || !string.Equals(_digits, actual._digits, StringComparison.Ordinal)))
            return false;
        return SpellingSuggestion.IsNear(actual._folded, _folded);
    }
}
