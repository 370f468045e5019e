using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Histories;

/// <summary>What is fitted to what, by the days of what the records tell.</summary>
internal sealed class Fitted
{
    private readonly ILookup<int, Fact> _facts;
    private readonly Things _things;

    public Fitted(Things things, IReadOnlyList<Sheet> sheets)
    {
        _things = things;
        _facts = sheets.SelectMany(sheet => Said(sheet, sheets).Concat(Done(sheet))).ToLookup(fact => fact.Part);
    }

    /// <summary>The wholes that a part is on as far as a day shows it.</summary>
    /// <param name="part">The part.</param>
    /// <param name="day">The day.</param>
    /// <param name="withdrawnOn">The days of its open withdrawals: it stays where it was then and has been since.</param>
    public IReadOnlySet<int> WholesOf(int part, DateOnly day, IReadOnlyList<DateOnly> withdrawnOn)
    {
        HashSet<int> wholes = [.. Now(part, day)];
        foreach (var then in withdrawnOn)
        {
            wholes.UnionWith(
                Now(part, then)
                    .Concat(_facts[part].Where(f => f.On && f.Day >= then).Select(f => f.Whole))
                    .Where(whole => !IsTakenOff(part, whole, then, day))
            );
        }

        return wholes;
    }

    /// <summary>The row says that it is on a whole which the latest word before took it off.</summary>
    public bool IsPutBack(Row row, int whole)
    {
        var others = _facts[_things.Of(row)]
            .Where(f =>
                f.Day <= row.Sheet.Day
                && !(f.Named is { } named && _things.AreTwo(row, named))
                && (f.Row is null || !IsOwn(f.Row.Sheet, row.Sheet))
            )
            .ToList();
        return others.Count > 0
            && others.Max(f => f.Day) is var last
            && others.Exists(f => f.Day == last && !f.On && f.Whole == whole)
            && !others.Exists(f => f.Day == last && f.On && f.Whole == whole);
    }

    /// <summary>Some record tells of a day up to this one that the part was on the whole.</summary>
    public bool IsToldBy(int part, int whole, DateOnly day) => _facts[part].Any(f => f.On && f.Whole == whole && f.Day <= day);

    public IEnumerable<int> Parts => _facts.Select(facts => facts.Key);

    private static bool IsOwn(Sheet one, Sheet other) => one == other || one.IsVersionOf(other);

    private IEnumerable<int> Now(int part, DateOnly day)
    {
        var facts = _facts[part].ToList();
        var until = facts.Where(f => f.Day <= day).ToList();
        if (until.Count == 0)
        {
            // Nothing was told by that day: what is told since holds, as on a visit split between two days.
            until = facts;
        }

        var last = until.Where(f => f.On).Select(f => (DateOnly?)f.Day).Max();
        return until
            .Where(f => f.On && f.Day == last && !until.Exists(off => !off.On && off.Whole == f.Whole && off.Day >= last))
            .Select(f => f.Whole);
    }

    private bool IsTakenOff(int part, int whole, DateOnly from, DateOnly to)
    {
        var off = _facts[part].Where(f => !f.On && f.Whole == whole && f.Day >= from && f.Day <= to).Select(f => (DateOnly?)f.Day).Max();
        return off is not null && !_facts[part].Any(f => f.On && f.Whole == whole && f.Day > off && f.Day <= to);
    }

    private IEnumerable<Fact> Said(Sheet sheet, IReadOnlyList<Sheet> sheets) =>
        sheet
            .Rows.Where(row => row.FittedTo is not null && !_things.IsReplaced(row, sheets))
            .SelectMany(row => _things.Named(row.FittedTo, sheet).Select(whole => new Fact(_things.Of(row), whole, sheet.Day, true, row)));

    private IEnumerable<Fact> Done(Sheet sheet) =>
        from renewal in sheet.Record.List("renewals")
        where renewal.Day("doneOn") is not null
        from whole in _things.Named(renewal.Text("item"), sheet)
        from name in new[] { "removedPart", "fittedPart" }
        // That a part came off is said no more where the row is taken back; that one came on adds to what has to be good.
        where name == "fittedPart" || !_things.IsTakenBack(sheet, renewal.Text("item"), renewal.Text("removedPart"))
        from part in _things.Named(renewal.Text(name), sheet)
        select new Fact(part, whole, renewal.Day("doneOn")!.Value, name == "fittedPart", null) { Named = sheet.Find(renewal.Text(name)) };

    private sealed record Fact(int Part, int Whole, DateOnly Day, bool On, Row? Row)
    {
        /// <summary>The part's row in the record that tells of a renewal; null where it has none.</summary>
        public Row? Named { get; init; }
    }
}
