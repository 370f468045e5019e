using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared;
using NodaTime;

namespace ExamDocs.Templates.Wording;

public static partial class English
{
    /// <summary>Words of the check sheet.</summary>
    public static class CheckSheet
    {
        public const string Title = "Check sheet";
        public const string Pile = "Check sheets";
        public const string Lead = "To write an examination down by hand. It is no report, and says nothing of the item's state until it is filled in.";
        public const string Withdrawn = "Withdrawn: do not use";
        public const string Held = "Not determined: do not use";
        public const string WithdrawnSince = "Withdrawn at the examination of";
        public const string HeldSince = "As the record stands after the examination of";
        public const string ReleaseByPerson = "It stays withdrawn, whatever this sheet says, until a competent person releases it in writing, with grounds.";
        public const string NeverRelease = "It rests on something that no release can undo: it never comes back into service.";
        public const string ReleaseHold = "It may be used only once a competent person has examined it and has said so in writing.";
        public const string LastOutcome = "Outcome of last time";
        public const string LastExamined = "Last examined";
        public const string LastExaminer = "Examined by";
        public const string NextBy = "Next by";
        public const string NotAfter = "Not to be used after";
        public const string Status = "Where it was";
        public const string Criteria = "What is examined";
        public const string HowToTick = "One box on each line. A line left open is no answer, and leaves the item undetermined. A note is needed for noted, doubt and defect. In doubt, tick doubt: it takes the item out of service.";
        public const string NotInCatalogue = "The catalogue has no criteria for this kind of item. Write on each line what was examined.";
        public const string LastTime = "Last time:";
        public const string NoAnswer = "no answer recorded";
        public const string Note = "Note";
        public const string Optional = "optional";
        public const string Examined = "What was examined";
        public const string Diameters = "Diameter along the rope";
        public const string HowToMeasure = "Two readings at each place, at right angles to one another (EN 892:2012 5.3.1, unofficial copy), without squeezing the rope. Positions in millimetres from the same end as last time.";
        public const string Station = "Place";
        public const string Position = "Position, mm";
        public const string FirstReading = "Reading, mm";
        public const string SecondReading = "At right angles, mm";
        public const string LastMean = "Mean last time, mm";
        public const string ReferenceEnd = "Positions counted from this end:";
        public const string NoNominal = "No maker's nominal diameter is recorded: the readings are compared with one another.";
        public const string OpenDefects = "Found last time: still there, or put right?";
        public const string StillThere = "still there";
        public const string PutRight = "put right";
        public const string PutRightBy = "Put right by, on, evidence";
        public const string Defects = "Defects that are, or could become, a danger";
        public const string MoreDefects = "More than two: go on with a second sheet.";
        public const string Part = "Part";
        public const string What = "What is wrong";
        public const string Danger = "Danger";
        public const string DangerNow = "now";
        public const string DangerLater = "later, by (date)";
        public const string Imminent = "risk of serious injury is imminent";
        public const string Remedy = "Repair, renewal or alteration needed";
        public const string Told = "Who was told, how, on (date)";
        public const string Tests = "Tests made, and their results";
        public const string Conclusion = "Conclusion";
        public const string Basis = "Why it was examined";
        public const string Fit = "fit";
        public const string Withdraw = "withdraw";
        public const string FitMeans = "may stay in service";
        public const string WithdrawMeans = "out of service now, labelled and kept apart";
        public const string ExaminerName = "Name";
        public const string ExaminedOn = "Date examined";
        public const string NextExamination = "Next examination by, if earlier";
        public const string Recorded = "On record";

        public static readonly IReadOnlyList<string> Cautions =
        [
            "What was found last time is told so that nothing is overlooked. Each answer starts from the item, not from the last sheet.",
            "What is written here counts only once it is entered into the record of the visit and checked.",
        ];

        public static string RecordHasErrors(IReadOnlyList<string> codes) =>
            $"The record this sheet was filled in from has errors ({string.Join(", ", codes)}). Compare everything printed here with the item itself.";

        /// <summary>A heading that tells the item, for pages that come apart.</summary>
        public static string Of(string item, string heading) => $"{item}: {heading}";

        public static string AsTyped(string? word) => $"“{word}”, which is no answer";

        public static string Class(CriterionClass criteria) => criteria switch
        {
            CriterionClass.Decisive => "Decisive: a defect or doubt ends the item's service",
            CriterionClass.Judged => "Judged: weighed with the rest",
            _ => "Advisory: normal wear, to be noted",
        };

        /// <summary>The answer under its box, as short as it must be there.</summary>
        public static string Box(ObservedState state) => state switch
        {
            ObservedState.NoSign => "no sign",
            ObservedState.NotApplicable => "not appl.",
            ObservedState.NotExamined => "not exam.",
            _ => State(state),
        };

        /// <summary>What the short words under the boxes stand for.</summary>
        public static readonly IReadOnlyList<string> Boxes =
        [
            "“no sign”: nobody to ask, and no sign found.", "“not appl.”: not applicable to this item.", "“not exam.”: not examined.",
        ];

        public static string Means(Means means) => means switch
        {
            Core.Criteria.Means.Look => "look",
            Core.Criteria.Means.Feel => "feel",
            Core.Criteria.Means.Measure => "measure",
            Core.Criteria.Means.Operate => "operate",
            Core.Criteria.Means.Ask => "ask",
            _ => "read",
        };

        public static string BasisBox(Basis basis) => basis switch
        {
            Core.Records.Basis.SixMonth => "six-month",
            Core.Records.Basis.TwelveMonth => "twelve-month",
            Core.Records.Basis.Scheme => "scheme",
            Core.Records.Basis.Exceptional => "exceptional event",
            Core.Records.Basis.FirstUse => "first use",
            _ => "installation",
        };

        public static string Band(string nominal, string tolerance, string low, string high, string source) =>
            $"Maker's nominal {nominal} mm with a tolerance of {tolerance} % to either side: {low} to {high} mm inclusive. Source: {source}.";

        public static string NominalOnly(string nominal, string source) =>
            $"Maker's nominal {nominal} mm; no tolerance recorded. Source: {source}.";

        public static string Released(LocalDate? on, string by, string? grounds) => $"Release of {Printed.Day(on)} by {by}: {Printed.Text(grounds)}";

        public static string Disposed(DisposalAction? action, LocalDate? on, string by) =>
            $"{(action is { } a ? Printed.Sentence(Words.DisposalActions.WordFor(a)) : NotRecorded)} on {Printed.Day(on)} by {by}";
    }
}
