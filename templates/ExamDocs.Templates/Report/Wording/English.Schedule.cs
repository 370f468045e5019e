using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.Report.Wording;

internal sealed partial class English
{
    public override string ColumnMarking => "Serial or mark";
    public override string ColumnMade => "Made";
    public override string ColumnLast => "Last examined";
    public override string ColumnUseUntil => "Use until";
    public override string ColumnNote => "Note";
    public override string Position => "Position, mm";
    public override string Readings => "Readings, mm";
    public override string Mean => "Mean, mm";
    public override string NotKnown => "not known";
    public override string First => "first";
    public override string SafeNo => "no, it was not found safe to operate";
    public override string Purchased => "Purchased";
    public override string DeclarationLabel => "Declaration of conformity";
    public override string Scope => "Scope of the examination";
    public override string Laws => "Examined under";
    public override string ExaminedBy => "Examined by";
    public override string AnnexToRegister => "To be annexed to the safety register.";
    public override string NoSign => "Nobody to ask; no sign found";
    public override string PlacesHeading => "Where each paragraph stands";
    public override string LawHeading => "Law";
    public override string NotReadHeading => "Wording not checked against the original";

    public override IReadOnlyList<string> Legend { get; } =
    [
        "“Use until” and “not to be used after” name the last day of use. They stand apart from the date by which the item is next "
            + "due for examination: the earlier of the two governs. In a line, “use until” is the end of service by the maker’s "
            + "recorded limits; a dash means that they set none.",
        "A group holds items in order that share all that its heading says. “Not recorded” and “not known” mean that the record "
            + "holds no such value, not that there is none.",
    ];

    public override IReadOnlyList<string> Cautions { get; } =
    [
        "This report is about each item as it was found on the date it was examined, and about no other item, part or day. "
            + "It does not replace the check before each use.",
        "An item that has arrested a fall, been in contact with a saw blade, heat or a chemical, or about which there is doubt, is "
            + "taken out of use and examined again, whatever this report says.",
    ];

    public override string CountLabel(Outcome outcome, int count) =>
        outcome switch
        {
            Outcome.Withdraw => "not to be used",
            Outcome.FitUntil => "may stay in service until a date",
            Outcome.Undetermined => "not determined: do not use",
            _ => "may stay in service",
        };

    public override string NotInReport(int count) => "not in this report: do not use";

    public override string Part(int number, int of) =>
        $"Report {Printed.Count(number)} of {Printed.Count(of)} of this visit. The other items are in the other reports.";

    public override string BlocksHeading(BlockKind kind, int items) =>
        kind switch
        {
            BlockKind.Withdrawn => $"Not to be used: {Items(items)}",
            BlockKind.Limited => $"Only until a date: {Items(items)}",
            BlockKind.Overdue => $"In service, overdue when examined: {Items(items)}",
            BlockKind.First => $"In service, first examination: {Items(items)}",
            _ => $"In service, with longer particulars: {Items(items)}",
        };

    public override string LinesHeading(int items) => $"In service: {Items(items)} in order";

    public override string Items(int count) => count == 1 ? "1 item" : $"{Printed.Count(count)} items";

    public override string Continued(int from, int to, int of) =>
        $"continued: {Printed.Count(from)} to {Printed.Count(to)} of {Printed.Count(of)} items";

    public override string ExaminedOn(string day) => $"examined {day}";

    public override string Mark(string mark) => $"owner’s mark {mark}";

    protected override string Tolerated(string nominal, string tolerance, string low, string high) =>
        $"Maker’s nominal {nominal}\u00A0mm ± {tolerance}\u00A0%: {low} to {high}\u00A0mm (shaded).";

    protected override string NoTolerance => "No maker’s tolerance is recorded: no limit is drawn.";

    public override string Declaration(string? reference, LocalDate? on) => $"{Printed.Text(reference)}, {Printed.Day(on)}";

    public override string Remedy(string? what, LocalDate? on) => $"Remedied {Printed.Day(on)}: {Printed.Text(what)}";

    public override string Release(LocalDate? on, string by, bool inError, string? grounds) =>
        $"Released {Printed.Day(on)} by {by}{(inError ? ", because the withdrawal was recorded in error" : "")}: {Printed.Text(grounds)}";

    public override string TrendProposal(LocalDate on) =>
        $"By the trend of its diameters it could become a danger by {Printed.Day(on)}: a proposal, which binds only once the "
        + "examiner enters it as a defect";

    public override string Place(ParagraphPlace place, bool isSchedule) =>
        (place, isSchedule) switch
        {
            (ParagraphPlace.Once, _) => "once, on the first page or with the signatures",
            (ParagraphPlace.Unknown, _) => "no place known to the program: see whether the report holds it",
            (_, false) => "among the particulars of the item",
            (ParagraphPlace.Group, _) => "in the heading of the item’s group, or in its block",
            (ParagraphPlace.Line, _) => "in the item’s own line, or in its block",
            _ => "always in a block of its own",
        };

    public override string AddUp(int blocks, int lines, int groups) =>
        $"{Printed.Count(blocks)} in a block of their own and {Printed.Count(lines)} in lines of "
        + $"{(groups == 1 ? "1 group" : $"{Printed.Count(groups)} groups")} make {Items(blocks + lines)}.";

    public override string Evidence(string? number) =>
        "The case for service of each item, all measurements and photos and the source of each rule are in the evidence file: "
        + (number ?? "on request from the issuer, by the visit reference")
        + ".";

    public override string PhotosElsewhere(int count) =>
        count == 1 ? "1 photo, in the evidence file" : $"{Printed.Count(count)} photos, in the evidence file";
}
