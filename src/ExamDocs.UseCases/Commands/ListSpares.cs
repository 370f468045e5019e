using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using ExamDocs.Register;
using ExamDocs.UseCases.Company;
using ExamDocs.UseCases.Recalling;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>What the user asks of the parts of a register.</summary>
/// <param name="Register">The register.</param>
/// <param name="To">The last day, inclusive.</param>
/// <param name="Today">The day on which the register is looked at.</param>
public sealed record SparesRequest(string Register, LocalDate To, LocalDate Today)
{
    /// <summary>Whose kit; null for everybody's.</summary>
    public string? Employer { get; init; }
}

/// <summary>
/// Lists the parts that have to be replaced by a day: those withdrawn and still fitted, those whose service ends by the limits recorded,
/// and those whose diameters are projected to reach the maker's limit. It decides nothing and sets no limit.
/// </summary>
public static class ListSpares
{
    private const string RopeBridge = "rope-bridge";

    /// <exception cref="FileNotFoundException">There is no register at that place.</exception>
    /// <exception cref="Register.Model.RegisterAlteredException">What is stored differs from the log.</exception>
    public static SpareNeeds In(SparesRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        using var register = DocumentRegister.OpenToRead(request.Register, request.Today);
        var items = new ItemsOnRecord(register, request.Today) { WithoutObservations = true };
        var decided = new DecidedToday(register, request.Today);
        var (needs, uncounted) = (new List<SpareNeed>(), 0);
        var asked = Parts(items.Everything()).Where(p => IsAsked(request, p.Part) || IsAsked(request, p.Whole)).ToLookup(p => p.IsNeeded);
        foreach (var (part, whole, _) in asked[true])
        {
            var known = new PartFacts(part, decided);
            if (Reason(part, known, request) is var (by, why))
                needs.Add(Need(part, whole, by, why, whole is null ? null : new PartFacts(whole, decided).Limited?.Limits?.PermittedParts));
            else if (known is { Trend: null } && known.Limited?.EndOfService is null)
                uncounted++;
        }
        var notNeeded = asked[false].Select(p => p.Part).Except(asked[true].Select(p => p.Part)).Count();
        SparesLeftOut[] leftOut =
        [
            new(notNeeded, $"what they are fitted to is out of service"),
            new(uncounted, $"no limit that can be counted and no projected wear is recorded"),
            new(WithoutId(items, request), $"they have no id"),
        ];
        return new(request.To, needs, [.. leftOut.Where(left => left.Parts > 0)]);
    }

    /// <summary>Parts that no visit could decide about, because they have no id.</summary>
    private static int WithoutId(ItemsOnRecord items, SparesRequest request) =>
        items
            .Undecided()
            .Where(u => u.Item is { Id: null, Category: RopeBridge } or { Id: null, FittedTo: not null })
            .Where(u => request.Employer is null || FirmName.Same(u.Record.Visit.Employer?.Name, request.Employer))
            .DistinctBy(u => SweepPlan.RowKey(u.Item, u.Owner), StringComparer.Ordinal)
            .Count();

    /// <summary>
    /// Each part with what it is fitted to; and parts of which nobody knows that, with nothing. A whole that is out of service needs no
    /// part.
    /// </summary>
    private static List<(SweptThing Part, SweptThing? Whole, bool IsNeeded)> Parts(IReadOnlyList<SweptThing> all)
    {
        var (index, fitted) = (new SweptIndex(all), new HashSet<(int Part, int Whole)>());
        foreach (var (at, thing) in all.Index())
        {
            fitted.UnionWith(
                thing
                    .Thing.Known.Parts.SelectMany(p => index.WithId(p.Id, thing.Thing.Owner))
                    .Where(part => part != at)
                    .Select(part => (part, at))
            );
            fitted.UnionWith(index.OfAnotherOwner(thing).Select(whole => (at, whole)));
        }
        var known = fitted.Select(f => f.Part).ToHashSet();
        return
        [
            .. fitted.Select(f => (all[f.Part], (SweptThing?)all[f.Whole], !IsOutOfService(all[f.Whole].Shown))),
            .. all.Index().Where(t => !known.Contains(t.Index) && IsLoose(t.Item, index)).Select(t => (t.Item, (SweptThing?)null, true)),
        ];
    }

    /// <summary>
    /// By itself: what is withdrawn for a part comes back with another part, also where the examiner concluded so on account of it.
    /// </summary>
    private static bool IsOutOfService(FoundItem whole)
    {
        var reasons = whole.History[0].Codes.Where(c => c is ['W', ..]).ToList();
        return whole.Standing is Standing.Withdrawn
            && !(reasons.TrueForAll(c => c is "W6" or "W9" or "W10") && (reasons.Contains("W9") || reasons.TrueForAll(c => c is "W10")));
    }

    /// <summary>A bridge in use, and whatever says that it is fitted to something that nobody knows.</summary>
    private static bool IsLoose(SweptThing thing, SweptIndex index) =>
        thing.Shown
            is { Item: { Category: RopeBridge, NeverUsed: not true, Status: null or ItemStatus.InUse }, Standing: not Standing.Withdrawn }
        || (thing.Thing.Rows[0].Item.FittedTo is { } whole && !index.WithId(whole, thing.Thing.Owner).Any());

    private static bool IsAsked(SparesRequest request, SweptThing? thing) =>
        request.Employer is null || FirmName.Same(thing?.Shown.Employer, request.Employer);

    /// <summary>The earliest day on which it may serve last, and why; null where there is none up to the day asked for.</summary>
    private static (LocalDate By, Message Why)? Reason(SweptThing part, PartFacts known, SparesRequest request)
    {
        var reasons = new List<(LocalDate By, Message Why)>();
        if (part.Shown.Standing is Standing.Withdrawn)
            reasons.Add((request.Today, part.Shown.Why));
        if (known.Limited?.EndOfService is { } end)
            reasons.Add((end, $"its service ends on {end} by the limits recorded"));
        if (part.Thing.Counting.FirstOrDefault(e => e.Outcome.Codes is not ["U0"])?.Outcome.Until is { } until)
            reasons.Add((until, $"it may be used until {until}: a defect has to be remedied by then, or it has to be replaced"));
        if (known.Trend?.Proposed is { } worn)
            reasons.Add((worn, $"its diameters are projected to reach the maker's limit on {worn}: a proposal, which decides nothing"));
        var due = reasons.Where(r => r.By <= request.To).ToList();
        return due.Count == 0 ? null : due.MinBy(r => r.By);
    }

    /// <summary>What is known of a part or a whole, the latest record first: one that leaves out the limits does not end them.</summary>
    private sealed class PartFacts(SweptThing thing, DecidedToday decided)
    {
        private readonly IEnumerable<DeterminedItem> _items = thing.Thing.Rows.Select(decided.Of).OfType<DeterminedItem>();

        public DeterminedItem? Limited => field ??= _items.FirstOrDefault(i => i.Limits is not null || i.EndOfService is not null);

        public DiameterTrend? Trend => field ??= _items.Select(i => i.Trend).FirstOrDefault(t => t is not null);
    }

    private static SpareNeed Need(SweptThing part, SweptThing? whole, LocalDate by, Message why, IReadOnlyList<string>? permitted) =>
        new(
            part.Shown.Id,
            part.Shown.Item.Serial,
            part.Shown.Item.Category,
            whole?.Shown.Id,
            new DuePlace(part.Shown.Employer, part.Shown.Premises),
            by,
            why,
            [.. (permitted ?? []).Where(p => !string.IsNullOrWhiteSpace(p)).Distinct(StringComparer.Ordinal)]
        );
}
