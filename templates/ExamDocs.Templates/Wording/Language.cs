using ExamDocs.Core.Sentences;

namespace ExamDocs.Templates.Wording;

/// <summary>A language that documents are made in.</summary>
public sealed class Language
{
    private static readonly AsyncLocal<Language?> Ambient = new();

    private readonly Lazy<Vocabulary> _words;

    private Language(string tag, Notation notation, Func<Vocabulary> words) => (Tag, Notation, _words) = (tag, notation, new(words));

    public static Language English { get; } = new("en", Notation.English, () => Wording.English.Words);

    public static Language German { get; } = new("de", Notation.German, () => Wording.German.Words);

    public static Language French { get; } = new("fr", Notation.French, () => Wording.French.Words);

    /// <summary>The explicit index: a new language is its files of words and one line here.</summary>
    public static IReadOnlyList<Language> All { get; } = [English, German, French];

    /// <summary>The language of the document that is being composed and printed; English where none was chosen.</summary>
    public static Language Current => Ambient.Value ?? English;

    /// <summary>As in BCP 47, for example en.</summary>
    public string Tag { get; }

    public Notation Notation { get; }

    public Vocabulary Words => _words.Value;

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
