using System.Text.Json;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Histories;

/// <summary>Which rows are one thing, as seen from one record.</summary>
internal sealed class Things
{
    private readonly List<Row> _rows;
    private readonly Sheet _own;
    private readonly Dictionary<Row, int> _thing = [];
    private readonly HashSet<Row> _takenBack;

    public Things(IEnumerable<Sheet> known, Sheet own)
    {
        _own = own;
        _rows = [.. known.Append(own).SelectMany(sheet => sheet.Rows)];
        foreach (var row in _rows)
        {
            _thing[row] = _thing.Count;
        }

        var later = _rows.ToLookup(row => row.Sheet);
        _takenBack =
        [
            .. _rows.Where(row => later.Any(sheet => sheet.Key.IsLaterVersionOf(row.Sheet) && sheet.Any(other => IsNow(other, row)))),
        ];
        Join();
        With = _rows.ToLookup(row => _thing[row]);
    }

    /// <summary>The rows of a thing.</summary>
    public ILookup<int, Row> With { get; }

    public IEnumerable<int> All => With.Select(rows => rows.Key);

    public int Of(Row row) => _thing[row];

    /// <summary>
    /// A later version of the visit has a row of this id, whatever it says of it: what ended something in this one, or told two
    /// things apart, is said no more.
    /// </summary>
    public bool IsTakenBack(Row row) => _takenBack.Contains(row);

    /// <summary>The same, by a version that looked at it on this day or later.</summary>
    public bool IsTakenBack(Row row, DateOnly since) =>
        IsTakenBack(row) && _rows.Exists(other => other.Day >= since && other.Sheet.IsLaterVersionOf(row.Sheet) && IsNow(other, row));

    private static bool IsNow(Row other, Row row) => Likeness.Like(other.Id, row.Id) || Likeness.Like(other.Formerly, row.Id);

    /// <summary>One of the items that a record names is a row of it that is taken back.</summary>
    public bool IsTakenBack(Sheet sheet, params string?[] ids) => ids.Any(id => sheet.Find(id) is { } row && IsTakenBack(row));

    /// <summary>
    /// Things that a row of this one was said to be formerly, although something contradicts: it inherits from them, and they
    /// do not from it. Of those only what comes before is meant: the tag may be on another thing since.
    /// </summary>
    public IReadOnlyList<int> Besides(int thing) =>
        [
            .. With[thing]
                .Where(row => row.Formerly is not null)
                .SelectMany(row =>
                    _rows.Where(then =>
                        then.Sheet != row.Sheet
                        && then.Day <= row.Day
                        && Continues(row, then)
                        && Likeness.Contradicts(row, then)
                        && !AreTwo(row, then)
                    )
                )
                .Select(then => _thing[then])
                .Where(other => other != thing && !AreBeside(thing, other))
                .Distinct(),
        ];

    /// <summary>A record has both as rows of its own: then they are two.</summary>
    private bool AreBeside(int one, int other) =>
        With[one].Any(row => row.Sheet.Rows.Any(beside => beside != row && _thing[beside] == other));

    /// <summary>What an id in a record can mean: the record's own row, else every thing of that id and owner.</summary>
    public IReadOnlyList<int> Named(string? id, Sheet sheet)
    {
        if (sheet.Find(id) is { } row)
        {
            return [_thing[row]];
        }

        return Spelling.Of(id) is not { } like
            ? []
            :
            [
                .. _rows
                    .Where(r => Likeness.Like(r.Id, like) && (r.Owner is null || sheet.Owner is null || r.Owner == sheet.Owner))
                    .Select(r => _thing[r])
                    .Distinct(),
            ];
    }

    /// <summary>What a release or renewal can mean: the thing that it names, and what that was said to be formerly.</summary>
    public IReadOnlyList<int> Meant(string? id, Sheet sheet) =>
        [.. Named(id, sheet).SelectMany(thing => Besides(thing).Prepend(thing)).Distinct()];

    /// <summary>Two ids of one record bear this row's serial.</summary>
    public bool IsBatch(Row row) =>
        _rows
            .Where(r => Likeness.Like(r.Serial, row.Serial) && Likeness.MakerIsSame(r, row) && !IsTakenBack(r))
            .GroupBy(r => r.Sheet)
            .Any(sheet => sheet.Any(one => sheet.Any(other => !Likeness.Like(one.Id, other.Id))));

    /// <summary>The row, or an earlier one of the same thing, says with reason that it is not the other.</summary>
    public bool IsAnswered(Row now, Row then) =>
        Says(now, then)
        || _rows.Any(earlier =>
            earlier != now
            && earlier.Sheet != now.Sheet
            && earlier.Answers.Count > 0
            && Likeness.IsSame(now, earlier)
            && Says(earlier, then)
            && IsTold(now, then)
            && Likeness.SharesMarking(now, earlier)
            && !Likeness.SharesMarking(now, then)
        )
        || _rows.Any(earlier =>
            earlier.Sheet != now.Sheet && Likeness.IsSame(now, earlier) && HasBoth(earlier, then) && Says(earlier, then)
        );

    /// <summary>Somebody said of one of them, or of the same thing, that it is not the other.</summary>
    public bool AreTwo(Row one, Row other) => IsAnswered(one, other) || IsAnswered(other, one);

    /// <summary>An answer without a reason, or about something that nothing tells it from.</summary>
    public bool HasBadAnswer(Row row) =>
        row.Answers.Any(answer =>
            answer.Text("because") is null
            || (Meant(answer, row).ToList() is { Count: > 0 } meant && !meant.Exists(then => IsTold(row, then)))
        );

    /// <summary>It refers to an earlier item that no record knows.</summary>
    public bool NamesNothing(Row row) =>
        (row.Formerly is { } old && !_rows.Exists(r => r.Sheet != row.Sheet && Likeness.Like(r.Id, old)))
        || row.Answers.Any(answer => !Meant(answer, row).Any());

    /// <summary>Some record has the thing twice, or another thing under its id.</summary>
    public bool IsDoubled(int thing) =>
        With[thing].Any(row => row.Sheet.Rows.Any(other => other != row && Likeness.Like(other.Id, row.Id)));

    private void Join()
    {
        for (var i = 0; i < _rows.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                var (a, b) = (_rows[i], _rows[j]);
                if (
                    (a.Sheet != b.Sheet || Likeness.Like(a.Id, b.Id))
                    && _thing[a] != _thing[b]
                    && (
                        ((Continues(a, b) || Continues(b, a)) && !Likeness.Contradicts(a, b))
                        || (Likeness.IsSame(a, b) && (a.Sheet == b.Sheet || !AreTwo(a, b)))
                    )
                )
                {
                    Join(_thing[a], _thing[b]);
                }
            }
        }
    }

    private void Join(int one, int other)
    {
        foreach (var row in _rows.Where(row => _thing[row] == other))
        {
            _thing[row] = one;
        }
    }

    private static bool Continues(Row now, Row then) =>
        Likeness.Like(now.Formerly, then.Id) && (Likeness.OwnerAgrees(now, then) || !Likeness.Contradicts(now, then));

    private bool Says(Row row, Row then) =>
        !IsTakenBack(row)
        && row.Answers.Any(answer =>
            answer.Text("because") is not null && Likeness.Like(Spelling.Of(answer.Text("id")), then.Id) && IsTold(row, then)
        );

    private bool IsTold(Row row, Row then) => Likeness.MarkingDiffers(row, then) || HasBoth(row, then);

    private static bool HasBoth(Row row, Row then) =>
        row.Sheet.Rows.Any(other =>
            other != row
            && !Likeness.Like(other.Id, row.Id)
            && then.Sheet != row.Sheet
            && (Likeness.IsSame(other, then) || Continues(other, then) || Continues(then, other))
        );

    private IEnumerable<Row> Meant(JsonElement answer, Row row) =>
        _rows.Where(r => r.Sheet != row.Sheet && Likeness.Like(Spelling.Of(answer.Text("id")), r.Id));
}
