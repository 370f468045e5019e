namespace ExamDocs.Core.Recalls;

/// <summary>
/// Whether a serial number fits a pattern: <c>*</c> any number of characters, <c>?</c> one, <c>#</c> one digit. Separators do not count,
/// and leading zeros may be missing or added. A pattern with any other sign cannot be read.
/// </summary>
internal static class SerialPattern
{
    /// <summary>A sign, and whether a nought may be missing before it, or in its place.</summary>
    private readonly record struct Sign(char Is, bool BeginsNumber);

    private const string Separators = " -/.:'";

    /// <summary>True where every sign of the pattern says something.</summary>
    public static bool IsReadable(string pattern) =>
        SerialText.Plain(pattern).All(c => char.IsAsciiLetterOrDigit(c) || c is '*' or '?' or '#' || Separators.Contains(c));

    /// <param name="pattern">The pattern.</param>
    /// <param name="typed">The serial number on record.</param>
    /// <param name="checkCharacters">How many characters at the end the pattern or the record may have left out.</param>
    public static RecallVerdict Of(string pattern, string typed, int checkCharacters)
    {
        var wanted = Wanted(SerialText.Plain(pattern).ToUpperInvariant());
        if (wanted.Count == 0 || !IsReadable(pattern) || SerialText.ReadOfItem(typed) is not { } read)
            return RecallVerdict.CannotTell;
        var verdict = Of(pattern, wanted, read);
        if (verdict is not RecallVerdict.NotAffected)
            return verdict;
        // Somebody may have typed two numbers, or one without its check characters.
        var others = read
            .Text.Split(' ')
            .Where(part => part.Length < read.Text.Length)
            .Select(part => (Wanted: wanted, Read: SerialText.ReadOfItem(part)))
            .Append((Wanted: WithoutLast(wanted, checkCharacters), Read: read))
            .Append((Wanted: wanted, Read: checkCharacters > 0 ? read.WithoutLast(checkCharacters) : null));
        return others.Any(o => o.Wanted.Count > 0 && o.Read is { } number && Of(pattern, o.Wanted, number) is RecallVerdict.Affected)
            ? RecallVerdict.CannotTell
            : RecallVerdict.NotAffected;
    }

    private static List<Sign> WithoutLast(List<Sign> wanted, int signs)
    {
        while (signs-- > 0 && wanted is [.., { Is: not '*' }])
            wanted = wanted[..^1];
        return wanted;
    }

    private static RecallVerdict Of(string pattern, List<Sign> wanted, SerialText read)
    {
        // Two numbers may be typed with a stroke between them.
        if (read.Text.Contains('/', StringComparison.Ordinal) && !pattern.Contains('/', StringComparison.Ordinal))
            return RecallVerdict.CannotTell;
        var begins = SerialText.Read(string.Concat(wanted.Select(s => s.Is).TakeWhile(char.IsAsciiLetterOrDigit)) + "1");
        read = read.WithoutLabel(begins is null ? [] : [begins]);
        var asTyped = SerialOrder.Open(Of(wanted, read.Runs(false, DigitSeparators.All)), read.HasSmallL);
        List<Sign> alike = wanted.ConvertAll(s => s with { Is = LookAlike(s.Is) });
        var lookAlike = Of(alike, read.Runs(true, DigitSeparators.All));
        return SerialOrder.Either(asTyped, SerialOrder.Open(lookAlike, !alike.SequenceEqual(wanted)));
    }

    private static List<Sign> Wanted(string pattern)
    {
        var (signs, begins) = (new List<Sign>(), true);
        foreach (var c in pattern)
        {
            if (char.IsAsciiLetterOrDigit(c) || c is '*' or '?' or '#')
            {
                signs.Add(new Sign(c, begins));
                begins &= c is '0' or '?' or '#';
            }
            else
                begins = true;
        }
        return signs;
    }

    private static char LookAlike(char sign) =>
        sign switch
        {
            'O' => '0',
            'I' => '1',
            _ => sign,
        };

    /// <summary>Not affected only where letters stand for letters and digits for digits, and yet they are others.</summary>
    private static RecallVerdict Of(IReadOnlyList<Sign> pattern, IReadOnlyList<SerialRun> runs)
    {
        Sign[] signs = [.. runs.SelectMany(run => run.Signs.Select((c, at) => new Sign(c, run.IsDigits && at == 0)))];
        if (Fits(pattern, signs, (wanted, sign) => wanted == sign))
            return RecallVerdict.Affected;
        return
            Fits(pattern, signs, (wanted, sign) => char.IsAsciiDigit(wanted) == char.IsAsciiDigit(sign))
            // An X may be any letter.
            && !Fits(pattern, signs, (wanted, sign) => wanted == sign || wanted is 'X' || (sign is 'X' && char.IsAsciiLetter(wanted)))
            ? RecallVerdict.NotAffected
            : RecallVerdict.CannotTell;
    }

    private static bool Fits(IReadOnlyList<Sign> pattern, Sign[] signs, Func<char, char, bool> isOne)
    {
        // fits[j]: the part of the pattern that was gone through fits the first j signs.
        var fits = new bool[signs.Length + 1];
        fits[0] = true;
        PassNoughts(signs, fits);
        foreach (var wanted in pattern)
        {
            var next = new bool[signs.Length + 1];
            for (var j = 0; j <= signs.Length; j++)
                next[j] = wanted.Is is '*'
                    ? fits[j] || (j > 0 && next[j - 1])
                    : (j > 0 && fits[j - 1] && Takes(wanted.Is, signs[j - 1].Is, isOne))
                        || (fits[j] && MayMissNought(wanted, signs, j) && Takes(wanted.Is, '0', isOne));
            PassNoughts(signs, next);
            fits = next;
        }
        return fits[signs.Length];
    }

    private static bool Takes(char wanted, char sign, Func<char, char, bool> isOne) =>
        wanted switch
        {
            '?' => true,
            '#' => char.IsAsciiDigit(sign),
            _ => isOne(wanted, sign),
        };

    private static bool MayMissNought(Sign wanted, Sign[] signs, int at) =>
        at < signs.Length && char.IsAsciiDigit(signs[at].Is) && (signs[at].BeginsNumber || wanted.BeginsNumber);

    /// <summary>Passes over noughts at the beginning of a number, all but its last digit.</summary>
    private static void PassNoughts(Sign[] signs, bool[] fits)
    {
        var leads = false;
        for (var j = 0; j + 1 < signs.Length; j++)
        {
            leads = signs[j].Is == '0' && (leads || signs[j].BeginsNumber);
            fits[j + 1] |= leads && fits[j] && char.IsAsciiDigit(signs[j + 1].Is) && !signs[j + 1].BeginsNumber;
        }
    }
}
