using ExamDocs.Templates.Shared;
using NodaTime;

namespace ExamDocs.Templates.Wording;

public static partial class English
{
    /// <summary>Words of the next-examination label.</summary>
    public static class DueLabel
    {
        public const string Kind = "Next-examination label";
        public const string NextBy = "Next examination by";
        public const string NotAfter = "Not to be used after";
        public const string SignLabel = "A calendar's page";
        public const string PageOne = "Page 1 of 1";

        public static string Title(string number) => $"{Kind} {number}";

        public static string IssuedOn(LocalDate day) => $"{Issued} {Printed.Day(day)}";

        /// <summary>Where the label comes from.</summary>
        public static string Origin(string visit, LocalDate? examined, string law) =>
            $"Visit {visit}. Examined {Printed.Day(examined)} under {law}.";

        public static string Caution(string number) =>
            $"Check {number} against the issuer's register. Maker's instructions, local law and the competent person's judgement come first.";
    }
}
