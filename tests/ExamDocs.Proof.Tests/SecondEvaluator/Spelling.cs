namespace ExamDocs.Proof.Tests.SecondEvaluator;

/// <summary>Whether two names are the same name, or nearly.</summary>
internal static class Spelling
{
    /// <summary>Capitals without blanks and separators; a hyphen where something stood between two digits.</summary>
    public static string Plain(string name)
    {
        List<char> plain = [];
        for (var i = 0; i < name.Length; i++)
        {
            if (char.IsWhiteSpace(name[i]) || "-_./".Contains(name[i]))
            {
                var next = name.Skip(i).FirstOrDefault(c => !char.IsWhiteSpace(c) && !"-_./".Contains(c));
                if (plain.Count > 0 && char.IsDigit(plain[^1]) && char.IsDigit(next))
                {
                    plain.Add('-');
                }
            }
            else
            {
                plain.Add(char.ToUpperInvariant(name[i]));
            }
        }

        return new string([.. plain]);
    }

    public static bool Same(string? one, string? other) => one is not null && other is not null && Plain(one) == Plain(other);

    /// <summary>One name a slip of the pen away from the other: a third of its letters, and two at most.</summary>
    public static bool Near(string stated, string actual) =>
        Distance(Plain(stated).ToLowerInvariant(), Plain(actual).ToLowerInvariant()) <= Math.Clamp(Plain(stated).Length / 3, 1, 2);

    /// <summary>Letters put in, left out, changed or swapped with their neighbour.</summary>
    private static int Distance(string one, string other)
    {
        Dictionary<(int, int), int> known = [];
        int Between(int i, int j)
        {
            if (i == 0 || j == 0)
            {
                return i + j;
            }

            if (!known.TryGetValue((i, j), out var least))
            {
                least = Math.Min(
                    Math.Min(Between(i - 1, j), Between(i, j - 1)) + 1,
                    Between(i - 1, j - 1) + (one[i - 1] == other[j - 1] ? 0 : 1)
                );
                if (i > 1 && j > 1 && one[i - 1] == other[j - 2] && one[i - 2] == other[j - 1])
                {
                    least = Math.Min(least, Between(i - 2, j - 2) + 1);
                }

                known[(i, j)] = least;
            }

            return least;
        }

        return Between(one.Length, other.Length);
    }
}
