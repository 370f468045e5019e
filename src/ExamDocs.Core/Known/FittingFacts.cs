using NodaTime;

namespace ExamDocs.Core.Known;

/// <summary>A part was put on a whole or taken off it.</summary>
/// <param name="Part">The part, as that record has it.</param>
/// <param name="Whole">The whole, as that record has it.</param>
/// <param name="On">The day.</param>
/// <param name="Kind">Facts of one day are sorted by it: first what a row says, then what a renewal took off, then what one fitted.</param>
internal sealed record FittingFact(KnownEntry Part, KnownEntry Whole, LocalDate On, FittingKind Kind);

internal enum FittingKind
{
    RowSays,
    TakenOff,
    Fitted,
}

/// <summary>Everything that any record says of parts put on a whole or taken off it.</summary>
internal sealed class FittingFacts
{
    private readonly ILookup<KnownEntry, FittingFact> _ofPart;
    private readonly ILookup<KnownEntry, FittingFact> _ofWhole;

    public FittingFacts(KnownItems items)
    {
        var facts = items
            .Past.Concat(items.Current)
            .GroupBy(e => e.Visit, ReferenceEqualityComparer.Instance)
            .SelectMany(visit => FactsOf([.. visit]))
            // That a part came off counts only while no later version of the record leaves it out.
            .Where(f => f.Kind is not FittingKind.TakenOff || !(items.IsReplaced(f.Whole) || items.IsReplaced(f.Part)))
            .ToList();
        _ofPart = facts.ToLookup(f => f.Part);
        _ofWhole = facts.ToLookup(f => f.Whole);
    }

    /// <summary>What the part's own record says of it.</summary>
    public IEnumerable<FittingFact> OfPart(KnownEntry part) => _ofPart[part];

    /// <summary>Entries of parts that were ever on a whole.</summary>
    /// <param name="whole">All entries of the whole.</param>
    public IEnumerable<KnownEntry> EverOn(IEnumerable<KnownEntry> whole) =>
        whole.SelectMany(e => _ofWhole[e]).Select(f => f.Part).Distinct();

    /// <summary>Entries of parts that were taken off a whole.</summary>
    /// <param name="whole">All entries of the whole.</param>
    public IEnumerable<KnownEntry> TakenOff(IEnumerable<KnownEntry> whole) =>
        whole.SelectMany(e => _ofWhole[e]).Where(f => f.Kind is FittingKind.TakenOff).Select(f => f.Part).Distinct();

    private static IEnumerable<FittingFact> FactsOf(List<KnownEntry> visit)
    {
        var record = visit[0].Visit.Record;
        var byId = visit.ToLookup(e => e.Item.Id!, StringComparer.Ordinal);
        foreach (var part in visit.Where(e => e.Item.FittedTo is not null))
        {
            foreach (var whole in Meant(part.Item.FittedTo!))
                yield return new FittingFact(part, whole, record.Visit.ExaminedOn ?? part.Day, FittingKind.RowSays);
        }
        foreach (var renewal in record.Renewals.Where(r => r.Item is not null))
        {
            foreach (var (id, kind) in new[] { (renewal.RemovedPart, FittingKind.TakenOff), (renewal.FittedPart, FittingKind.Fitted) })
            {
                foreach (
                    var fact in Meant(id ?? "")
                        .SelectMany(part =>
                            Meant(renewal.Item!).Select(whole => new FittingFact(part, whole, renewal.DoneOn ?? part.Day, kind))
                        )
                )
                    yield return fact;
            }
        }

        // An id that no row has letter by letter means the row whose id is spelt alike.
        IEnumerable<KnownEntry> Meant(string id)
        {
            var named = byId[id];
            if (!named.Any(n => n.IsNameAlone))
                return named;
            var rows = visit.Where(e => !e.IsNameAlone && named.Any(n => n.IsNameAlone && n.Particulars.SharesId(e.Particulars))).ToList();
            return rows.Count > 0 ? rows : named;
        }
    }
}
