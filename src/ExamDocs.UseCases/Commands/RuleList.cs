using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Core.Rules;
using ExamDocs.Intake.Rules;
using ExamDocs.UseCases.Issuing;

namespace ExamDocs.UseCases.Commands;

/// <summary>The text of one rule, whether it yields a finding or an outcome.</summary>
/// <param name="Code">For example PAR005 or W1.</param>
/// <param name="Severity">error, warning or note; null for an outcome rule.</param>
/// <param name="Outcome">withdraw, undetermined or fit-until; null for a rule that yields a finding.</param>
/// <param name="Title">The rule as a sentence. Of an outcome rule: what is so when it holds.</param>
/// <param name="Why">Why it matters.</param>
/// <param name="Hint">What to type instead; null for an outcome rule.</param>
/// <param name="Source">The law, standard or practice behind it.</param>
public sealed record RuleText(string Code, string? Severity, string? Outcome, string Title, string Why, string? Hint, string Source)
{
    /// <summary>Its severity, or the outcome it leads to.</summary>
    [JsonIgnore]
    public string Weight => Severity ?? Outcome ?? "";

    /// <summary>The same for somebody to read on a screen.</summary>
    [JsonIgnore]
    public Message Said { get; init; } = Message.None;
}

/// <summary>Every rule there is, of every room, in one list.</summary>
public static class RuleList
{
    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The outcome rules in their order, then the rules that yield findings, by code.</summary>
    public static IReadOnlyList<RuleText> All { get; } = In(MessageLanguage.English);

    private static IReadOnlyList<RuleText> In(MessageLanguage language) =>
        [
            .. OutcomeRules.All.Select(r => Text(r, language)),
            .. RuleBook
                .All.Select(r => r.Info)
                .Concat(ReadingRules.All)
                .Concat(PrintRules.All)
                .OrderBy(i => i.Code, StringComparer.Ordinal)
                .Select(r => Text(r, language)),
        ];

    /// <summary>The same, with the ids that the user added where a rule lists those that are known.</summary>
    public static IReadOnlyList<RuleText> For(KnownRules rules, MessageLanguage? language = null) =>
        ReferenceEquals(rules, KnownRules.BuiltIn)
            ? In(language ?? MessageLanguage.English)
            :
            [
                .. In(language ?? MessageLanguage.English)
                    .Select(r =>
                        r with
                        {
                            Hint = r
                                .Hint?.Replace(
                                    Ids(KnownRules.BuiltIn.Regimes.Select(x => x.Id)),
                                    Ids(rules.Regimes.Select(x => x.Id)),
                                    StringComparison.Ordinal
                                )
                                .Replace(
                                    Ids(KnownRules.BuiltIn.Categories.Select(x => x.Id)),
                                    Ids(rules.Categories.Select(x => x.Id)),
                                    StringComparison.Ordinal
                                ),
                        }
                    ),
            ];

    /// <summary>The rule with this code, in capitals or not; null where there is none.</summary>
    public static RuleText? Find(string code, KnownRules? rules = null, MessageLanguage? language = null) =>
        For(rules ?? KnownRules.BuiltIn, language).FirstOrDefault(r => string.Equals(r.Code, code, StringComparison.OrdinalIgnoreCase));

    /// <summary>An array of rules as JSON, every member spelt out.</summary>
    public static string ToJson(IEnumerable<RuleText> rules) => JsonSerializer.Serialize(rules, Options);

    private static string Ids(IEnumerable<string> ids) => string.Join(", ", ids);

    private static RuleText Text(RuleInfo i, MessageLanguage language) =>
        new(
            i.Code,
            i.Severity.Word(),
            null,
            language.Title(i.Code, i.Title),
            language.Sentence(i.Why),
            i.Hint.In(language),
            language.Source(i.Source)
        )
        {
            Said = i.Severity.Said(),
        };

    private static RuleText Text(OutcomeRuleInfo i, MessageLanguage language) =>
        new(
            i.Code,
            null,
            OutcomeOf(i.Code).Word(),
            language.Title(i.Code, i.Title),
            language.Sentence(i.Why),
            null,
            language.Source(i.Source)
        )
        {
            Said = OutcomeOf(i.Code).Said(),
        };

    private static Outcome OutcomeOf(string code) =>
        code[0] switch
        {
            'W' => Outcome.Withdraw,
            'U' => Outcome.Undetermined,
            'D' => Outcome.FitUntil,
            _ => throw new ArgumentOutOfRangeException(nameof(code), code, "no outcome rule has such a code"),
        };
}
