namespace ExamDocs.Core.Regimes;

/// <summary>Somebody who must be told or sent a report.</summary>
public enum Recipient
{
    /// <summary>The employer for whom the examination was made, or the keeper of the kit.</summary>
    Employer,

    /// <summary>The person from whom the equipment is hired or leased.</summary>
    Owner,

    /// <summary>The Health and Safety Executive.</summary>
    HealthAndSafetyExecutive,

    /// <summary>The enforcing authority for the premises where the equipment was examined.</summary>
    AuthorityForThePremises,

    /// <summary>The enforcing authority, where it was not confirmed which one that is.</summary>
    EnforcingAuthority,
}

/// <summary>What somebody must be told or sent.</summary>
public enum DutyKind
{
    /// <summary>Told forthwith of a defect that is or could become a danger.</summary>
    TellForthwith,

    /// <summary>Sent the report.</summary>
    SendReport,

    /// <summary>Sent a copy because a defect involves an existing or imminent risk of serious personal injury.</summary>
    CopyAtImminentRisk,

    /// <summary>Has proof of the last examination where the kit is used, where that place changes.</summary>
    KeepProofAtPlaceOfUse,
}

/// <summary>A duty to tell somebody something.</summary>
public sealed record Duty
{
    public required DutyKind What { get; init; }

    public required Recipient Whom { get; init; }

    /// <summary>True only for hired or leased kit, false only for owned kit, null for both.</summary>
    public bool? Hired { get; init; }

    public required string Source { get; init; }

    public required Confidence Confidence { get; init; }

    /// <summary>Codes of the rules that ask for what the duty needs.</summary>
    public IReadOnlyList<string> Checks { get; init; } = [];
}

/// <summary>Recipients in words.</summary>
public static class Recipients
{
    /// <summary>The recipient in words, ready to be printed.</summary>
    public static string Words(this Recipient recipient) =>
        recipient switch
        {
            Recipient.Employer => "the employer",
            Recipient.Owner => "the owner from whom it is hired or leased",
            Recipient.HealthAndSafetyExecutive => "the Health and Safety Executive",
            Recipient.AuthorityForThePremises => "the enforcing authority for the premises where it was examined",
            Recipient.EnforcingAuthority => "the enforcing authority",
            _ => throw new ArgumentOutOfRangeException(nameof(recipient)),
        };
}
