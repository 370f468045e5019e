using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Common;
using ExamDocs.Templates.Shared.Wording.LawAndSources;

namespace ExamDocs.Templates.AuthorityCopy.Wording;

/// <inheritdoc />
internal sealed class English : AuthorityCopyPhrases
{
    public override string Title => "Copy of a report, for the enforcing authority";
    public override string To => "To the enforcing authority";
    public override string ByLaw => "By law it goes to";
    public override string From => "From the person making the report";
    public override string Why => "Why it is sent";
    public override string Which => "The items, and the risk";
    public override string ColumnItem => "Item";
    public override string ColumnDefect => "Part and defect";
    public override string ColumnState => "State of the item, and what is needed";
    public override string Employer => "Made for (employer)";
    public override string Owner => "Owner from whom hired or leased";
    public override string Premises => "Examined at";
    public override string ExaminedOn => "Examined on";
    public override string Told => "Employer notified";
    public override string Enclosed => "Enclosed";
    public override string SentBy => "Sent by:";

    public override string RunningTitle(string original) => $"Copy of report {original}, for the enforcing authority";

    public override string Lead(string original) => $"Cover to a copy of report {original}. The copy follows on the next page, whole.";

    public override string Imminent(Duty duty) =>
        "In the opinion of the person who made the report, a defect involves an existing or imminent risk of serious "
        + "personal injury. A copy of the report then goes to the enforcing authority as soon as practicable "
        + $"({duty.Source}; {LawAndSourcesPhrases.Languages.English.Confidence(duty.Confidence)}).";

    public override string Copy(string original, string number) =>
        $"A copy of report {original} in the same words. Its pages bear this copy's number, {number}; the report itself "
        + $"bears {original} and the signature. Both are made from the same record.";

    public override string SignedCopy(string original, string number) =>
        $"A copy of report {original} in the same words. Its pages bear this copy's number, {number}; the report itself "
        + $"bears {original}. Each of the two files is signed electronically. Both are made from the same record.";

    public override string Original(string original) => $"SHA-256 of the file of report {original}:";

    public override string Notified(Notification? told) =>
        told is null
            ? CommonPhrases.Languages.English.NotRecorded
            : $"{Printed.Text(told.Whom)}, {Printed.Text(told.How)}, {Printed.Day(told.On)}";
}
