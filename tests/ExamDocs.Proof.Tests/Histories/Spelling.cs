using System.Text;
using System.Text.RegularExpressions;

namespace ExamDocs.Proof.Tests.Histories;

/// <summary>
/// A marking as the second evaluator compares it: runs of letters and runs of digits, and what stands between two of
/// them. Written apart from the programme's folding.
/// </summary>
public sealed class Spelling
{
    private static readonly Regex Pieces = new(@"\p{L}+|\p{Nd}+", RegexOptions.CultureInvariant);

    private static readonly HashSet<string> LegalForms =
    [
        "ltd",
        "limited",
        "plc",
        "llp",
        "gmbh",
        "ag",
        "kg",
        "sarl",
        "sas",
        "sa",
        "inc",
        "llc",
        "co",
        "company",
        "cyf",
        "cic",
    ];

    private readonly string[] _readings;

    private Spelling(string[] readings) => _readings = readings;

    /// <summary>Null for a text without a letter or a digit.</summary>
    public static Spelling? Of(string? text)
    {
        var plain = text?.Normalize(NormalizationForm.FormKC) ?? "";
        string[] readings =
        [
            Reading(plain, gapsPart: false),
            Reading(plain, gapsPart: true),
            .. new[] { plain, InPlainLetters(plain) }
                .SelectMany(ReadingsOfSmallL)
                .SelectMany(typed => new[] { typed, WithoutSignsBesideLetters(typed) })
                .SelectMany(typed => new[] { false, true }.Select(part => "0" + Reading(AsDigits(typed), part))),
        ];
        return readings[0].Length == 0 ? null : new Spelling([.. readings.Distinct()]);
    }

    /// <summary>A serial number: words for one before it may be there or not.</summary>
    public static Spelling? OfSerial(string? text) =>
        text is not null
        && Regex.Match(text, @"^\s*(s ?/?\.? ?n|serial( no)?)[ .:/-]*", RegexOptions.IgnoreCase) is { Length: > 0 } words
        && Of(text[words.Length..]) is { } bare
            ? new Spelling([.. bare._readings, .. Of(text)!._readings])
            : Of(text);

    private static string InPlainLetters(string text) =>
        new[] { ("ä", "ae"), ("ö", "oe"), ("ü", "ue"), ("ø", "oe"), ("å", "aa"), ("þ", "th") }.Aggregate(text, (typed, letter) =>
            typed.Replace(letter.Item1, letter.Item2, StringComparison.InvariantCultureIgnoreCase)
        );

    /// <summary>Each small l as it is, a capital one in small letters, and as the digit that it looks like.</summary>
    private static IEnumerable<string> ReadingsOfSmallL(string text)
    {
        var at = text.IndexOf('l', StringComparison.Ordinal);
        return at < 0
            ? [text]
            : ReadingsOfSmallL(text[(at + 1)..]).SelectMany(rest => new[] { text[..at] + "1" + rest, text[..at] + "L" + rest });
    }

    private static string WithoutSignsBesideLetters(string text) =>
        Regex.Replace(text, @"(?<!\p{Nd})[^\p{L}\p{Nd}]+|[^\p{L}\p{Nd}]+(?!\p{Nd})", "");

    public bool IsLike(Spelling other) => _readings.Any(reading => other._readings.Contains(reading));

    /// <summary>A firm's name without case, signs and legal form; null where there is none.</summary>
    public static string? Firm(string? name)
    {
        var words = Regex
            .Matches((name ?? "").Replace(".", "", StringComparison.Ordinal).ToLowerInvariant(), @"[\p{L}\p{Nd}]+")
            .Select(word => word.Value)
            .Where(word => word != "and")
            .ToList();
        while (words.Count > 1 && LegalForms.Contains(words[^1]))
        {
            words.RemoveAt(words.Count - 1);
        }

        return words.Count == 0 ? null : string.Concat(words);
    }

    private static string AsDigits(string text) =>
        string.Concat(
            text.Select(c =>
                c is 'O' or 'o' ? '0'
                : c is 'I' or 'i' ? '1'
                : c
            )
        );

    /// <param name="text">As typed.</param>
    /// <param name="gapsPart">A blank parts two numbers as a hyphen does; else they are one number.</param>
    private static string Reading(string text, bool gapsPart)
    {
        var joined = gapsPart ? text : Regex.Replace(text, @"(?<=\p{Nd})\s+(?=\p{Nd})", "");
        StringBuilder reading = new();
        var wasNumber = false;
        foreach (Match piece in Pieces.Matches(joined))
        {
            var isNumber = char.IsDigit(piece.Value[0]);
            reading.Append(wasNumber && isNumber ? "/" : "").Append(isNumber ? Number(piece.Value) : piece.Value.ToLowerInvariant());
            wasNumber = isNumber;
        }

        return reading.ToString();
    }

    private static string Number(string digits) => digits.TrimStart('0') is { Length: > 0 } number ? number : "0";
}
