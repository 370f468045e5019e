using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using NodaTime;

namespace ExamDocs.Templates.Shared.Wording.Regimes;

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

    /// <summary>The same where the examination was late: what it was due by, and no claim that it was made in time.</summary>
    public required IReadOnlyDictionary<Basis, string> BasesByName { get; init; }

    /// <summary>Why it was examined.</summary>
    /// <param name="basis">As recorded.</param>
    /// <param name="wasDueBy">The day by which it was due, where it was examined later; else null.</param>
    /// <param name="isLastKnown">Whether it is known when it was examined before: else nobody can say that an interval was kept.</param>
    public string BasisOf(Basis? basis, LocalDate? wasDueBy, bool isLastKnown) =>
        (basis, wasDueBy) switch
        {
            (null, _) => Phrases.Common.NotRecorded,
            ({ } known, { } due) => RegimePhrases.Current.Overdue(due, Name(known)),
            (Basis.SixMonth or Basis.TwelveMonth, null) when !isLastKnown => RegimePhrases.Current.LastNotKnown(Name(basis.Value)),
            ({ } known, null) => Bases[known],
        };

    /// <summary>What this law asks of whoever keeps the documents, a sentence each: where they go, how long, what proof.</summary>
    public IReadOnlyList<string> ForTheKeeper { get; init; } = [];

    /// <summary>What has to be known before kit is handed on to another; null where nothing was found.</summary>
    public string? PassingOn { get; init; }

    /// <summary>True where each entry of an equipment record is signed.</summary>
    public bool SignsEachEntry { get; init; }

    private string Name(Basis basis) => BasesByName.GetValueOrDefault(basis) ?? Bases[basis];

    /// <summary>That it is a regime of the user's own; null where it is built in.</summary>
    public string? UsersOwn { get; init; }

    /// <summary>A document's title as it is repeated on every page; it says so where the regime is the user's own.</summary>
    public string RunningTitle(string title) => UsersOwn is null ? title : $"{title} ({UsersOwn})";

    /// <summary>What a first page says below its title, with the user's own regime where it is one.</summary>
    public string Lead(string lead) => UsersOwn is null ? lead : $"{lead} {char.ToUpperInvariant(UsersOwn[0])}{UsersOwn[1..]}: {ShortLaw}.";

    /// <summary>Whether the schedule's paragraph numbers may stand beside the particulars.</summary>
    public bool HasKeys => Keys is not null;
}
