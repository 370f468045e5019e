namespace ExamDocs.Proof.Tests.Histories;

/// <summary>Whether a row must say which item it is.</summary>
internal sealed class Questions(Things things, Holds holds, Quarantines quarantines, IReadOnlyList<Sheet> sheets, Sheet sheet)
{
    public bool IsAsked(Row now) =>
        things
            .All.Where(thing => thing != things.Of(now) && !things.Besides(things.Of(now)).Contains(thing))
            .Any(thing =>
                things.With[thing].Any(then => then.Sheet != sheet && IsConfusable(now, then) && !IsShielded(now, then))
                && (IsDoubled(now, thing) ? IsWithdrawn(thing) : IsTroubled(thing, things.Of(now)))
            );

    private bool IsConfusable(Row now, Row then) => Likeness.IsConfusable(now, then, things.IsBatch(then)) && !things.IsAnswered(now, then);

    /// <summary>
    /// It is the same as an earlier entry, and that one was not itself left without an answer; an entry of that day or since,
    /// of the same owner, is asked about all the same.
    /// </summary>
    private bool IsShielded(Row now, Row then)
    {
        var same = things
            .With[things.Of(now)]
            .Where(row =>
                row.Sheet != sheet
                && row.Day < now.Day
                && row.Said is { Asked: false } said
                && !said.Codes.Any(code => code[0] == 'U' && code != "U0")
            )
            .ToList();
        return same.Count > 0 && !(then.Owner == now.Owner && then.Day >= same.Max(row => row.Day));
    }

    /// <summary>
    /// Things that say of themselves that they were this one formerly, and what this one says that it was. A word of the record
    /// that is looked at tells of another row of it.
    /// </summary>
    private IReadOnlyList<int> Continuing(int thing) =>
        [
            .. things.All.Where(other => things.With[other].All(row => row.Sheet != sheet) && things.Besides(other).Contains(thing)),
            .. things.Besides(thing),
        ];

    /// <summary>One record has both under one id, and is held for it: what is held for that alone says nothing of the other.</summary>
    private bool IsDoubled(Row now, int thing) =>
        things
            .With[thing]
            .Any(then => things.With[things.Of(now)].Any(row => row != now && row.Sheet == then.Sheet && Likeness.Like(row.Id, then.Id)));

    private bool IsWithdrawn(int thing) => holds.Open(thing).Count > 0 || holds.IsDestroyed(thing);

    /// <summary>Something is known against it that is not known of the row's own thing already.</summary>
    private bool IsTroubled(int thing, int own)
    {
        List<int> inherited = [thing, .. things.Besides(thing).Where(other => other != own)];
        return inherited.Exists(other => holds.Open(other).Count > 0 || quarantines.Open(other).Count > 0)
            || holds.IsDestroyed(thing)
            || things.IsLost(inherited, sheet)
            // What continues it adds to what is known against it, and takes nothing away.
            || things
                .Latest(thing, sheets, sheet)
                .Concat(things.Latest(thing, sheets, sheet, Continuing(thing)))
                .Where(row => things.Of(row) != own)
                .Any(row => row.Said!.Outcome == "undetermined" || (row.HasLaterDefect && !holds.IsRepaired(thing, row.Day, null)));
    }
}

/// <summary>Which of several records about a thing count.</summary>
internal static class Counting
{
    /// <summary>A later version of the visit says something of the thing.</summary>
    public static bool IsReplaced(this Things things, Row row, IReadOnlyList<Sheet> sheets) =>
        sheets.Any(sheet => sheet.IsLaterVersionOf(row.Sheet) && sheet.Rows.Any(other => things.Of(other) == things.Of(row)));

    /// <summary>The rows of the latest examination in other records, of those that something was said of.</summary>
    public static IReadOnlyList<Row> Latest(
        this Things things,
        int thing,
        IReadOnlyList<Sheet> sheets,
        Sheet own,
        IReadOnlyList<int>? continuing = null
    )
    {
        var examined = (continuing ?? [])
            .Prepend(thing)
            .SelectMany(one => things.With[one])
            .Where(row => row.Sheet != own && row.Examined && row.Said is not null && !things.IsReplaced(row, sheets))
            .ToList();
        return [.. examined.Where(row => row.Day == examined.Max(other => other.Day))];
    }
}
