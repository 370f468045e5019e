using System.Text;

namespace ExamDocs.Core.Identity;

/// <summary>Compares names of firms: letter case, marks on letters, blanks, punctuation and the legal form make no difference.</summary>
public static class FirmName
{
    /// <summary>Legal forms as they end a firm's name, in capitals and without points (common practice, no source).</summary>
    private static readonly HashSet<string> LegalForms = new(StringComparer.Ordinal)
    {
        "LTD",
        "LIMITED",
        "PLC",
        "LLP",
        "LP",
        "CIC",
        "CO",
        "COMPANY",
        "INC",
        "INCORPORATED",
        "LLC",
        "CORP",
        "CORPORATION",
        "CYF",
        "GMBH",
        "UG",
        "AG",
        "KG",
        "OHG",
        "GBR",
        "EK",
        "EV",
        "EG",
        "SE",
        "MBH",
        "KGAA",
        "HAFTUNGSBESCHRANKT",
        "SARL",
        "SAS",
        "SASU",
        "SA",
        "EURL",
        "SNC",
        "SCOP",
        "SCI",
        "EI",
        "BV",
        "NV",
        "SL",
        "SRL",
        "SPA",
        "AB",
        "APS",
        "AS",
        "OY",
        "PTY",
    };

    private static readonly HashSet<string> Joining = new(StringComparer.Ordinal) { "AND", "UND", "ET" };

    private static readonly FoldedLately<string> Lately = new(name => string.Concat(Words(name)));

    /// <summary>The part of a name that counts, for comparing; empty where no name is given.</summary>
    public static string Fold(string? name) => name is null ? "" : Lately.Of(name);

    /// <summary>The words of a name that count, in capitals.</summary>
    internal static IEnumerable<string> Words(string? name)
    {
        var words = AllWords(name);
        var last = words.Count;
        while (last > 1 && (LegalForms.Contains(words[last - 1]) || Joining.Contains(words[last - 1])))
            last--;
        return words.Take(last).Where(w => !Joining.Contains(w));
    }

    /// <summary>True where both are given and are one name.</summary>
    public static bool Same(string? one, string? other) =>
        Fold(one) is { Length: > 0 } folded && string.Equals(folded, Fold(other), StringComparison.Ordinal);

    /// <summary>True where they are one name, or one of them is not given.</summary>
    public static bool MayBeSame(string? one, string? other) =>
        Fold(one) is not { Length: > 0 } a || Fold(other) is not { Length: > 0 } b || string.Equals(a, b, StringComparison.Ordinal);

    /// <summary>
    /// Every word of a text, in capitals; points and apostrophes within a word are dropped, so that "G.m.b.H." is one word.
    /// </summary>
    public static IReadOnlyList<string> AllWords(string? name)
    {
        var (words, word) = (new List<string>(), new StringBuilder());
        foreach (var c in Folded.Apart(name ?? "").ToUpperInvariant().Append(' '))
        {
            if (char.IsLetterOrDigit(c))
                word.Append(c);
            else if (!LookAlike.IsMark(char.GetUnicodeCategory(c)) && c is not ('.' or '\'' or '\u2019') && word.Length > 0)
            {
                words.Add(word.ToString());
                word.Clear();
            }
        }
        return words;
    }
}
