using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using ExamDocs.Core.Identity;

namespace ExamDocs.Core.Recalls;

/// <summary>A serial number as typed, made ready to be compared: in plain letters and digits, without a label before it.</summary>
internal sealed partial class SerialText
{
    private const string Separators = "-/.:()#'";

    private SerialText(string text) => Text = text;

    /// <summary>With its separators, letter case kept: a small l looks like 1, a capital L does not.</summary>
    public string Text { get; }

    /// <summary>
    /// Null where it cannot be read whole: a sign that is neither letter, digit nor separator, a letter of another script, separators
    /// that stand in for signs, two numbers in one, or nothing but letters.
    /// </summary>
    public static SerialText? Read(string? typed)
    {
        if (string.IsNullOrWhiteSpace(typed))
            return null;
        var text = Plain(typed).Trim();
        return text.All(IsKnown) && text.Any(char.IsAsciiDigit) && !StandsInForSigns(text) && !IsTwo(text) ? new SerialText(text) : null;
    }

    /// <summary>As <see cref="Read(string?)"/>, of a number in a notice. With a # behind its first sign it is a pattern: null.</summary>
    public static SerialText? ReadOfNotice(string? typed) => typed?.LastIndexOf('#') > 0 ? null : Read(typed);

    /// <summary>As <see cref="Read(string?)"/>; null also where it has no digit but 0, which somebody may have typed for none.</summary>
    public static SerialText? ReadOfItem(string? typed) =>
        Read(typed) is { } read && read.Text.Any(c => c is >= '1' and <= '9') ? read : null;

    /// <summary>Without "SN", "No." and the like, unless the numbers that it is compared with begin so as well.</summary>
    public SerialText WithoutLabel(IEnumerable<SerialText> named)
    {
        var label = SerialKeys.Label().Match(Text);
        return !label.Success || named.Any(n => SerialKeys.Label().IsMatch(n.Text)) ? this : new SerialText(Text[label.Length..]);
    }

    /// <summary>Without the last characters; null where none would be left.</summary>
    public SerialText? WithoutLast(int characters)
    {
        var (text, left) = (Text, characters);
        while (left > 0 && text.Length > 0)
        {
            left -= char.IsAsciiLetterOrDigit(text[^1]) ? 1 : 0;
            text = text[..^1];
        }
        text = text.TrimEnd([.. Separators, ' ']);
        return text.Length == 0 ? null : new SerialText(text);
    }

    /// <summary>True where it has a small l, which may be a capital I.</summary>
    public bool HasSmallL => Text.Contains('l', StringComparison.Ordinal);

    /// <summary>True where a letter of it could be taken for a digit.</summary>
    public bool HasLookAlike => !string.Equals(Look(false), Look(true), StringComparison.Ordinal);

    /// <summary>In runs of letters and of digits.</summary>
    /// <param name="lookAlike">True to read O as 0, I and l as 1.</param>
    /// <param name="separators">What counts as a separator between digits.</param>
    public IReadOnlyList<SerialRun> Runs(bool lookAlike, DigitSeparators separators)
    {
        var runs = new List<SerialRun>();
        var apart = true;
        foreach (var c in Look(lookAlike))
        {
            if (!char.IsAsciiLetterOrDigit(c))
            {
                apart |= separators is DigitSeparators.All || (separators is DigitSeparators.Signs && c != ' ');
                continue;
            }
            var isDigit = char.IsAsciiDigit(c);
            if (runs.Count > 0 && runs[^1].IsDigits == isDigit && !(isDigit && apart))
                runs[^1] = new SerialRun(runs[^1].Signs + c, isDigit);
            else
                runs.Add(new SerialRun(c.ToString(), isDigit));
            apart = false;
        }
        return runs;
    }

    private string Look(bool lookAlike) =>
        lookAlike ? Text.Replace('l', '1').ToUpperInvariant().Replace('O', '0').Replace('I', '1') : Text.ToUpperInvariant();

    /// <summary>In plain letters, digits, hyphens and blanks, where it is written in other forms of these.</summary>
    public static string Plain(string typed)
    {
        var plain = new StringBuilder(typed.Length);
        foreach (var c in Folded.Whole(typed).Normalize(NormalizationForm.FormKC))
        {
            var kind = char.GetUnicodeCategory(c);
            if (kind is UnicodeCategory.Format)
                continue;
            plain.Append(
                kind is UnicodeCategory.DashPunctuation || c is '\u2212' ? '-'
                : char.IsWhiteSpace(c) ? ' '
                : c
            );
        }
        return plain.ToString();
    }

    private static bool IsKnown(char c) => char.IsAsciiLetterOrDigit(c) || c == ' ' || Separators.Contains(c, StringComparison.Ordinal);

    private static bool StandsInForSigns(string text) => Separators.Contains(text[^1], StringComparison.Ordinal) || Doubled().IsMatch(text);

    private static bool IsTwo(string text) =>
        text.Contains(" / ", StringComparison.Ordinal)
        || text.Split(' ', '/').Count(part => part.Any(char.IsAsciiLetter) && part.Any(char.IsAsciiDigit)) > 1;

    [GeneratedRegex(@"[-/.:()#'] ?[-/.:#']", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Doubled();
}

/// <summary>What counts as a separator between two digits: "1-2" is not "12", unless somebody typed one for the other.</summary>
internal enum DigitSeparators
{
    None,
    Signs,
    All,
}

/// <summary>Letters that stand together, or digits that do.</summary>
internal readonly record struct SerialRun(string Signs, bool IsDigits)
{
    /// <summary>Digits as a number, of any length; letters by the alphabet, asked only of as many letters.</summary>
    public int OrderAgainst(SerialRun other)
    {
        if (!IsDigits)
            return string.CompareOrdinal(Signs, other.Signs);
        var (mine, theirs) = (Signs.TrimStart('0'), other.Signs.TrimStart('0'));
        return mine.Length != theirs.Length ? mine.Length.CompareTo(theirs.Length) : string.CompareOrdinal(mine, theirs);
    }

    /// <summary>True where each letter is the same as the other run's, or an X, which may stand for any letter.</summary>
    public bool MayStandFor(SerialRun other) =>
        !IsDigits && this != other && Signs.Zip(other.Signs).All(pair => pair.First == 'X' || pair.First == pair.Second);

    /// <summary>True where a letter of it may stand for one that nobody could read.</summary>
    public bool HasStandIn => !IsDigits && Signs.Contains('X', StringComparison.Ordinal);

    public bool IsOfOneForm(SerialRun other) => IsDigits == other.IsDigits && (IsDigits || Signs.Length == other.Signs.Length);
}
