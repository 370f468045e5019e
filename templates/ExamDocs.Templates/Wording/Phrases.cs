using ExamDocs.Core.Regimes;

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

    public static DueLabelPhrases DueLabel => Language.Current.Words.DueLabel;

    public static AuthorityCopyPhrases AuthorityCopy => Language.Current.Words.AuthorityCopy;

    public static EquipmentRecordPhrases EquipmentRecord => Language.Current.Words.EquipmentRecord;

    public static CheckSheetPhrases CheckSheet => Language.Current.Words.CheckSheet;

    /// <summary>The wording of this regime; one that claims no law where the regime is unknown.</summary>
    public static RegimeWording Regime(Regime? regime) => Language.Current.Words.Regimes.Of(regime);
}
