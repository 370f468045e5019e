using System.Text;

namespace ExamDocs.Workbench.Desk;

/// <summary>Makes a name that any file system takes from the name of a dropped file.</summary>
internal static class SafeName
{
    /// <summary>Bytes in UTF-8: file systems count 255, with the ending and what is added to a name that is taken.</summary>
    private const int Longest = 200;

    /// <summary>What the form for the yard saves with photos.</summary>
    public const string Archive = ".zip";

    /// <summary>The kinds of file that can be brought in.</summary>
    public static IReadOnlyList<string> Kinds { get; } = [".xlsx", ".json", ".csv", ".pdf", Archive];

    public static bool IsOfAKind(string name) => Kinds.Contains(Path.GetExtension(name), StringComparer.OrdinalIgnoreCase);

    public static bool IsArchive(string name) => string.Equals(Path.GetExtension(name), Archive, StringComparison.OrdinalIgnoreCase);

    /// <summary>The last part of the name, with letters, digits and a few signs kept; its ending in small letters.</summary>
    public static string Of(string name)
    {
        var last = name.Split('/', '\\')[^1];
        var ending = Path.GetExtension(last).ToLowerInvariant();
        var (kept, bytes) = (new StringBuilder(), 0);
        foreach (var rune in Path.GetFileNameWithoutExtension(last).Normalize(NormalizationForm.FormC).EnumerateRunes())
        {
            bytes += rune.Utf8SequenceLength;
            if (bytes > Longest)
                break;
            kept.Append(Rune.IsLetterOrDigit(rune) || rune.Value is ' ' or '-' or '_' or '(' or ')' ? rune.ToString() : "_");
        }
        var bare = kept.ToString().Trim(' ', '_');
        // With a sign before it no name is one that a system keeps for itself.
        return (bare.Length is 0 or <= 4 ? $"file {bare}".TrimEnd() : bare)
            + (Kinds.Contains(ending, StringComparer.Ordinal) ? ending : "");
    }
}
