using System.Text.RegularExpressions;

namespace ExamDocs.Core.Criteria;

/// <summary>
/// Words that show that a thing is of textile, whatever material its author types. Kit of metal needs no time limit and no question
/// about contact with a saw: a textile link must not pass as metal.
/// </summary>
/// <remarks>
/// English, German and French. Only words for the textile itself: questions about metal also name rope or webbing, which runs over it,
/// so those two words show nothing in a question.
/// </remarks>
internal static partial class TextileTerms
{
    /// <summary>The first such word in a name or an id; null where there is none.</summary>
    public static string? InName(string name) => First(Names().Match(name)) ?? InQuestion(name);

    /// <summary>The first such word in a question; null where there is none.</summary>
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
