using System.Numerics;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Service;

/// <summary>A maker's or a model's name, ready to be compared with many others.</summary>
/// <param name="folded">The name as <see cref="LimitsSpelling"/> folds it.</param>
internal sealed class LimitsName(string folded)
{
    /// <summary>In a name shorter than this, one letter may already make another model of the same maker.</summary>
    private const int ShortName = 4;

    /// <summary>Two edits add at most two letters and remove at most two.</summary>
    private const int LettersApart = 4;

    private readonly string _folded = folded;

    /// <summary>With O as 0, I and L as 1: signs that look alike make no other model.</summary>
    private readonly string _toTheEye = folded
        .Replace("-", "", StringComparison.Ordinal)
        .Replace('O', '0')
        .Replace('I', '1')
        .Replace('L', '1');

    private readonly string _digits = string.Concat(folded.Where(char.IsDigit));

    /// <summary>One bit for each letter in it: names that share few letters are ruled out without comparing them.</summary>
    private readonly ulong _letters = folded.Aggregate(0UL, (bits, letter) => bits | (1UL << (letter % 64)));

    public static LimitsName? Of(string? name) => name is null ? null : new LimitsName(LimitsSpelling.Folded(name));

    /// <summary>True where the two names may be one, with a slip in it.</summary>
    /// <param name="actual">The name that an item has.</param>
    /// <param name="isOther">True where other items have this name: then a short name, or one with other digits, is another model.</param>
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
