using ExamDocs.Templates.Shared;
using NodaTime;

namespace ExamDocs.Templates.Wording;

public static partial class English
{
    /// <summary>Words of the quarantine label and the hold label.</summary>
    public static class Label
    {
        public const string Eyelet = "eyelet";
        public const string Do = "DO";
        public const string Not = "NOT";
        public const string Use = "USE";
        public const string NotDetermined = "NOT DETERMINED";
        public const string SignLabel = "Prohibition sign: do not use";
        public const string HoldSignLabel = "Question mark in a square on its corner: not determined";
        public const string Why = "Why";
        public const string Since = "Since";
        public const string Release = "Release";
        public const string WhyHold = "The record is not complete enough to say whether it may be used.";
        public const string ReleaseByPerson = "Only by a competent person, in writing. Keep it apart; leave this label on.";
        public const string ReleaseHold = "Only once a competent person has examined it and has said so in writing. Leave this label on.";
        public const string NeverRelease = "NOT TO BE RELEASED. Keep it apart, then destroy it so that nobody can use it again.";
        public const string Owner = "Owner";
        public const string ExaminedBy = "Examined by:";
        public const string PageOne = "Page 1 of 1";
        public const string Shortened = "… (shortened; the record has the whole)";
        public const string Caution = "Maker's instructions, local law and the competent person's judgement come first.";

        public static string Verify(string number) => $"Check {number} against the issuer's register.";

        public static string More(int more) => $"and {Printed.Count(more)} more: see the record.";

        public static string Title(string kind, string number) => $"{kind} {number}";

        public const string QuarantineTitle = "Quarantine label";
        public const string HoldTitle = "Hold label";

        public static string Regime(string law) => $"Examined under: {law}";

        public static string SinceDay(LocalDate? day) => Printed.Day(day);
    }
}
