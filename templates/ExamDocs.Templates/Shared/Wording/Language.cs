using ExamDocs.Core.Sentences;

namespace ExamDocs.Templates.Shared.Wording;

/// <summary>A language that documents are made in.</summary>
public sealed class Language
{
    private static readonly AsyncLocal<Language?> Ambient = new();

    private Language(string tag, Notation notation, Terms terms, SentenceBook sentences) =>
        (Tag, Notation, Terms, Sentences) = (tag, notation, terms, sentences);

    public static Language English { get; } = new("en", Notation.English, Terms.English, SentenceBook.EnglishInPrint);

    public static Language German { get; } = new("de", Notation.German, Terms.German, SentenceBook.German);

    public static Language French { get; } = new("fr", Notation.French, Terms.French, SentenceBook.French);

    /// <summary>
    /// The explicit index: a new language is a line here, a parameter of <see cref="InEachLanguage{T}"/>, and its files of phrases.
    /// </summary>
    public static IReadOnlyList<Language> All { get; } = [English, German, French];

    /// <summary>The language of the document that is being composed and printed; English where none was chosen.</summary>
    public static Language Current => Ambient.Value ?? English;

    /// <summary>As in BCP 47, for example en.</summary>
    public string Tag { get; }

    public Notation Notation { get; }

    /// <summary>What the program's own data hold.</summary>
    public Terms Terms { get; }

    /// <summary>What rules, the case for service and measurements say.</summary>
    public SentenceBook Sentences { get; }

    /// <summary>The language with this tag, exactly as spelt; null where there is none.</summary>
    public static Language? Find(string tag) => All.FirstOrDefault(l => string.Equals(l.Tag, tag, StringComparison.Ordinal));

    /// <summary>
    /// Composes and prints in this language. It holds for what is made inside, also where that waits, and for nothing
    /// beside or after it, so that two documents made at once never mix.
    /// </summary>
    public async Task<T> InAsync<T>(Func<Task<T>> make)
    {
        Ambient.Value = this;
        return await make();
    }

    /// <inheritdoc cref="InAsync{T}" />
    public T In<T>(Func<T> make)
    {
        var before = Ambient.Value;
        Ambient.Value = this;
        try
        {
            return make();
        }
        finally
        {
            Ambient.Value = before;
        }
    }
}
