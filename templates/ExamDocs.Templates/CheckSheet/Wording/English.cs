using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Common;
using NodaTime;

namespace ExamDocs.Templates.CheckSheet.Wording;

/// <inheritdoc />
internal sealed class English : CheckSheetPhrases
{
    public override string Title => "Check sheet";
    public override string TitleOfSeveral => "Check sheets";

    public override string Lead =>
        "To write an examination down by hand. It is no report, and says nothing of the item's state until it is filled in.";

    public override string Withdrawn => "Withdrawn: do not use";
    public override string Held => "Not determined: do not use";
    public override string WithdrawnSince => "Withdrawn at the examination of";
    public override string HeldSince => "As the record stands after the examination of";

    public override string ReleaseByPerson =>
        "It stays withdrawn, whatever this sheet says, until a competent person releases it in writing, with grounds.";

    public override string NeverRelease => "It never comes back into service, unless a release shows that the record was in error.";
    public override string ReleaseHold => "It may be used only once a competent person has examined it and has said so in writing.";
    public override string LastOutcome => "Outcome of last time";
    public override string LastExamined => "Last examined";
    public override string LastExaminer => "Examined by";
    public override string NextBy => "Next due by";
    public override string NotAfter => "Not to be used after";
    public override string Status => "Where it was";
    public override string Criteria => "What is examined";

    public override string HowToTick =>
        "One box on each line. A line left open is no answer, and leaves the item undetermined. A note is needed for "
        + "noted, doubt and defect. In doubt, tick doubt: it takes the item out of service.";

    public override string NotInCatalogue => "The catalogue has no criteria for this kind of item. Write on each line what was examined.";

    public override string LastTime => "Last time:";
    public override string NoAnswer => "no answer recorded";
    public override string Note => "Note";
    public override string Optional => "optional";
    public override string Examined => "What was examined";
    public override string Diameters => "Diameter along the rope";

    public override string HowToMeasure =>
        "Two readings at each place, at right angles to one another (EN 892:2012 5.3.1, unofficial copy), without "
        + "squeezing the rope. Positions in millimetres from the same end as last time.";

    public override string Station => "Place";
    public override string Position => "Position, mm";
    public override string FirstReading => "Reading, mm";
    public override string SecondReading => "At right angles, mm";
    public override string LastMean => "Mean last time, mm";
    public override string ReferenceEnd => "Positions counted from this end:";
    public override string NoNominal => "No maker's nominal diameter is recorded: the readings are compared with one another.";
    public override string OpenDefects => "Found last time: still there, or put right?";
    public override string StillThere => "still there";
    public override string PutRight => "put right";
    public override string PutRightBy => "Put right by, on, evidence";
    public override string Defects => "Defects that are, or could become, a danger";
    public override string MoreDefects => "More than two: go on with a second sheet.";
    public override string Part => "Part";
    public override string What => "What is wrong";
    public override string Danger => "Danger";
    public override string DangerNow => "now";
    public override string DangerLater => "later, by (date)";
    public override string Imminent => "risk of serious injury is imminent";
    public override string Remedy => "Repair, renewal or alteration needed";
    public override string Told => "Who was notified, how, on (date)";
    public override string Tests => "Tests made, and their results";
    public override string Conclusion => "Conclusion";
    public override string Basis => "Why it was examined";
    public override string Fit => "fit";
    public override string Withdraw => "withdraw";
    public override string FitMeans => "may stay in service";
    public override string WithdrawMeans => "out of service now, labelled and kept apart";
    public override string ExaminerName => "Name";
    public override string ExaminedOn => "Date examined";
    public override string NextExamination => "Next examination by, if earlier";
    public override string Recorded => "On record";

    public override IReadOnlyList<string> Cautions { get; } =
    [
        "What was found last time is told so that nothing is overlooked. Each answer starts from the item, not from the last sheet.",
        "What is written here counts only once it is entered into the record of the visit and checked.",
    ];

    public override string RecordHasErrors(IReadOnlyList<string> codes) =>
        $"The record this sheet was filled in from has errors ({string.Join(", ", codes)}). Compare everything printed "
        + "here with the item itself.";

    public override string Of(string item, string heading) => $"{item}: {heading}";

    public override string AsTyped(string? word) => $"“{word}”, which is no answer";

    public override string Class(CriterionClass criteria) =>
        criteria switch
        {
            CriterionClass.Decisive => "Decisive: a defect or doubt ends the item's service",
            CriterionClass.Judged => "Judged: weighed with the rest",
            _ => "Advisory: normal wear, to be noted",
        };

    public override string Box(ObservedState state) =>
        state switch
        {
            ObservedState.NoSign => "no sign",
            ObservedState.NotApplicable => "not appl.",
            ObservedState.NotExamined => "not exam.",
            _ => SentenceBook.English.Words.State(state),
        };

    public override IReadOnlyList<string> Boxes { get; } =
    ["“no sign”: nobody to ask, and no sign found.", "“not appl.”: not applicable to this item.", "“not exam.”: not examined."];

    public override string Means(Means means) =>
        means switch
        {
            Core.Criteria.Means.Look => "look",
            Core.Criteria.Means.Feel => "feel",
            Core.Criteria.Means.Measure => "measure",
            Core.Criteria.Means.Operate => "operate",
            Core.Criteria.Means.Ask => "ask",
            _ => "read",
        };

    public override string BasisBox(Basis basis) =>
        basis switch
        {
            Core.Records.Basis.SixMonth => "six-month",
            Core.Records.Basis.TwelveMonth => "twelve-month",
            Core.Records.Basis.Scheme => "scheme",
            Core.Records.Basis.Exceptional => "exceptional event",
            Core.Records.Basis.FirstUse => "first use",
            _ => "installation",
        };

    public override string Band(string nominal, string tolerance, string low, string high, string source) =>
        $"Maker's nominal {nominal}\u00A0mm with a tolerance of {tolerance}\u00A0% to either side: {low} to {high}\u00A0mm inclusive. "
        + $"Source: {source}.";

    public override string NominalOnly(string nominal, string source) =>
        $"Maker's nominal {nominal}\u00A0mm; no tolerance recorded. Source: {source}.";

    public override string Released(LocalDate? on, string by, string? grounds) =>
        $"Release of {Printed.Day(on)} by {by}: {Printed.Text(grounds)}";

    public override string Disposed(DisposalAction? action, LocalDate? on, string by) =>
        $"{CommonPhrases.Languages.English.Disposal(action)} on {Printed.Day(on)} by {by}";
}
