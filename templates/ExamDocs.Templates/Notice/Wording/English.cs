using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.Notice.Wording;

/// <inheritdoc />
internal sealed class English : NoticePhrases
{
    public override string Title => "Notice of defect";
    public override string ImminentRisk => "Existing or imminent risk of serious personal injury";
    public override string Recipients => "To";
    public override string Employer => "Employer";
    public override string Owner => "Owner from whom hired or leased";
    public override string AuthorityHeading => "A copy of the report goes to the enforcing authority as soon as practicable";
    public override string AuthorityRecorded => "Authority in the record:";
    public override string AuthorityMissing => "name and address of its office: not recorded";
    public override string Premises => "Examined at";
    public override string Item => "The item";
    public override string Defects => "The defect";
    public override string Duty => "What the employer must do";
    public override string Why => "Why";
    public override string Told => "Who was notified, how and when";
    public override string ToldWhom => "Who was notified";
    public override string ToldHow => "How";
    public override string ToldOn => "When";
    public override string For => "Defect";
    public override string GivenBy => "Given by the examiner:";
    public override string ReceivedBy => "Received for the employer:";
    public override string NoDetail => "No defect is written out in the record; the reasons are these:";
    public override string KeepApart => "Take the item out of use, label it and keep it apart from kit in service.";

    public override IReadOnlyList<string> Cautions { get; } =
    [
        "This notice reports a danger at once. It does not replace the report that the law asks for.",
        "A letter and a number before a reason name its rule: W withdraws the item, D sets its last day of "
            + "use, U tells what the record leaves open.",
        "“Not recorded” means that the record holds no such value. It is no reason to wait.",
    ];

    public override string WithdrawnOn => "Withdrawn on";
    public override string PremisesUnseen => "Premises";
    public override string GivenUnseenBy => "Given by:";

    public override string TakenOut(LocalDate? day, string notice) =>
        $"Withdrawn on {Printed.Day(day)} by the maker's safety notice {notice}. Nobody has examined the item.";

    public override string DoNotUse => "Do not use";

    public override string DoNotUseAfter(LocalDate? lastDay) => $"Do not use after {Printed.Day(lastDay)}";

    public override string LastDay(LocalDate? lastDay) =>
        $"The last day of use is {Printed.Day(lastDay)}. It is not to be used after that day, whatever else is due.";

    public override string LawNotKnown =>
        "The law it was examined under is not recorded or not known: find out at once whether an enforcing authority has "
        + "to be told as well.";

    public override string ReportHeldBack =>
        "No report of this item is issued before its record is put right. Put it right at once: the duty to send the "
        + "copy does not wait.";
}
