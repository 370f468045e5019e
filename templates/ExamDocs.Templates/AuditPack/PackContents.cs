using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using NodaTime;

namespace ExamDocs.Templates.AuditPack;

/// <summary>Whose kit a pack is about, as of which day, and from which register.</summary>
/// <param name="Employer">As typed.</param>
/// <param name="Premises">As typed; null for all.</param>
/// <param name="Items">Ids as typed; empty for all.</param>
/// <param name="AsOf">The day for which it says how things stand.</param>
/// <param name="BuiltOn">The day on which it was built.</param>
/// <param name="Register">Identity of the register.</param>
/// <param name="KeptSince">The day from which on the register has been kept.</param>
public sealed record PackScope(
    string Employer,
    string? Premises,
    IReadOnlyList<string> Items,
    LocalDate AsOf,
    LocalDate BuiltOn,
    string Register,
    LocalDate KeptSince
);

/// <summary>An item of a pack.</summary>
public sealed record PackItem
{
    /// <summary>As the latest record has it.</summary>
    public required Item Item { get; init; }

    public string? Premises { get; init; }

    /// <summary>How it stands, in a word of the pack's language.</summary>
    public required string Standing { get; init; }

    /// <summary>Since when, until when or why.</summary>
    public required string Why { get; init; }

    /// <summary>True where a current document says that it may be used.</summary>
    public required bool IsInService { get; init; }

    /// <summary>The last day on which it may be used by what is issued, inclusive.</summary>
    public LocalDate? UsableThrough { get; init; }

    /// <summary>Latest date for the next thorough examination, inclusive.</summary>
    public LocalDate? NextBy { get; init; }

    /// <summary>Numbers of the documents enclosed about it, the latest first.</summary>
    public IReadOnlyList<string> Documents { get; init; } = [];
}

/// <summary>A document enclosed in a pack.</summary>
public sealed record PackDocument
{
    public required string Number { get; init; }

    /// <summary>A kind of <see cref="DocumentTypes"/>.</summary>
    public required string Kind { get; init; }

    public required bool IsCopy { get; init; }

    /// <summary>Ids of the items it is about, as the document has them.</summary>
    public required IReadOnlyList<string> Items { get; init; }

    public LocalDate? IssuedOn { get; init; }

    public required int Pages { get; init; }

    /// <summary>Lower-case hexadecimal.</summary>
    public required string Sha256 { get; init; }

    /// <summary>Its first page in the reading copy; null where it is not in it.</summary>
    public int? Page { get; init; }

    /// <summary>Where it is in the pack.</summary>
    public string File => $"documents/{Number}.pdf";
}

/// <summary>What a file that the user enclosed is about.</summary>
public enum PackEvidenceKind
{
    /// <summary>An examiner.</summary>
    Competence,

    /// <summary>An item or a model.</summary>
    Equipment,

    /// <summary>Nothing that its name tells.</summary>
    Other,
}

/// <summary>A file that the user enclosed.</summary>
/// <param name="Name">Its name in the pack.</param>
/// <param name="Kind">What it is about.</param>
/// <param name="About">Names of those people, ids of those items or the model that it is about; empty for neither.</param>
/// <param name="Sha256">Lower-case hexadecimal.</param>
/// <param name="Pages">How many pages it has in the reading copy; null where it cannot be put into it.</param>
public sealed record PackEvidence(string Name, PackEvidenceKind Kind, IReadOnlyList<string> About, string Sha256, int? Pages)
{
    /// <summary>Its first page in the reading copy; null where it is not in it.</summary>
    public int? Page { get; init; }

    /// <summary>Where it is in the pack.</summary>
    public string File => $"evidence/{Name}";
}

/// <summary>Somebody who examined what is in a pack.</summary>
/// <param name="Name">As recorded.</param>
/// <param name="Qualifications">As recorded; null where not.</param>
/// <param name="Evidence">Names of the files about this person.</param>
public sealed record PackExaminer(string Name, string? Qualifications, IReadOnlyList<string> Evidence);

/// <summary>How long the reports of a visit have to be kept.</summary>
/// <param name="Reference">Of the visit, as typed.</param>
/// <param name="ReportedOn">The day of its report.</param>
/// <param name="Rules">What the law says, each once; empty where no rule is known.</param>
/// <param name="Until">The last day on which everything has to be kept, inclusive; null where that depends on something still to come, or
/// is not known.</param>
public sealed record PackRetention(string? Reference, LocalDate? ReportedOn, IReadOnlyList<KeepUntil> Rules, LocalDate? Until);

/// <summary>All that a pack holds.</summary>
public sealed record PackContents
{
    public required PackScope Scope { get; init; }

    /// <summary>The gravest first.</summary>
    public required IReadOnlyList<PackGap> Gaps { get; init; }

    /// <summary>By id.</summary>
    public required IReadOnlyList<PackItem> Items { get; init; }

    /// <summary>By kind and number.</summary>
    public required IReadOnlyList<PackDocument> Documents { get; init; }

    public required IReadOnlyList<PackEvidence> Evidence { get; init; }

    public required IReadOnlyList<PackExaminer> Examiners { get; init; }

    public required IReadOnlyList<PackRetention> Retention { get; init; }
}
