using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.Label.Wording;

/// <inheritdoc />
internal sealed class English : LabelPhrases
{
    public override string Eyelet => "eyelet";
    public override IReadOnlyList<string> Signal { get; } = ["DO", "NOT", "USE"];
    public override double NameColumnEms => 3.6;
    public override string NotDetermined => "NOT DETERMINED";
    public override string SignLabel => "Prohibition sign: do not use";
    public override string HoldSignLabel => "Question mark in a square on its corner: not determined";
    public override string Why => "Why";
    public override string Since => "Since";
    public override string Release => "Release";
    public override string WhyHold => "The record is not complete enough to say whether it may be used.";

    public override string ReleaseByPerson(string? regime) => "Only by a competent person, in writing. Keep it apart; leave this label on.";

    public override string ReleaseHold(string? regime) =>
        "Only once a competent person has examined it and has said so in writing. Leave this label on.";

    public override string NeverRelease => "NOT TO BE RELEASED. Keep it apart, then destroy it so that nobody can use it again.";
    public override string KeptBy => "Kept by";
    public override string Ring => "Ring";
    public override string Ask => "Ask";

    public override string Says(bool isHold, string day) =>
        isHold ? $"DO NOT USE. Not determined, {day}." : $"DO NOT USE. Withdrawn {day}.";

    public override string ExaminedBy => "Examined by:";
    public override string PageOne => "Page 1 of 1";
    public override string Shortened => "… (shortened; the record has the whole)";

    public override string Caution(string? regime) => "Maker's instructions, local law and the competent person's judgement come first.";

    public override string Verify(string number) => $"Check {number} against the issuer's register.";

    public override string More(int more) => $"and {Printed.Count(more)} more: see the record.";

    public override string Title(string kind, string number) => $"{kind} {number}";

    public override string HandTagTitle => "Do-not-use tag to fill in by hand";
    public override IReadOnlyList<string> HandTagLines { get; } = ["Item", "Serial", "Why", "Since", "By"];

    public override string HandTagNote =>
        "Filled in by hand: not an issued document, so without a number. Enter the item in the record of the next visit.";

    public override string QuarantineTitle => "Quarantine label";
    public override string HoldTitle => "Hold label";

    public override string Regime(string law) => $"Examined under: {law}";

    public override string TakenOutBy(string notice) => $"Not examined. By the maker's notice {notice}, taken out of use by:";

    public override string Law(string law) => $"Law: {law}";

    public override string SinceDay(LocalDate? day) => Printed.Day(day);
}
