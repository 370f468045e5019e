using NodaTime;

namespace ExamDocs.Templates.DuePlan;

/// <summary>What falls due in a register. A page beside documents: it has no number, and no register knows it.</summary>
/// <param name="plan">What is printed.</param>
/// <param name="letterhead">The issuer's; null for none.</param>
/// <param name="softwareVersion">Version of the software that made it.</param>
public sealed class DuePlanModel(PlannedDays plan, Letterhead? letterhead, string softwareVersion)
{
    public PlannedDays Plan { get; } = plan;

    public Letterhead? Letterhead { get; } = letterhead;

    public string SoftwareVersion { get; } = softwareVersion;
}

/// <summary>The same for one employer, as a letter.</summary>
/// <inheritdoc cref="DuePlanModel"/>
public sealed class DueLetterModel(PlannedDays plan, Letterhead? letterhead, string softwareVersion)
{
    public PlannedDays Plan { get; } = plan;

    public Letterhead? Letterhead { get; } = letterhead;

    public string SoftwareVersion { get; } = softwareVersion;
}

/// <summary>What falls due from a day to a day, both inclusive.</summary>
/// <param name="From">The first day.</param>
/// <param name="To">The last day.</param>
/// <param name="AsOf">The day on which the register was looked at.</param>
/// <param name="Employer">Whose kit; null for everybody's, and for kit of an employer that is not recorded.</param>
public sealed record PlannedDays(LocalDate From, LocalDate To, LocalDate AsOf, string? Employer)
{
    /// <summary>What may be used today, by employer, premises, category and day; each with its day.</summary>
    public required IReadOnlyList<PlannedItem> Due { get; init; }

    /// <summary>What may not be used today, in the same order, each with the reason.</summary>
    public required IReadOnlyList<PlannedItem> Apart { get; init; }

    /// <summary>The earliest first.</summary>
    public IReadOnlyList<PlannedVisit> Visits { get; init; } = [];
}

/// <param name="Employer">As typed; null where not recorded.</param>
/// <param name="Premises">Their name, else their address; null where not recorded.</param>
public sealed record PlannedPlace(string? Employer, string? Premises);

/// <param name="At">Whose kit, and where.</param>
/// <param name="Category">Id of the category; null where not recorded.</param>
/// <param name="Id">Its id.</param>
/// <param name="Serial">As typed; null where not recorded.</param>
/// <param name="NextBy">Latest date for the next thorough examination, inclusive; null for none.</param>
/// <param name="FallsDue">The day by which it has to be examined to stay in use, inclusive; null where there is none.</param>
/// <param name="Why">Why it may not be used, or what else is to be known of it, in the language of the page; null for nothing.</param>
public sealed record PlannedItem(
    PlannedPlace At,
    string? Category,
    string Id,
    string? Serial,
    LocalDate? NextBy,
    LocalDate? FallsDue,
    string? Why
);

/// <param name="By">The last day for it, inclusive.</param>
/// <param name="At">Where.</param>
/// <param name="Items">Ids of its items.</param>
/// <param name="Minutes">How long it takes by the user's figures; 0 where there are none.</param>
/// <param name="WithoutFigure">Ids of the categories for which there is no figure.</param>
public sealed record PlannedVisit(
    LocalDate By,
    PlannedPlace At,
    IReadOnlyList<string> Items,
    int Minutes,
    IReadOnlyList<string?> WithoutFigure
);
