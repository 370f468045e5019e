using System.Text.Json;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Histories;

/// <summary>What was withdrawn, and what ended it.</summary>
internal sealed class Holds(Things things, IReadOnlyList<Sheet> sheets, Sheet own)
{
    private static readonly HashSet<string> MadeGood = ["W1", "W2", "W3", "W4", "W6", "W8", "W9", "W10"];

    private static readonly HashSet<string> ExaminedAgain = ["W2", "W6", "W10"];

    /// <summary>Withdrawals of a thing in other records that nothing has ended.</summary>
    /// <param name="thing">The thing.</param>
    /// <param name="upTo">The day of the examination that a release or a renewal must come before; null for any.</param>
    /// <param name="isOrigin">The record itself withdraws it, which others may only repeat.</param>
    public IReadOnlyList<Hold> Open(int thing, DateOnly? upTo = null, bool isOrigin = false)
    {
        var all = things.With[thing].Where(row => row.Sheet != own && row.Said is { Withdrawn: true }).Select(Hold.Of).ToList();
        // What it was formerly may be what withdrew it: the withdrawal is then that one's, and ends with it.
        var isKnown =
            isOrigin
            || all.Exists(hold => !hold.IsDerived)
            || things
                .Besides(thing)
                .SelectMany(other => things.With[other])
                .Any(row => row.Sheet != own && row.Said is { Withdrawn: true } && (row.Destroyed || Hold.Of(row).Codes.Any(Hold.IsOwn)));
        return [.. all.Where(hold => (!hold.IsDerived || !isKnown) && !IsEnded(hold, thing, upTo))];
    }

    /// <summary>Withdrawals that earlier examinations within the row's own record made, and that nothing has ended.</summary>
    public IEnumerable<Hold> Typed(Row row) =>
        row
            .Kit.Earlier.Select(e => new Hold(
                row,
                e.On,
                FoundRules
                    .Withdrawals(e.Examination, row.Kit.Kind, row.Kit.Limits, e.On)
                    .Concat(LifeRules.ExpiryThen(row.Kit, e.On))
                    .ToHashSet(),
                FoundRules.RestsOnWhatIsNeverReleased(e.Examination, row.Kit.Kind),
                IsTyped: true
            ))
            .Where(hold => hold.Codes.Count > 0 && !IsEnded(hold, things.Of(row), row.Day));

    /// <summary>Another record has it as destroyed, and no release says that this was an error.</summary>
    public bool IsDestroyed(int thing, Row? of = null) =>
        things
            .With[thing]
            .Any(row =>
                row.Sheet != own
                && row.Destroyed
                && !(of is not null && things.AreTwo(of, row))
                && !IsEnded(new Hold(row, row.Day, new HashSet<string> { "W11" }, true), thing, null)
            );

    /// <summary>A repair of the thing on one of these days.</summary>
    public bool IsRepaired(int thing, DateOnly from, DateOnly? to) =>
        sheets.Any(sheet =>
            sheet
                .Record.List("remedies")
                .Concat(sheet.Record.List("renewals"))
                .Any(row =>
                    row.Day("doneOn") >= from
                    && (to is null || row.Day("doneOn") <= to)
                    && !things.IsTakenBack(sheet, row.Text("item"), row.Text("removedPart"))
                    && things.Meant(row.Text("item"), sheet).Contains(thing)
                )
        );

    /// <summary>A release of the row that ends nothing.</summary>
    public bool HasIdleRelease(Row row) =>
        own
            .Record.List("releases")
            .Any(release =>
                things.Named(release.Text("item"), own).Contains(things.Of(row))
                && !things
                    .With[things.Of(row)]
                    .Where(r => r.Sheet != own && r.Said is { Withdrawn: true })
                    .Select(Hold.Of)
                    .Concat(AllTyped(row))
                    .Any(hold => Ends(release, own, hold, things.Of(row)))
            );

    private static IEnumerable<Hold> AllTyped(Row row) =>
        row.Kit.Earlier.Select(e => new Hold(row, e.On, new HashSet<string> { "W6" }, false, IsTyped: true));

    private bool IsEnded(Hold hold, int thing, DateOnly? upTo) =>
        IsRenewed(hold, thing, upTo)
        || sheets.Any(sheet =>
            sheet
                .Record.List("releases")
                .Any(release =>
                    things.Meant(release.Text("item"), sheet).Contains(thing)
                    && Ends(release, sheet, hold, thing)
                    && (upTo is null || release.Day("on") <= upTo)
                )
        );

    private bool Ends(JsonElement release, Sheet sheet, Hold hold, int thing)
    {
        var row = sheet.Find(release.Text("item"));
        var last = row is { Examined: true } ? row.Day : sheet.LookedAtOn;
        return row is not null
            && release.Day("on") is { } on
            && on >= hold.Day
            && on <= last
            && !things.IsTakenBack(row)
            && IsVouchedFor(release, sheet)
            && Names(release, sheet, hold)
            && Reaches(release, hold, thing, on);
    }

    /// <summary>A person of the record gives it, for a reason.</summary>
    public static bool IsVouchedFor(JsonElement release, Sheet sheet) =>
        sheet.Record.List("people").Any(person => person.Text("id") == release.Text("by")) && IsSentence(release.Text("grounds"));

    private static bool IsSentence(string? grounds) =>
        (grounds ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries).Count(word => word.Any(char.IsLetter)) >= 2
        && grounds!.Count(char.IsLetter) >= 8;

    private bool Names(JsonElement release, Sheet sheet, Hold hold) =>
        (release.Text("document"), release.Day("withdrawnOn")) switch
        {
            (null, null) => hold.IsTyped && hold.Row.Sheet == sheet,
            (null, { } day) => day == hold.Day && (hold.IsTyped || hold.Row.Sheet != sheet),
            ({ } document, null) => IsLabel(document, hold),
            ({ } document, { } day) => IsLabel(document, hold) && day == hold.Day,
        };

    /// <summary>
    /// The withdrawal's own label, or that of another record that tells of the same withdrawal of the same thing: another version
    /// of its visit, one of that day for the same reasons, or a later one that only repeats it.
    /// </summary>
    private bool IsLabel(string document, Hold hold) =>
        things
            .With[things.Of(hold.Row)]
            .Where(row => row.Said?.Label == document)
            .Any(row => row == hold.Row || IsRepeated(hold, Hold.Of(row)));

    private static bool IsRepeated(Hold hold, Hold other) =>
        other.Row.Sheet.IsVersionOf(hold.Row.Sheet)
        || (other.IsDerived && other.Day >= hold.Day)
        || (other.Day == hold.Day && other.Codes.Except(["W10", "W11"]).ToHashSet().SetEquals(hold.Codes.Except(["W10", "W11"])));

    private bool Reaches(JsonElement release, Hold hold, int thing, DateOnly on)
    {
        var because = release.Text("because") ?? (IsRepaired(thing, hold.Day, on) ? "made-good" : "examined-again");
        return because == "recorded-in-error"
            || (
                !hold.Never
                && because switch
                {
                    "made-good" => IsRepaired(thing, hold.Day, on) && hold.Codes.IsSubsetOf(MadeGood),
                    "examined-again" => hold.Codes.IsSubsetOf(ExaminedAgain),
                    _ => false,
                }
            );
    }

    /// <summary>It came from a part, or from being a wrong part, alone; and that part has been taken off.</summary>
    private bool IsRenewed(Hold hold, int thing, DateOnly? upTo)
    {
        var found = hold.Codes.Where(code => code != "W10").ToHashSet();
        if (found.Count == 0 || hold.IsTyped || hold.IsDerived || !found.IsSubsetOf(["W8", "W9"]))
        {
            return false;
        }

        return (!found.Contains("W8") || TakenOff(hold, upTo).Any(off => things.Meant(off.Part, off.Sheet).Contains(thing)))
            && hold.Row.Said!.BadParts.All(part =>
                TakenOff(hold, upTo)
                    .Any(off =>
                        things.Meant(off.Whole, off.Sheet).Contains(thing)
                        && things.Named(off.Part, off.Sheet).Intersect(part.Select(things.Of)).Any()
                    )
            );
    }

    private IEnumerable<(Sheet Sheet, string? Whole, string? Part)> TakenOff(Hold hold, DateOnly? upTo) =>
        sheets.SelectMany(sheet =>
            sheet
                .Record.List("renewals")
                .Where(r => r.Text("removedPart") is not null && r.Day("doneOn") >= hold.Day && (upTo is null || r.Day("doneOn") <= upTo))
                .Where(r => !things.IsTakenBack(sheet, r.Text("item"), r.Text("removedPart")))
                .Select(r => (sheet, r.Text("item"), r.Text("removedPart")))
        );
}
