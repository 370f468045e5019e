using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Templates.Wording;

/// <summary>What is printed, in the language of the document that is being made: see <see cref="Language.Current"/>.</summary>
public static class Phrases
{
    public static CommonPhrases Common => Language.Current.Words.Common;

    public static LawAndSourcesPhrases LawAndSources => Language.Current.Words.LawAndSources;

    public static ReportPhrases Report => Language.Current.Words.Report;

    public static NoticePhrases Notice => Language.Current.Words.Notice;

    public static CertificatePhrases Certificate => Language.Current.Words.Certificate;

    public static LabelPhrases Label => Language.Current.Words.Label;

    /// <summary>What a rule, the ledger or a measurement says.</summary>
    public static string Say(Sentence said) => said.In(Language.Current.Words.Sentences);

    /// <summary>The answer to a criterion.</summary>
    public static string State(ObservedState state) => Language.Current.Words.Sentences.Words.State(state);

    /// <summary>Where something comes from.</summary>
    public static string Source(string source) => Language.Current.Words.Terms.Source(source);

    /// <summary>A text of a regime's data; of one that the user added, as it is.</summary>
    public static string Text(string text) => Language.Current.Words.Terms.Text(text);

    /// <summary>Name of a category; where it is none of the catalogue's, what was typed.</summary>
    public static string? Category(Category? category, string? typed) =>
        category is null ? typed : Language.Current.Words.Terms.Category(category);

    /// <summary>What is asked of a criterion.</summary>
    public static string Question(Criterion criterion) => Language.Current.Words.Terms.Question(criterion.Question);

    public static DueLabelPhrases DueLabel => Language.Current.Words.DueLabel;

    public static AuthorityCopyPhrases AuthorityCopy => Language.Current.Words.AuthorityCopy;

    public static EquipmentRecordPhrases EquipmentRecord => Language.Current.Words.EquipmentRecord;

    public static CheckSheetPhrases CheckSheet => Language.Current.Words.CheckSheet;

    /// <summary>The wording of this regime; one that claims no law where the regime is unknown.</summary>
    public static RegimeWording Regime(Regime? regime) => Language.Current.Words.Regimes.Of(regime);
}
