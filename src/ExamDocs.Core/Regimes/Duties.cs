namespace ExamDocs.Core.Regimes;

/// <summary>Somebody the law says must be told or sent a report.</summary>
public enum Recipient
{
    /// <summary>The employer for whom the examination was made.</summary>
    Employer,

    /// <summary>The person from whom the equipment is hired or leased.</summary>
    Owner,

    /// <summary>The Health and Safety Executive.</summary>
    HealthAndSafetyExecutive,

    /// <summary>The enforcing authority for the premises where the equipment was examined.</summary>
    AuthorityForThePremises,
}

/// <summary>Who has to be told of what under regulation 10 of SI 1998/2307 (Great Britain).</summary>
public static class Duties
{
    /// <summary>Who is told forthwith of a defect that is or could become a danger. Source: reg 10(1)(a).</summary>
    public static IReadOnlyList<Recipient> ToldForthwith { get; } = [Recipient.Employer];

    /// <summary>
    /// Who is sent the authenticated report as soon as practicable, without the copy of
    /// <see cref="ImminentRiskCopy"/>. Source: reg 10(1)(b).
    /// </summary>
    public static IReadOnlyList<Recipient> Report(bool hired) =>
        hired ? [Recipient.Employer, Recipient.Owner] : [Recipient.Employer];

    /// <summary>
    /// Who is sent a copy of the report because a defect involves an existing or imminent risk of serious personal
    /// injury; null where none does. Source: reg 10(1)(c) and 10(4).
    /// </summary>
    public static Recipient? ImminentRiskCopy(bool hired, bool imminentRisk) => (imminentRisk, hired) switch
    {
        (false, _) => null,
        (true, true) => Recipient.HealthAndSafetyExecutive,
        (true, false) => Recipient.AuthorityForThePremises,
    };

    /// <summary>The recipient in words, ready to be printed.</summary>
    public static string Words(this Recipient recipient) => recipient switch
    {
        Recipient.Employer => "the employer",
        Recipient.Owner => "the owner from whom it is hired or leased",
        Recipient.HealthAndSafetyExecutive => "the Health and Safety Executive",
        Recipient.AuthorityForThePremises => "the enforcing authority for the premises where it was examined",
        _ => throw new ArgumentOutOfRangeException(nameof(recipient)),
    };
}
