using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Templates.Shared.Wording.Items;

/// <inheritdoc />
internal sealed class English : ItemPhrases
{
    public override string VisitDate => "Examined on";
    public override string ColumnItem => "Item";
    public override string ColumnDescription => "Description";
    public override string Category => "Kind";
    public override string Maker => "Maker";
    public override string Model => "Model";
    public override string PartNumber => "Part number";
    public override string Serial => "Serial or batch number";
    public override string OwnersMark => "Owner's mark";
    public override string Manufactured => "Date of manufacture";
    public override string FirstUsed => "First used";
    public override string NeverUsed => "never used";
    public override string Standards => "Standards marked";
    public override string FittedTo => "Fitted to";
    public override string Parts => "Parts fitted to it";
    public override string SafeWorkingLoad => "Safe working load";
    public override string MarkedStrength => "Marked strength";
    public override string Purpose => "Purpose";
    public override string MakersLimits => "Maker's instructions used";
    public override string EndOfService => "End of service by recorded limits";
    public override string DefectPart => "Part and defect";
    public override string DefectDanger => "Danger";
    public override string DefectRemedy => "Repair, renewal or alteration needed";
    public override string DangerNow => "is a danger now: not to be used until rectified";
    public override string ImminentRisk => "existing or imminent risk of serious personal injury";
    public override string NoNext => "none set: the item is not to be used";
    public override string NotAfter => "Not to be used after";
    public override string NotAfterAnyDay => "not to be used at all";
    public override string NoNotAfter => "no earlier date set";
    public override string ExaminedOn => "Date examined";

    public override string PhotoCaption(int number, string criterion, ObservedState? state, string? note) =>
        Printed.Join(
            ": ",
            Printed.Join(
                ", ",
                $"Photo {Printed.Count(number)}",
                criterion,
                state is { } answer ? SentenceBook.English.Words.State(answer) : null
            ),
            note
        );

    public override string Next(string examination) => $"Latest date for the next {examination}";

    public override string DangerLater => "could become a danger by";

    public override string Document(string? title, string? revision, string? page) =>
        $"{Printed.Text(title)}, revision {Printed.Text(revision)}, page\u00A0{Printed.Text(page)}";

    public override string Renewal(string removed, string fitted, string reason, string doneBy, string supervisedBy, string on) =>
        $"{on}: {removed} taken off, {fitted} fitted. Reason: {reason}. Done by {doneBy}, supervised by {supervisedBy}.";

    public override string Removal(string removed, string reason, string doneBy, string supervisedBy, string on) =>
        $"{on}: {removed} taken off, nothing fitted in its place. Reason: {reason}. Done by {doneBy}, supervised by {supervisedBy}.";
}
