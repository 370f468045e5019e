using NodaTime;

namespace ExamDocs.Core.Records;

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

    /// <summary>Quarantines of any of the items that no release ended; <see cref="Disposal.Item"/> as in this record.</summary>
    public IReadOnlyList<Disposal> Quarantines { get; init; } = [];

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
