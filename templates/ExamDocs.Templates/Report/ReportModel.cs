using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Regimes;

namespace ExamDocs.Templates.Report;

/// <summary>A report of thorough examination: a schedule of one or more items.</summary>
public sealed class ReportModel
{
    /// <param name="identity">Of kind report.</param>
    /// <param name="visit">The visit the items belong to.</param>
    /// <param name="items">The items reported on, at least one, in the order of the record.</param>
    /// <param name="author">Who makes the report.</param>
    /// <param name="authenticatedBy">Who signs it.</param>
    /// <param name="photos">The photo of an observation, where there is one that can be printed; left out, none are.</param>
    /// <param name="leftOut">Items that could be reported and cannot be printed whole; left out, there are none.</param>
    /// <param name="part">Which of the visit's reports it is; null where the items are in one.</param>
    /// <exception cref="ArgumentException">There is no item, or one whose particulars may not be reported.</exception>
    public ReportModel(
        DocumentIdentity identity,
        DeterminedVisit visit,
        IReadOnlyList<DeterminedItem> items,
        Person author,
        Person authenticatedBy,
        Func<Observation, PhotoPrint?>? photos = null,
        LeftOutItems? leftOut = null,
        ReportPart? part = null
    )
    {
        if (items.Count == 0)
            throw new ArgumentException("a report needs an item", nameof(items));
        if (items.FirstOrDefault(i => !i.MayBeReported) is { } refused)
            throw new ArgumentException(
                $"{refused.Item.Id} may not be reported: it is undetermined or its record has errors",
                nameof(items)
            );
        (Identity, Determined, Author, AuthenticatedBy) = (identity, visit, author, authenticatedBy);
        LeftOut = leftOut ?? LeftOutItems.None;
        Part = part;
        Schedule = new ReportSchedule(
            [.. items.Select(item => new ReportItem(visit, item, photos))],
            isOfOne: items.Count == 1 && LeftOut.Items.Count == 0
        );
        var regimes = items.Select(i => i.RegimeId).Distinct(StringComparer.Ordinal).ToArray();
        Regime = Phrases.Regime(visit.Rules.FindRegime(regimes.Length == 1 ? regimes[0] : visit.Record.Visit.Regime));
        Law = new ReportLawLines(visit, items);
    }

    public DocumentIdentity Identity { get; }

    public DeterminedVisit Determined { get; }

    public Visit Visit => Determined.Record.Visit;

    /// <summary>Blocks and groups, in which each item has its place.</summary>
    public ReportSchedule Schedule { get; }

    /// <summary>In the order printed.</summary>
    public IReadOnlyList<ReportItem> Items => Schedule.Items;

    public Person Author { get; }

    public Person AuthenticatedBy { get; }

    public RegimeWording Regime { get; }

    public ReportLawLines Law { get; }

    /// <summary>The laws under which the items were examined.</summary>
    public IReadOnlyList<Regime> Regimes => [.. Items.SelectMany(i => i.Determined.Regimes).DistinctBy(r => r.Id, StringComparer.Ordinal)];

    /// <summary>Whether a law asks that the report be annexed to a register.</summary>
    public bool IsForRegister => Items.Any(i => i.Asks(LawAsks.Register));

    public LeftOutItems LeftOut { get; }

    public ReportPart? Part { get; }

    public bool IsSchedule => Items.Count > 1 || LeftOut.Items.Count > 0;

    public IEnumerable<ReportItem> NotToBeUsed => Items.Where(i => i.Determined.Outcome == Outcome.Withdraw);

    public IEnumerable<ReportItem> OnlyUntil => Items.Where(i => i.Determined.Outcome == Outcome.FitUntil);

    /// <summary>Items of the visit that may not be reported; a schedule names them, so that nobody takes them for fit.</summary>
    public IReadOnlyList<DeterminedItem> NotReported =>
        IsSchedule ? [.. Determined.Items.Where(i => !i.MayBeReported || LeftOut.Items.Contains(i))] : [];

    public int Count(Outcome outcome) => Items.Count(i => i.Determined.Outcome == outcome);

    /// <summary>The days on which the items were examined, as one phrase.</summary>
    public string ExaminedOn
    {
        get
        {
            var days = Items.Select(i => i.Determined.ExaminedOn).Distinct().Order().ToArray();
            return days.Length == 1 ? Printed.Day(days[0]) : $"{Printed.Day(days[0])} – {Printed.Day(days[^1])}";
        }
    }
}

/// <summary>One of several reports of a visit that has more items than one report takes.</summary>
/// <param name="Number">Which of them, from 1, in the order of the record.</param>
/// <param name="Of">How many there are.</param>
public sealed record ReportPart(int Number, int Of);
