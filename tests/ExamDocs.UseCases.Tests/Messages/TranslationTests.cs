using System.Text.RegularExpressions;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Sentences.Messages;
using ExamDocs.UseCases.Commands;

namespace ExamDocs.UseCases.Tests.Messages;

/// <summary>Every message of the program is said in every language, with the same values.</summary>
public sealed partial class TranslationTests
{
    private static readonly Lazy<IReadOnlySet<string>> Keys = new(() =>
        new[] { "Core", "Intake", "Documents", "Register", "UseCases", "Cli" }
            .SelectMany(room => MessagesInCode.In(Path.Combine(AppContext.BaseDirectory, $"ExamDocs.{room}.dll")))
            .Concat(RuleList.All.Select(r => r.Why))
            .Concat(RuleList.All.Where(r => TranslatedMessages.German.Terms.Rule(r.Code) is null).Select(r => r.Title))
            .ToHashSet(StringComparer.Ordinal)
    );

    public static TheoryData<string> Languages { get; } = ["de", "fr"];

    [Fact]
    public void Messages_are_found_in_the_code()
    {
        Assert.Contains("there is more than one item '{0}'", Keys.Value);
        Assert.Contains("'{0}' is struck out, and so are {1} more cells of the row", Keys.Value);
        Assert.Contains("{0} more findings, {1} of them errors", Keys.Value);
        Assert.DoesNotContain(Keys.Value, key => key.Contains("{9}", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Languages))]
    public void Every_message_is_translated(string tag) =>
        Assert.Empty(Missing(Keys.Value, Of(tag).Texts.Keys.ToHashSet(StringComparer.Ordinal)));

    [Fact]
    public void A_message_without_a_translation_is_named() =>
        Assert.Equal(
            ["the rope is {0} mm too short"],
            Missing(["the rope is {0} mm too short", "{0}, {1}", "error"], new HashSet<string>(StringComparer.Ordinal) { "error" })
        );

    [Theory]
    [MemberData(nameof(Languages))]
    public void No_translation_is_of_a_message_that_is_gone(string tag) =>
        Assert.Empty(Of(tag).Texts.Keys.Where(key => key.Any(char.IsLetter) && !Keys.Value.Contains(key)));

    [Theory]
    [MemberData(nameof(Languages))]
    public void A_translation_has_the_values_of_the_English_and_quotes_the_same_ones(string tag) =>
        Assert.Empty(Of(tag).Texts.Where(t => !SameValues(t.Key, t.Value)));

    [Theory]
    [InlineData("'{0}' is {1}", "'{1}' ist {0}")]
    [InlineData("{0} is {1}", "{0} ist")]
    [InlineData("{0} is", "{0} ist {0}")]
    [InlineData("{0} is", "{0 ist")]
    public void Other_values_are_noticed(string english, string translated) => Assert.False(SameValues(english, translated));

    [Theory]
    [MemberData(nameof(Languages))]
    public void Names_and_words_that_are_typed_stay_in_a_translation(string tag) =>
        Assert.Empty(
            from text in Of(tag).Texts
            from Match name in ProgramName().Matches(text.Key)
            where !text.Value.Contains(name.Value, StringComparison.Ordinal)
            select $"{name.Value} in: {text.Value}"
        );

    [Fact]
    public void French_has_its_apostrophe_and_its_spaces() =>
        Assert.Empty(TranslatedMessages.French.Texts.Values.Where(t => StraightApostrophe().IsMatch(t) || MissingSpace().IsMatch(t)));

    [Theory]
    [InlineData("de", "dieselbe Seriennummer QX {0} haben A, B", "QX {0}")]
    [InlineData("fr", "le même numéro de série the item has no id est porté par A, B", "the item has no id")]
    public void What_was_typed_is_never_taken_for_words_of_the_program(string tag, string said, string typed)
    {
        Message message = $"serial {typed} is shared by {"A, B"}";
        Assert.Equal(said, message.In(Of(tag)));
        Assert.Equal($"serial {typed} is shared by A, B", message.Text);
    }

    private static TranslatedMessages Of(string tag) => tag is "de" ? TranslatedMessages.German : TranslatedMessages.French;

    private static IEnumerable<string> Missing(IEnumerable<string> keys, IReadOnlySet<string> translated) =>
        keys.Where(key => Gap().Replace(key, "").Any(char.IsLetter) && !translated.Contains(key)).Order(StringComparer.Ordinal);

    private static bool SameValues(string english, string translated) =>
        MessageTemplate.Parse(english) is { } one
        && MessageTemplate.Parse(translated) is { } other
        && one.Order.Order().SequenceEqual(other.Order.Order())
        && Quoted(english).SequenceEqual(Quoted(translated), StringComparer.Ordinal);

    private static IEnumerable<string> Quoted(string text) => QuotedGap().Matches(text).Select(m => m.Value).Order(StringComparer.Ordinal);

    [GeneratedRegex(@"\{[0-9]+\}", RegexOptions.None, 1000)]
    private static partial Regex Gap();

    [GeneratedRegex(@"'\{[0-9]+\}'", RegexOptions.None, 1000)]
    private static partial Regex QuotedGap();

    /// <summary>Members, options, files, regimes and words of the format: what somebody types or looks for.</summary>
    [GeneratedRegex(
        @"\b[a-z]+([A-Z][a-z]+)+\b|--[a-z]+(-[a-z]+)*|\bgb-[a-z]+|\bexamdocs [a-z]+|\b(twelve-month|six-month|fall-arrest-only|lifts-persons"
            + @"|first-use|recorded-in-error|made-good|in-use)\b|\w+\.(json|csv|xlsx|jpg)",
        RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex ProgramName();

    [GeneratedRegex(@"\p{L}'\p{L}", RegexOptions.None, 1000)]
    private static partial Regex StraightApostrophe();

    [GeneratedRegex(@"[^\u00A0][;!?](\s|$)|[\p{L}}'] :|(?<!\b(defect|clear)|[\u00A0""]):(\s|$)", RegexOptions.None, 1000)]
    private static partial Regex MissingSpace();
}
