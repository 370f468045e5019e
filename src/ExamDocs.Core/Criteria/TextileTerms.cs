using System.Text.RegularExpressions;

namespace ExamDocs.Core.Criteria;

/// <summary>
/// Words that tell that a thing is of textile, whatever material its author types. Kit of metal needs no time limit and is not
/// asked for contact with a saw: a textile link must not pass for it.
/// </summary>
/// <remarks>
/// English, German and French. Only words that are said of the textile itself: metal is asked for burrs where rope or webbing
/// runs over it, so that those two tell nothing within a question.
/// </remarks>
internal static partial class TextileTerms
{
    /// <summary>A word of a name or an id; null where there is none.</summary>
    public static string? InName(string name) => First(Names().Match(name)) ?? InQuestion(name);

    /// <summary>A word of a question; null where there is none.</summary>
    public static string? InQuestion(string question) => First(Conditions().Match(question));

    private static string? First(Match match) => match.Success ? match.Value : null;

    [GeneratedRegex(
        @"\b(?:webbings?|soft|gurtband|bandschlinge\w*|tissu|souple)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant,
        1000
    )]
    private static partial Regex Names();

    [GeneratedRegex(
        @"\b(?:stitch\w*|sewn|sewing|seams?|fib(?:re|er)s?|fray\w*|yarns?|textiles?|splices?|spliced|"
            + @"textil\w*|naht|nähte|vernäh\w*|faser\w*|garn\w*|coutures?|cousu\w*|épissures?)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant,
        1000
    )]
    private static partial Regex Conditions();
}
