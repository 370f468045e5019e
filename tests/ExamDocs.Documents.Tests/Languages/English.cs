using System.Text.RegularExpressions;

namespace ExamDocs.Documents.Tests.Languages;

/// <summary>Tells English that was left where another language should be: by words that neither German nor French has.</summary>
internal static partial class English
{
    // Names that stay in the language of the law, and of publications.
    private static readonly string[] Names =
    [
        "Lifting Operations and Lifting Equipment Regulations",
        "Work at Height Regulations",
        "Northern Ireland",
        "Health and Safety Executive",
        "thorough examination",
        "How to fill this in",
        "California Title 8",
        "regulations 10",
        "Industrial fall-arrest systems and devices: selection, use and maintenance",
        "Personal fall protection systems, paragraphs (c)(17) and (c)(18)",
        "Managed fall protection program",
        "California construction safety orders",
        "construction safety orders",
        "Code du travail",
        "AS/NZS",
        "how-to-verify.txt",
    ];

    public static IReadOnlyList<string> LeftIn(string text)
    {
        foreach (var name in Names)
            text = text.Replace(name, "", StringComparison.OrdinalIgnoreCase);
        // What is marked as English is seen to be; citations are the law's own.
        text = Marked().Replace(text, "");
        text = Citation().Replace(text, "");
        return [.. Words().Matches(text).Select(m => m.Value)];
    }

    [GeneratedRegex(@"\[en: .*?\]", RegexOptions.Singleline, 1000)]
    private static partial Regex Marked();

    // SI 1998/2307 Schedule 1 paras 8(f) and 11; reg 10(3)(b) and Schedule 1; 8(a) to (c).
    [GeneratedRegex(@"\b(and|to) (?=[\d(]|Schedule )", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Citation();

    [GeneratedRegex(
        @"\b(the|of|and|is|are|with|which|were|has|have|been|not|by|from|that|this|recorded|examined|withdrawn|be|to|for|its|what|"
            + @"until|as|at|could|would|record)\b",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Words();
}
