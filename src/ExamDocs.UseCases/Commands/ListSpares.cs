using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using ExamDocs.Register;
using ExamDocs.UseCases.Company;
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
        var all = new ItemsOnRecord(register, request.Today) { WithoutObservations = true }.Everything();
        var decided = new DecidedToday(register, request.Today);
        var (needs, uncounted) = (new List<SpareNeed>(), 0);
        foreach (var (part, whole) in Parts(all).Where(p => IsAsked(request, p.Part)))
        {
            var item = decided.Of(part.Thing.Rows[0]);
            if (Reason(part, item, request) is var (by, why))
                needs.Add(Need(part, whole, by, why, whole is null ? null : decided.Of(whole.Thing.Rows[0])?.Limits?.PermittedParts));
            else if (item is not { EndOfService: not null } and not { Trend: not null })
                uncounted++;
        }
        return new(request.To, needs, uncounted);
    }

    /// <summary>Each part with what it is fitted to; and rope bridges of which no record says that.</summary>
    private static List<(SweptThing Part, SweptThing? Whole)> Parts(IReadOnlyList<SweptThing> all)
    {
        var (index, fitted) = (new SweptIndex(all), new HashSet<(int Part, int Whole)>());
        foreach (var (at, whole) in all.Index())
            fitted.UnionWith(
                whole
                    .Thing.Known.Parts.SelectMany(p => index.WithId(p.Id, whole.Thing.Owner))
                    .Where(part => part != at)
                    .Select(part => (part, at))
            );
        var known = fitted.Select(f => f.Part).ToHashSet();
        return
        [
            // A whole that is out of service needs no part.
            .. fitted.Where(f => !IsOutOfService(all[f.Whole].Shown)).Select(f => (all[f.Part], (SweptThing?)all[f.Whole])),
            .. all.Index().Where(t => !known.Contains(t.Index) && IsLooseBridge(t.Item.Shown)).Select(t => (t.Item, (SweptThing?)null)),
        ];
    }

    /// <summary>By itself: what is withdrawn for a part alone comes back with another part.</summary>
    private static bool IsOutOfService(FoundItem whole) =>
        whole.Standing is Standing.Withdrawn
        && !(
            whole.History[0].Codes.Where(c => c is ['W', ..]).ToList() is { Count: > 0 } reasons
            && reasons.TrueForAll(c => c is "W9" or "W10")
        );

    private static bool IsLooseBridge(FoundItem item) =>
        item is { Item: { Category: RopeBridge, NeverUsed: not true, Status: null or ItemStatus.InUse }, Standing: not Standing.Withdrawn };

    private static bool IsAsked(SparesRequest request, SweptThing part) =>
        request.Employer is null || FirmName.Same(part.Shown.Employer, request.Employer);

    /// <summary>The earliest day on which it may serve last, and why; null where there is none up to the day asked for.</summary>
    private static (LocalDate By, Message Why)? Reason(SweptThing part, DeterminedItem? item, SparesRequest request)
    {
        var reasons = new List<(LocalDate By, Message Why)>();
        if (part.Shown.Standing is Standing.Withdrawn)
            reasons.Add((request.Today, part.Shown.Why));
        if (item?.EndOfService is { } end)
            reasons.Add((end, $"its service ends on {end} by the limits recorded"));
        if (item?.Trend?.Proposed is { } worn)
            reasons.Add((worn, $"its diameters are projected to reach the maker's limit on {worn}: a proposal, which decides nothing"));
        var due = reasons.Where(r => r.By <= request.To).ToList();
        return due.Count == 0 ? null : due.MinBy(r => r.By);
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
            [.. (permitted ?? []).Distinct(StringComparer.Ordinal)]
        );
}
