using NodaTime;

namespace ExamDocs.Core.Records;

/// <summary>A name and a postal address, and a telephone number where the record has one.</summary>
public sealed record Party
{
    public string? Name { get; init; }

    public string? Address { get; init; }

    /// <summary>Of the visit's employer alone: whom to ring about an item, on its label.</summary>
    public string? Telephone { get; init; }
}

/// <summary>One examination occasion: for whom, where, when, under which regime.</summary>
public sealed record Visit
{
    public string? Reference { get; init; }

    /// <summary>Identifier of the regime that holds unless an examination names its own, for example gb-loler.</summary>
    public string? Regime { get; init; }

    /// <summary>For whom the examination is made.</summary>
    public Party? Employer { get; init; }

    /// <summary>Where it is made.</summary>
    public Party? Premises { get; init; }

    /// <summary>The owner the kit is hired or leased from, where it is.</summary>
    public Party? HiredFrom { get; init; }

    public Party? EnforcingAuthority { get; init; }

    /// <summary>
    /// Id of the person who examined every item of the visit; only where no examination of the visit names its own. Earlier
    /// examinations in the same record never take it.
    /// </summary>
    public string? Examiner { get; init; }

    /// <summary>Why every item of the visit was examined; only where no examination of the visit states its own.</summary>
    public Basis? Basis { get; init; }

    public LocalDate? ExaminedOn { get; init; }

    /// <summary>Date of the report, which the law keeps apart from the date examined.</summary>
    public LocalDate? ReportedOn { get; init; }
}

/// <summary>Somebody who examines, writes, authenticates, supervises or releases.</summary>
public sealed record Person
{
    public string? Id { get; init; }

    public string? Name { get; init; }

    public string? Address { get; init; }

    public string? Qualifications { get; init; }

    public bool? SelfEmployed { get; init; }

    /// <summary>The person's employer, where not self-employed.</summary>
    public Party? Employer { get; init; }
}
