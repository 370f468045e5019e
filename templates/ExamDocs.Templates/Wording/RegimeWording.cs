using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;

namespace ExamDocs.Templates.Wording;

/// <summary>How one jurisdiction's law words the documents.</summary>
public sealed record RegimeWording
{
    public required string Title { get; init; }

    /// <summary>The law the report is made under, as printed below its title.</summary>
    public required string Law { get; init; }

    /// <summary>The law in a few words, for labels.</summary>
    public required string ShortLaw { get; init; }

    /// <summary>What the examination is called there, for example thorough examination.</summary>
    public required string Examination { get; init; }

    /// <summary>What the numbers beside the particulars mean; null where there are none.</summary>
    public required string? Keys { get; init; }

    /// <summary>The employer's duty once told of a defect that is a danger.</summary>
    public required string DutyNow { get; init; }

    /// <summary>The employer's duty for a defect that could become a danger by a stated time.</summary>
    public required string DutyLater { get; init; }

    /// <summary>Why this notice is given, and by what law.</summary>
    public required string NoticeLead { get; init; }

    /// <summary>Where a copy of the report goes when a risk is imminent, in this law's own words.</summary>
    public IReadOnlyDictionary<Recipient, string> Authorities { get; init; } = new Dictionary<Recipient, string>();

    public required IReadOnlyDictionary<Basis, string> Bases { get; init; }

    /// <summary>Whether the schedule's paragraph numbers may stand beside the particulars.</summary>
    public bool HasKeys => Keys is not null;
}
