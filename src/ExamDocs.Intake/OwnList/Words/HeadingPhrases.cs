namespace ExamDocs.Intake.OwnList.Words;

/// <summary>What headings in English, German and French mean. Common practice, no source.</summary>
internal static class HeadingPhrases
{
    public static PhraseBook<(ListField Field, Sureness Sure)> Book { get; } = Made();

    private static PhraseBook<(ListField Field, Sureness Sure)> Made()
    {
        var book = new PhraseBook<(ListField, Sureness)>();
        foreach (var (field, phrases) in HeadingVocabulary.Certain)
            book.Add((field, Sureness.Yes), phrases.Split(',', StringSplitOptions.TrimEntries));
        foreach (var (field, phrases) in HeadingVocabulary.Likely)
            book.Add((field, Sureness.Likely), phrases.Split(',', StringSplitOptions.TrimEntries));
        return book;
    }
}
