using ExamDocs.Core.Sentences;

namespace ExamDocs.Templates.Wording;

/// <summary>
/// Everything that is printed in one language. Each part is an abstract class, so that a sentence without its
/// translation does not compile.
/// </summary>
public sealed record Vocabulary
{
    public required CommonPhrases Common { get; init; }

    public required RegimePhrases Regimes { get; init; }

    public required LawAndSourcesPhrases LawAndSources { get; init; }

    public required ReportPhrases Report { get; init; }

    public required NoticePhrases Notice { get; init; }

    public required CertificatePhrases Certificate { get; init; }

    public required LabelPhrases Label { get; init; }

    /// <summary>What rules, ledger and measurements say.</summary>
    public required SentenceBook Sentences { get; init; }

    /// <summary>What the program's own data hold.</summary>
    public required Terms Terms { get; init; }

    public required DueLabelPhrases DueLabel { get; init; }

    public required AuthorityCopyPhrases AuthorityCopy { get; init; }

    public required EquipmentRecordPhrases EquipmentRecord { get; init; }

    public required CheckSheetPhrases CheckSheet { get; init; }
}
