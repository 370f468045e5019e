using NodaTime;

namespace ExamDocs.Core.Records;

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
    Quarantined,
    Lost,
}

/// <summary>An item of this record may be one that an earlier record has under other particulars, and nobody has said which.</summary>
/// <param name="ItemId">Id in this record.</param>
/// <param name="OtherId">Id of the earlier item.</param>
/// <param name="On">The day on which that was withdrawn, destroyed, held, put in quarantine, lost or found defective.</param>
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
