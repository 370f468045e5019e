namespace ExamDocs.Core.Sentences;

/// <summary>
/// A statement about an item, with its values, before it is put into a language. Two are equal where their English is equal.
/// </summary>
public sealed class Sentence : IEquatable<Sentence>
{
    private readonly Func<SentenceBook, string> _say;
    private string? _text;

    /// <param name="say">One sentence of the book, with its values.</param>
    public Sentence(Func<SentenceBook, string> say) => _say = say;

    /// <summary>In English, as files have it.</summary>
    public string Text => _text ??= In(SentenceBook.English);

    /// <summary>Text that is the same in every language: codes, names, what the user typed.</summary>
    public static Sentence AsIs(string text) => new(_ => text);

    /// <summary>In the words of this language.</summary>
    public string In(SentenceBook book) => _say(book);

    public bool Equals(Sentence? other) => other is not null && string.Equals(Text, other.Text, StringComparison.Ordinal);

    public override bool Equals(object? obj) => Equals(obj as Sentence);

    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Text);

    public override string ToString() => Text;
}
