namespace ExamDocs.Core.Sentences;

/// <summary>
/// English text without a translation on a page in another language. It is marked: for the eye by brackets, and so that a screen reader
/// can be told the language.
/// </summary>
public static class UntranslatedText
{
    private const string Opening = "[en: ";
    private const char Closing = ']';

    /// <summary>The text in brackets that mark it as English.</summary>
    public static string Marked(string text) => $"{Opening}{text}{Closing}";

    /// <summary>The pieces of a text in their order; each says whether it is such English.</summary>
    public static IEnumerable<(string Text, bool IsEnglish)> Pieces(string text)
    {
        var at = 0;
        while (
            text.IndexOf(Opening, at, StringComparison.Ordinal) is var start and >= 0 && text.IndexOf(Closing, start) is var end and >= 0
        )
        {
            yield return (text[at..start], false);
            yield return (text[start..(end + 1)], true);
            at = end + 1;
        }
        yield return (text[at..], false);
    }
}
