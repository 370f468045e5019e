using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using ExamDocs.Core.Sentences.Messages;
using NodaTime;

namespace ExamDocs.Core.Tests.Findings;

public sealed class MessageTests
{
    private static readonly LocalDate Day = new(2026, 3, 1);

    [Fact]
    public void The_words_are_kept_apart_from_the_values()
    {
        Message message = $"there is more than one item '{"BRG-1"}'";
        Assert.Equal("there is more than one item '{0}'", message.Key);
        Assert.Equal(["BRG-1"], message.Values);
        Assert.Equal("there is more than one item 'BRG-1'", message.Text);
    }

    [Theory]
    [InlineData("en", "overdue when examined: it was due by 1 Mar 2026")]
    [InlineData("de", "überfällig geprüft: fällig war die Prüfung bis 1.\u00A0März 2026")]
    [InlineData("fr", "en retard lors de la vérification\u00A0: échéance le 1er\u00A0mars 2026")]
    public void Days_are_written_as_the_language_writes_them(string tag, string said) =>
        Assert.Equal(said, Said($"overdue when examined: it was due by {Day}", tag));

    [Theory]
    [InlineData("en", "the place at 12.5 mm is measured more than once")]
    [InlineData("de", "die Stelle bei 12,5 mm ist mehrmals gemessen")]
    [InlineData("fr", "l’endroit à 12,5 mm est mesuré plus d’une fois")]
    public void Numbers_have_the_decimal_sign_of_the_language_and_no_zeros_at_the_end(string tag, string said) =>
        Assert.Equal(said, Said($"the place at {12.50m} mm is measured more than once", tag));

    [Theory]
    [InlineData("en", "serial it has no id is shared by the, and")]
    [InlineData("de", "dieselbe Seriennummer it has no id haben the, and")]
    public void Texts_are_never_translated(string tag, string said) =>
        Assert.Equal(said, Said($"serial {"it has no id"} is shared by {"the, and"}", tag));

    [Fact]
    public void Braces_that_were_typed_are_no_gaps()
    {
        Message message = $"there is more than one item '{"{0} {1} }"}'";
        Assert.Equal("there is more than one item '{0} {1} }'", message.Text);
        Assert.Equal("es gibt mehr als einen Gegenstand '{0} {1} }'", message.In(TranslatedMessages.German));
    }

    [Fact]
    public void A_message_in_a_message_is_said_in_the_same_language() =>
        Assert.Equal(
            "neu geknüpft von ex1: nur sein Hersteller darf neu knüpfen",
            Said($"re-tied by {"ex1"}: {(Message)$"only its maker may re-tie it"}", "de")
        );

    [Fact]
    public void A_sentence_in_a_message_is_said_in_the_same_language()
    {
        var place = new Sentence(w => w.Words.Place(180));
        Assert.EndsWith(SentenceBook.German.Words.Place(180), Said($"{"x"}: {place}", "de"), StringComparison.Ordinal);
    }

    [Fact]
    public void Months_and_years_are_written_as_typed_in_English_and_in_words_elsewhere()
    {
        var made = new PartialDate(2024, 2);
        Assert.Equal("2024-02 is in the future", Said($"{made} is in the future", "en"));
        Assert.Equal("Februar 2024 liegt in der Zukunft", Said($"{made} is in the future", "de"));
    }

    [Fact]
    public void Two_are_equal_where_they_say_the_same()
    {
        Message one = $"row {4}";
        Message same = $"row {"4"}";
        Message other = $"row {5}";
        Assert.Equal(one, same);
        Assert.Equal(one.GetHashCode(), same.GetHashCode());
        Assert.NotEqual(one, other);
    }

    [Fact]
    public void A_change_of_words_comes_after_the_language()
    {
        Message message = $"warning";
        var loud = message.Reworded((language, text) => $"{text.ToUpperInvariant()} ({language.Tag})");
        Assert.Equal("WARNING (en)", loud.Text);
        Assert.Equal("WARNUNG (de)", loud.In(TranslatedMessages.German));
        Assert.Equal("warning", message.Text);
    }

    [Fact]
    public void What_has_no_translation_is_said_in_English() => Assert.Equal("planted 1", Said($"planted {1}", "de"));

    [Theory]
    [InlineData("'{0}' is {1}", true)]
    [InlineData("{0} {0}", false)]
    [InlineData("{1} {0}", false)]
    [InlineData("{0}", false)]
    [InlineData("{0 {1}", false)]
    public void A_message_is_made_again_only_from_a_key_with_its_gaps(string key, bool isOne) =>
        Assert.Equal(isOne, Message.Again(key, ["a", "b"]) is not null);

    [Fact]
    public void A_message_made_again_says_the_same_in_every_language()
    {
        Message message = $"'{"3/4"}' is struck out, and so are {2} more cells of the row";
        var again = Message.Again(message.Key, ["3/4", 2m])!;
        Assert.All(TranslatedMessages.AndEnglish, language => Assert.Equal(message.In(language), again.In(language)));
    }

    private static string Said(Message message, string tag) =>
        message.In(TranslatedMessages.AndEnglish.First(l => string.Equals(l.Tag, tag, StringComparison.Ordinal)));
}
