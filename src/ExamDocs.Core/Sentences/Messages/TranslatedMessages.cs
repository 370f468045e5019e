using System.Collections.Concurrent;
using System.Reflection;
using System.Text.Json;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Sentences.Messages;

/// <summary>Messages in a language other than English, by a file that has the translation of each under its English.</summary>
public sealed class TranslatedMessages : MessageLanguage
{
    private readonly Lazy<Dictionary<string, string>> _texts;
    private readonly ConcurrentDictionary<string, MessageTemplate?> _templates = new(StringComparer.Ordinal);
    private readonly Notation _notation;
    private readonly Lazy<SentenceBook> _book;

    private TranslatedMessages(string tag, Notation notation, Terms terms, Func<SentenceBook> book) =>
        (Tag, _notation, Terms, _book, _texts) = (tag, notation, terms, new(book), new(() => Read(tag)));

    public static TranslatedMessages German { get; } = new("de", Notation.German, Terms.German, () => SentenceBook.German);

    public static TranslatedMessages French { get; } = new("fr", Notation.French, Terms.French, () => SentenceBook.French);

    /// <summary>Every language that messages can be read in.</summary>
    public static IReadOnlyList<MessageLanguage> AndEnglish { get; } = [English, German, French];

    public override string Tag { get; }

    /// <summary>Names of categories, criteria and rules, and the texts of regimes and sources.</summary>
    public Terms Terms { get; }

    /// <summary>Each English text with its translation.</summary>
    public IReadOnlyDictionary<string, string> Texts => _texts.Value;

    public override MessageTemplate? Translation(string key) =>
        _templates.GetOrAdd(key, k => _texts.Value.TryGetValue(k, out var text) ? MessageTemplate.Parse(text) : null);

    public override string Title(string code, string english) => Terms.Rule(code) ?? Sentence(english);

    public override string Source(string english) => Terms.Source(english);

    public override string Value(object? value) =>
        value switch
        {
            Sentence sentence => sentence.In(_book.Value),
            PartialDate date => _notation.Day(date),
            ProgramText own => Terms.Question(Terms.Text(own.English)),
            EnglishText known => UntranslatedText.Marked(known.Text),
            _ => base.Value(value),
        };

    protected override string Day(LocalDate day) => _notation.Day(day);

    protected override string Number(decimal number) =>
        _notation.Number(decimal.Parse(English.Value(number), System.Globalization.CultureInfo.InvariantCulture));

    private static Dictionary<string, string> Read(string tag)
    {
        using var file = Assembly.GetExecutingAssembly().GetManifestResourceStream($"messages/messages.{tag}.json")
            ?? throw new InvalidOperationException($"there are no messages in {tag}");
        return JsonSerializer.Deserialize<Dictionary<string, string>>(file)!;
    }
}
