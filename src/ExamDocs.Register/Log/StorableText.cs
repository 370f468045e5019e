using System.Text;

namespace ExamDocs.Register.Log;

/// <summary>Text as every database can keep it and the log can write it.</summary>
internal static class StorableText
{
    /// <summary>Halves of characters, and the character zero, which no server takes, become the sign for what cannot be written.</summary>
    public static string Of(string text)
    {
        // Without either it is written as it is.
        if (!text.Contains('\0', StringComparison.Ordinal) && !text.AsSpan().ContainsAnyInRange('\uD800', '\uDFFF'))
            return text;
        var whole = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
            whole.Append(rune.Value == 0 ? "\uFFFD" : rune.ToString());
        return whole.ToString();
    }
}
