using NodaTime;

namespace ExamDocs.Core.Records;

/// <summary>A withdrawal from before this record, as a store remembers it.</summary>
/// <param name="ItemId">The item withdrawn, by its id in this record.</param>
/// <param name="Document">Number of the document that withdrew it, the one to name it by; null where there is none.</param>
/// <param name="On">The day it was withdrawn.</param>
/// <param name="Codes">Codes of its reasons, for example W1.</param>
/// <param name="NeverReleasable">Only a release because it was recorded in error ends it: saw contact, severe loading, an expired life,
/// destroyed.</param>
public sealed record PastWithdrawal(string ItemId, string? Document, LocalDate On, IReadOnlyList<string> Codes, bool NeverReleasable)
{
    /// <summary>
    /// Ids of the withdrawn parts it depends on (W9), or of the wholes it was not permitted on (W8); empty where not known.
    /// </summary>
    public IReadOnlyList<string> Parts { get; init; } = [];

    /// <summary>Every document that says so, <see cref="Document"/> among them: labels, notices, reports.</summary>
    public IReadOnlyList<string> Documents { get; init; } = [];

    /// <summary>It was withdrawn by another version of this visit's record.</summary>
    public bool IsOfThisVisit { get; init; }

    /// <summary>Whether a document of this number withdrew it.</summary>
    public bool IsNamed(string? number) =>
        number is not null
        && (string.Equals(number, Document, StringComparison.Ordinal) || Documents.Contains(number, StringComparer.Ordinal));
}

/// <summary>
/// An earlier examination as it was recorded. It is never judged again: what was decided on it is a <see cref="PastWithdrawal"/>.
/// </summary>
/// <param name="ItemId">The item examined, by its id in this record.</param>
/// <param name="On">The day examined.</param>
/// <param name="Document">Number of the document that reports it; null where there is none.</param>
/// <param name="Examination">As recorded.</param>
public sealed record PastExamination(string ItemId, LocalDate On, string? Document, Examination Examination)
{
    /// <summary>Remedies that its record holds of the item.</summary>
    public IReadOnlyList<Remedy> Remedies { get; init; } = [];

    /// <summary>Renewals that its record holds of the item's parts.</summary>
    public IReadOnlyList<Renewal> Renewals { get; init; } = [];
}

/// <summary>A release that an earlier record holds, sound in that record.</summary>
/// <param name="ItemId">The item, by its id in this record.</param>
/// <param name="By">Name of the competent person.</param>
/// <param name="Release">As recorded.</param>
public sealed record PastRelease(string ItemId, string? By, Release Release);

/// <summary>
/// That a part was fitted to an item or taken off it, as another record tells; ids as in this record where it has the item.
/// </summary>
/// <param name="Part">Id of the part.</param>
/// <param name="Whole">Id of the item it was fitted to.</param>
/// <param name="On">The day.</param>
/// <param name="Word">What it tells.</param>
public sealed record PastFitting(string Part, string Whole, LocalDate On, FittingWord Word);

/// <summary>What other records tell of a part and an item.</summary>
public enum FittingWord
{
    /// <summary>By all records together it is on it now.</summary>
    StillOn,

    /// <summary>The latest word of the other records was that it is on it.</summary>
    WasOn,

    /// <summary>The latest word of the other records was that a renewal took it off.</summary>
    TakenOff,
}

/// <summary>A part that is on an item of this record and is not itself in it.</summary>
/// <param name="Id">Id as recorded last.</param>
/// <param name="Whole">Id of the item it is on, as in this record.</param>
/// <param name="Outcome">What its latest examination came to, with all that is known since; undetermined where it was never
/// examined.</param>
public sealed record PartElsewhere(string Id, string Whole, Outcome Outcome)
{
    public string? PartNumber { get; init; }

    /// <summary>Last day on which it may be used, inclusive; null where none is set.</summary>
    public LocalDate? Until { get; init; }

    /// <summary>Latest date for its next examination, inclusive; null where none is known.</summary>
    public LocalDate? NextBy { get; init; }

    /// <summary>Number of the document that says so; null where there is none.</summary>
    public string? Document { get; init; }
}

/// <summary>An item that is not in this record and has a part of it on.</summary>
/// <param name="Id">Id as recorded last.</param>
/// <param name="Part">Id of the part, as in this record.</param>
/// <param name="Limits">Its maker's limits, as recorded last, that list the parts permitted.</param>
public sealed record WholeElsewhere(string Id, string Part, IReadOnlyList<MakersLimits> Limits);

/// <summary>An id that this record has no item of, and that is the older id of one.</summary>
/// <param name="Name">The older id, as this record has it.</param>
/// <param name="Id">Id of the item in this record.</param>
public sealed record OtherName(string Name, string Id);

/// <summary>What makes an earlier item one to ask about.</summary>
public enum EarlierState
{
    Withdrawn,
    Destroyed,
    Held,
    LaterDefect,
}

/// <summary>An item of this record may be one that an earlier record has under other particulars, and nobody has said which.</summary>
/// <param name="ItemId">Id in this record.</param>
/// <param name="OtherId">Id of the earlier item.</param>
/// <param name="On">The day on which that was withdrawn, destroyed, held or found defective.</param>
/// <param name="State">Which of these.</param>
public sealed record IdentityQuestion(string ItemId, string OtherId, LocalDate On, EarlierState State)
{
    /// <summary>Number of the document that says so; null where there is none.</summary>
    public string? Document { get; init; }

    /// <summary>The particular that differs, as a member of an item: for example serial; empty where none does.</summary>
    public string Member { get; init; } = "";

    /// <summary>What this record has there, and what the earlier one has.</summary>
    public string? Here { get; init; }

    public string? There { get; init; }

    /// <summary>The earlier item belongs to somebody else: only its id is said.</summary>
    public bool OtherOwner { get; init; }
}

/// <summary>A particular that was written otherwise in the latest earlier record of the same item.</summary>
/// <param name="ItemId">Id in this record.</param>
/// <param name="Member">As a member of an item, for example serial.</param>
/// <param name="Earlier">As written before.</param>
public sealed record Respelling(string ItemId, string Member, string Earlier);

/// <summary>What is wrong with an answer to the question which item this is.</summary>
/// <param name="ItemId">Id in this record.</param>
/// <param name="Path">The answer, below its item: /formerly or /notTheSameAs/0.</param>
/// <param name="Fault">Which of the ways to be wrong.</param>
public sealed record AnswerFault(string ItemId, string Path, AnswerFaultKind Fault);

/// <summary>The ways in which an answer can be wrong.</summary>
public enum AnswerFaultKind
{
    /// <summary>No earlier record has such an item.</summary>
    Unknown,

    /// <summary>It does not say how the two are told apart.</summary>
    NoReason,

    /// <summary>No marking differs, and the other is not in this record.</summary>
    NothingDiffers,

    /// <summary>The document named says nothing of that item.</summary>
    UnknownDocument,
}

/// <summary>The register that was asked for what is known from before.</summary>
/// <param name="Identity">Of the register, made once.</param>
/// <param name="KeptSince">The day it was made.</param>
public sealed record RegisterConsulted(string Identity, LocalDate? KeptSince);

/// <summary>What is known of the items of a record from all others, in any order. Plain data: rules know no store.</summary>
public sealed record History(IReadOnlyList<PastWithdrawal> Withdrawals)
{
    public static History None { get; } = new([]);

    /// <summary>Examinations from before, of any of the items.</summary>
    public IReadOnlyList<PastExamination> Examinations { get; init; } = [];

    /// <summary>Releases of any of the items.</summary>
    public IReadOnlyList<PastRelease> Releases { get; init; } = [];

    /// <summary>Remedies of any of the items; <see cref="Remedy.Item"/> as in this record.</summary>
    public IReadOnlyList<Remedy> Remedies { get; init; } = [];

    /// <summary>Renewals that name any of the items; ids as in this record where it has them.</summary>
    public IReadOnlyList<Renewal> Renewals { get; init; } = [];

    /// <summary>Where the items of this record were fitted, and what was taken off.</summary>
    public IReadOnlyList<PastFitting> Fittings { get; init; } = [];

    public IReadOnlyList<PartElsewhere> Parts { get; init; } = [];

    public IReadOnlyList<WholeElsewhere> Wholes { get; init; } = [];

    public IReadOnlyList<IdentityQuestion> Questions { get; init; } = [];

    public IReadOnlyList<Respelling> Respellings { get; init; } = [];

    public IReadOnlyList<AnswerFault> AnswerFaults { get; init; } = [];

    /// <summary>Ids that this record names and has no item of, and that other records have.</summary>
    public IReadOnlyList<string> Elsewhere { get; init; } = [];

    public IReadOnlyList<OtherName> OtherNames { get; init; } = [];

    /// <summary>Ids that an earlier version of this visit's record has and this one leaves out.</summary>
    public IReadOnlyList<string> LeftOut { get; init; } = [];

    /// <summary>Null where no register was asked.</summary>
    public RegisterConsulted? Asked { get; init; }
}
