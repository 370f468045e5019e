using System.Text.RegularExpressions;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Core.Sentences;
using ExamDocs.Templates.Shared.Wording.Common;
using ExamDocs.Templates.Shared.Wording.Regimes;

namespace ExamDocs.Templates.Shared.Wording;

/// <summary>
/// What every document prints, in the language of the document that is being made: see <see cref="Language.Current"/>. A document's own
/// phrases stand in its own folder.
/// </summary>
public static partial class Phrases
{
    public static CommonPhrases Common => CommonPhrases.Current;

    /// <summary>What a rule, the case for service or a measurement says.</summary>
    public static string Say(Sentence said) => said.In(Language.Current.Sentences);

    /// <summary>The answer to a criterion.</summary>
    public static string State(ObservedState state) => Language.Current.Sentences.Words.State(state);

    /// <summary>
    /// Where something comes from. How surely it is known is in the lists of rules and criteria, and for the law on the report's last
    /// page: beside a reason it would read as if the examiner had worked from memory.
    /// </summary>
    public static string Source(string source) => Language.Current.Terms.Source(HowSurely().Replace(source, ""));

    /// <summary>A text of a regime's data; of one that the user added, as it is.</summary>
    public static string Text(string text) => Language.Current.Terms.Text(text);

    /// <summary>Name of a category; where it is none of the catalogue's, what was typed.</summary>
    public static string? Category(Category? category, string? typed) =>
        category is null ? typed : Language.Current.Terms.Category(category);

    /// <summary>What is asked of a criterion.</summary>
    public static string Question(Criterion criterion) => Language.Current.Terms.Question(criterion.Question);

    /// <summary>The wording of this regime; one that claims no law where the regime is unknown.</summary>
    public static RegimeWording Regime(Regime? regime) => RegimePhrases.Current.Of(regime);

    [GeneratedRegex(@" \((?:detail |limit )?(?:from memory|unofficial copy|as quoted elsewhere)\)", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex HowSurely();
}
