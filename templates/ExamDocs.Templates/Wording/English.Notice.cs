using ExamDocs.Core.Regimes;
using ExamDocs.Templates.Shared;
using NodaTime;

namespace ExamDocs.Templates.Wording;

public static partial class English
{
    /// <summary>Words of the notice of defect.</summary>
    public static class Notice
    {
        public const string Title = "Notice of defect";
        public const string ImminentRisk = "Existing or imminent risk of serious personal injury";
        public const string Recipients = "To";
        public const string Employer = "Employer";
        public const string Owner = "Owner it is hired or leased from";
        public const string AuthorityHeading = "A copy of the report goes to the enforcing authority as soon as practicable";
        public const string AuthorityRecorded = "Authority in the record:";
        public const string AuthorityMissing = "name and address of its office: not recorded";
        public const string Premises = "Examined at";
        public const string Item = "The item";
        public const string Defects = "The defect";
        public const string Duty = "What the employer must do";
        public const string Why = "Why";
        public const string Told = "Who was told, how and when";
        public const string ToldWhom = "Who was told";
        public const string ToldHow = "How";
        public const string ToldOn = "When";
        public const string For = "Defect";
        public const string GivenBy = "Given by the examiner:";
        public const string ReceivedBy = "Received for the employer:";
        public const string NoDetail = "No defect is written out in the record; the reasons are these:";
        public const string KeepApart = "Take the item out of use, label it and keep it apart from kit in service.";

        public static readonly IReadOnlyList<string> Cautions =
        [
            "This notice tells of a danger at once. It does not replace the report that the law asks for.",
            "A letter and a number before a reason name the rule it rests on: W withdraws the item, D sets its last day of use, U tells what the record leaves open.",
            "“Not recorded” means that the record holds no such value. It is no reason to wait.",
        ];

        public static string Authority(Duty duty) => LawAndSources.Sourced(Printed.Sentence(duty.Whom.Words()), duty.Source, duty.Confidence);

        public static string DoNotUse => "Do not use";

        public static string DoNotUseAfter(LocalDate? lastDay) => $"Do not use after {Printed.Day(lastDay)}";

        public static string LastDay(LocalDate? lastDay) =>
            $"The last day of use is {Printed.Day(lastDay)}. It is not to be used after that day, whatever else is due.";
    }
}
