namespace ExamDocs.Templates.AuditPack;

/// <summary>What can be missing where somebody has to show everything; the gravest first.</summary>
public enum PackGapKind
{
    /// <summary>The register itself is damaged or altered.</summary>
    RegisterNotSound,

    /// <summary>A record no longer gives the outcome that was decided from it.</summary>
    DecidedOtherwise,

    /// <summary>The register no longer holds a document as it was issued.</summary>
    DocumentMissingOrDiffers,

    /// <summary>Nothing that is issued, current and in date says that it may be used.</summary>
    NoDocumentInDate,

    /// <summary>It may not be used, and no record says that it was put away.</summary>
    NoQuarantineRecord,

    /// <summary>The day by which a defect could become a danger has come.</summary>
    RemedyNotRecorded,

    /// <summary>A document that another replaced lies where people take documents from.</summary>
    ReplacedInCirculation,

    /// <summary>No declaration of conformity, where the law has it kept.</summary>
    DeclarationMissing,

    /// <summary>Nothing shows that an examiner is competent.</summary>
    NoCompetenceEvidence,
}

/// <summary>One thing that is missing.</summary>
/// <param name="Kind">What kind of thing.</param>
/// <param name="About">The item, document, person or record, as people call it.</param>
/// <param name="Words">What is missing, in the language of the pack.</param>
public sealed record PackGap(PackGapKind Kind, string About, string Words)
{
    /// <summary>Stays the same in every language and version.</summary>
    public string Code => CodeOf(Kind);

    public static string CodeOf(PackGapKind kind) =>
        kind switch
        {
            PackGapKind.RegisterNotSound => "register-not-sound",
            PackGapKind.DecidedOtherwise => "decided-otherwise",
            PackGapKind.DocumentMissingOrDiffers => "document-missing-or-differs",
            PackGapKind.NoDocumentInDate => "no-document-in-date",
            PackGapKind.NoQuarantineRecord => "no-quarantine-record",
            PackGapKind.RemedyNotRecorded => "remedy-not-recorded",
            PackGapKind.ReplacedInCirculation => "replaced-in-circulation",
            PackGapKind.DeclarationMissing => "declaration-missing",
            PackGapKind.NoCompetenceEvidence => "no-competence-evidence",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "There is no such gap."),
        };
}
