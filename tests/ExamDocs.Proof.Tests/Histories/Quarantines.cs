using System.Text.Json;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Histories;

/// <summary>What other records put in quarantine: no correction of a record ends it, a release does.</summary>
internal sealed class Quarantines(Things things, Holds holds, IReadOnlyList<Sheet> sheets, Sheet own)
{
    /// <summary>
    /// The days of a thing's quarantines that nobody has ended. One of a day on which it was withdrawn ends with the withdrawal.
    /// </summary>
    public IReadOnlyList<DateOnly> Open(int thing) =>
        [
            .. things
                .Told(thing, own)
                .SelectMany(row => row.Quarantines())
                .Distinct()
                .Where(day => !WasWithdrawn(thing, day) && !IsReleased(thing, day)),
        ];

    /// <summary>A row is said to be fit while it, or what it was formerly, is in quarantine.</summary>
    public bool Forbid(Row row, IReadOnlyList<int> inherited) =>
        row.Kit.Examination?.Text("conclusion") == "fit" && inherited.SelectMany(Open).Any(day => day <= row.Day);

    private bool WasWithdrawn(int thing, DateOnly day) => holds.Open(thing, day).Any(hold => hold.Day <= day);

    /// <summary>Of the thing, or of what is said to have been it formerly.</summary>
    private bool IsReleased(int thing, DateOnly day) =>
        sheets.Any(sheet =>
            sheet
                .Record.List("releases")
                .Any(release =>
                    release.Day("on") >= day
                    && sheet.Find(release.Text("item")) is { } row
                    && things.Meant(release.Text("item"), sheet).Contains(thing)
                    // What is wrong with a release of the record itself is found there.
                    && (sheet == own || IsSound(release, row, thing, day))
                )
        );

    private bool IsSound(JsonElement release, Row row, int thing, DateOnly day) =>
        release.Day("on") <= row.Day
        && !things.IsTakenBack(row)
        && Holds.IsVouchedFor(release, row.Sheet)
        && (release.Text("document"), release.Day("withdrawnOn")) switch
        {
            (null, null) => true,
            (null, { } on) => on == day || Withdrawals(thing).Any(hold => hold.Day == on),
            ({ } document, var on) => Withdrawals(thing).Any(hold => hold.Row.Said!.Label == document && (on is null || on == hold.Day)),
        };

    private IEnumerable<Hold> Withdrawals(int thing) => things.With[thing].Where(row => row.Said is { Withdrawn: true }).Select(Hold.Of);
}
