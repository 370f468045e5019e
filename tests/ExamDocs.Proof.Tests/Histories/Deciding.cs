using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Histories;

/// <summary>Decides one record, knowing others.</summary>
internal sealed class Deciding
{
    private readonly Sheet _own;
    private readonly IReadOnlyList<Sheet> _sheets;
    private readonly Things _things;
    private readonly Holds _holds;
    private readonly Quarantines _quarantines;
    private readonly Questions _questions;
    private readonly Fitted _fitted;
    private readonly Dictionary<Row, Judged> _found = [];

    public Deciding(IReadOnlyList<Sheet> known, Sheet own)
    {
        (_own, _sheets, _things) = (own, [.. known, own], new Things(known, own));
        _holds = new Holds(_things, _sheets, own);
        _quarantines = new Quarantines(_things, _holds, _sheets, own);
        _questions = new Questions(_things, _holds, _quarantines, _sheets, own);
        _fitted = new Fitted(_things, _sheets);
    }

    public IReadOnlyList<Said> All()
    {
        foreach (var row in _own.Rows)
        {
            _found[row] = OfItself(row);
        }

        foreach (var kit in Renewing.InError([.. _own.Rows.Select(r => r.Kit)], _own.Stripped))
        {
            _found[_own.Rows[kit.Position]].Codes.Add("U3");
        }

        foreach (var row in _own.Rows.Where(row => row.FittedTo is not null))
        {
            PlaceOf(row);
        }

        foreach (var row in _own.Rows)
        {
            WithParts(row);
        }

        return [.. _own.Rows.Select(row => _found[row].ToSaid(row))];
    }

    private Judged OfItself(Row row)
    {
        var thing = _things.Of(row);
        Judged found = new()
        {
            Codes = [.. row.Own],
            Unsure = _things.NamesNothing(row) || _holds.HasIdleRelease(row) || _things.IsDoubled(thing),
        };
        IReadOnlyList<int> inherited = [thing, .. _things.Besides(thing)];
        var open = inherited
            .SelectMany(t => _holds.Open(t, row.Examined ? row.Day : null, row.Own.Any(code => code[0] == 'W')))
            // An answer takes nothing away that the serial number says, unless another row of the record is that one.
            .Where(hold =>
                !_things.AreTwo(row, hold.Row)
                || (_things.Of(hold.Row) == thing && !_own.Rows.Any(other => other != row && Likeness.IsSame(other, hold.Row)))
            )
            .Concat(_holds.Typed(row))
            .ToList();
        found.Open.AddRange(open.Select(hold => hold.Day));
        found.Never =
            row.Kit.Examination is { } e && FoundRules.RestsOnWhatIsNeverReleased(e, row.Kit.Kind)
            || row.Own.Overlaps(["W5", "W7"])
            || open.Exists(hold => hold.Never || hold.Codes.Overlaps(["W5", "W7", "W11"]));
        found.IsHeldByVersion = open.Exists(hold => hold.IsVersionOf(_own));
        found.Codes.UnionWith(open.Exists(hold => !hold.IsVersionOf(_own)) ? ["W10"] : []);
        found.Codes.UnionWith(row.Destroyed || inherited.Any(t => _holds.IsDestroyed(t, row)) ? ["W11"] : []);
        found.Asked = _questions.IsAsked(row);
        var isDouble = _own.Rows.Any(other => other != row && Likeness.Like(other.Id, row.Id));
        var isAside = _quarantines.Forbid(row, inherited);
        found.Codes.UnionWith(found.Asked || isDouble || isAside || _things.HasBadAnswer(row) ? ["U3"] : []);
        return found;
    }

    private void PlaceOf(Row row)
    {
        var wholes = _things.Named(row.FittedTo, _own);
        var errs = wholes.Count == 0 || wholes.Any(whole => _fitted.IsPutBack(row, whole));
        foreach (var other in _own.Rows.Where(other => errs && (other == row || wholes.Contains(_things.Of(other)))))
        {
            _found[other].Codes.Add("U3");
        }
    }

    private void WithParts(Row row)
    {
        var found = _found[row];
        if (found.IsDone)
        {
            return;
        }

        found.IsDone = true;
        var (thing, day) = (_things.Of(row), row.LastDay);
        NotPermitted(row, found, day);
        List<PartState> parts = [.. InRecord(row, thing, day), .. Elsewhere(thing, day).Select(part => StateOf(part, row, [thing]))];
        found.BadParts.AddRange(parts.Where(part => part.IsBad).Select(part => part.Rows));
        found.Codes.UnionWith(
            parts.SelectMany(part =>
                part.IsBad ? ["W9"]
                : part.IsUnsettled ? new[] { "U6" }
                : []
            )
        );
        found.Conclude(row, parts);
    }

    private IEnumerable<PartState> InRecord(Row row, int thing, DateOnly day)
    {
        foreach (var part in _own.Rows.Where(part => part != row && Wholes(part, day).Contains(thing)))
        {
            WithParts(part);
            var found = _found[part];
            yield return new PartState([part], found.Withdrawn, found.Undetermined, found.Until, found.Next, found.Unsure);
        }
    }

    /// <summary>Where it names a whole that nobody knows, its place is not known.</summary>
    private IReadOnlySet<int> Wholes(Row part, DateOnly day) =>
        part.FittedTo is not null && _things.Named(part.FittedTo, _own).Count == 0 && _found[part].Open.Count == 0
            ? new HashSet<int>()
            : _fitted.WholesOf(
                _things.Of(part),
                day,
                [.. _found[part].Open, .. _found[part].Withdrawn ? [part.Day] : Array.Empty<DateOnly>()]
            );

    private IEnumerable<int> Elsewhere(int whole, DateOnly day) =>
        _fitted
            .Parts.Where(part =>
                !_own.Rows.Any(row => _things.Of(row) == part || IsNow(row, part))
                && _fitted.WholesOf(part, day, [.. _holds.Open(part, day).Select(hold => hold.Day)]).Contains(whole)
            )
            .ToList();

    /// <summary>A row of this record was that part formerly, and the part was not withdrawn: the row tells how it is now.</summary>
    private bool IsNow(Row row, int part) =>
        _things.Besides(_things.Of(row)).Contains(part) && _holds.Open(part).Count == 0 && !_holds.IsDestroyed(part);

    /// <summary>A part that this record does not have.</summary>
    private PartState StateOf(int part, Row whole, IReadOnlyList<int> above)
    {
        var rows = _things.With[part].Where(row => row.Said is not null).OrderBy(row => row.Day).ToList();
        var latest = _things.Latest(part, _sheets, _own);
        if (
            _holds.Open(part, whole.Examined ? whole.Day : null).Count > 0
            || _holds.IsDestroyed(part)
            || (rows.Count > 0 && !Renewing.IsPermitted(rows[^1].Kit, whole.Kit))
        )
        {
            return new PartState(rows, true, false, null, null, false);
        }

        List<PartState> below =
        [
            .. Elsewhere(part, whole.LastDay).Where(p => !above.Contains(p)).Select(p => StateOf(p, whole, [.. above, part])),
        ];
        var until = latest.Select(row => row.Said!.Until).Concat(below.Select(p => p.Until)).Min();
        var next = latest.Select(row => row.Said!.Next).Concat(below.Select(p => p.Next)).Min();
        var isUnsettled =
            rows.Count > 0
            && (
                _things.Since(part, latest, _own)
                || latest.Count == 0
                || latest.Any(row => row.Said!.Outcome is "undetermined" or "withdraw")
            );
        return new PartState(
            rows,
            below.Exists(p => p.IsBad),
            isUnsettled || below.Exists(p => p.IsUnsettled) || until < whole.Day || next < whole.Day,
            until,
            next,
            latest.Any(row => row.Said!.Unsure)
        );
    }

    private void NotPermitted(Row row, Judged found, DateOnly day)
    {
        foreach (var whole in Wholes(row, day).Where(whole => _fitted.IsToldBy(_things.Of(row), whole, day)))
        {
            var kit = _own.Rows.FirstOrDefault(other => other != row && _things.Of(other) == whole)?.Kit
                ?? _things
                    .With[whole]
                    .Where(other => other.Sheet != _own && !_things.IsReplaced(other, _sheets))
                    .MaxBy(other => other.Sheet.Day)
                    ?.Kit;
            found.Codes.UnionWith(kit is null || Renewing.IsPermitted(row.Kit, kit) ? [] : ["W8"]);
        }
    }
}
