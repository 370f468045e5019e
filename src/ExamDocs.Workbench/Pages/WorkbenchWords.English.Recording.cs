using ExamDocs.Core.Records;
using ExamDocs.Intake.Drafting;
using ExamDocs.UseCases.Recording;
using NodaTime;

namespace ExamDocs.Workbench.Pages;

/// <content>English, for the pages that record a visit.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class English
    {
        public override string StartAVisit => "Record a visit here";
        public override string StartHow =>
            "With the items that fall due, what is known of them and what was found last time; or without items, to add them one by one.";
        public override string DueBy => "Items due by";
        public override string DueByHow => "The last day; empty for every item of the register.";
        public override string OfOneEmployer => "Only where the register has items of several.";
        public override string StartFromRegister => "Start with what falls due";
        public override string StartEmpty => "Start without items";

        public override string NotADay(string typed) => $"\"{typed}\" is not a day. Type it as 2026-05-11.";

        public override string NotStarted(string why) => $"No visit was started: {why}.";

        public override string RecordedHere => "recorded here";
        public override string VisitRecordedHere => "Visit recorded here";
        public override string RecordedOnScreen =>
            "This visit is recorded on screen: a file cannot take the place of what was answered. Mend it on its pages, or bring the file "
            + "in on the desk, as a visit of its own.";

        public override string GoOnRecording => "Go on recording";

        public override string VisitParticulars => "Visit: for whom, where, when";
        public override string NextParticulars => "Next: say for whom, where and when. What you do not know stays empty.";
        public override string NextAddItem => "Next: add the first item.";

        public override string NextRecord(int left) => Text($"Next: record {left} {(left == 1 ? "item" : "items")}.");

        public override string RecordNow(string item) => $"Record {item}";

        public override string OutcomesAndIssue => "Outcomes and issue";
        public override string Items => "Items";
        public override string AllItems => "All items";
        public override string AddItem => "Add an item";
        public override string AddItemNow => "Add and record it";
        public override string ChooseACategory => "Choose a category: it says what is examined.";
        public override string ToDo => "to do";
        public override string NotHere => "not examined: not there";

        public override string LeftToAnswer(int criteria, bool isConcluded) =>
            criteria > 0 ? Text($"{criteria} left to answer")
            : isConcluded ? "choose a category"
            : "conclusion left";

        public override string ItemParticulars => "What the item is";
        public override string Circumstances => "Earlier next examination, how it is used";
        public override string Optional => "optional";

        public override string LastTime(LocalDate day) => $"Last time, {Day(day)}:";

        public override string StateIs(ObservedState state) =>
            state switch
            {
                ObservedState.Clear => "clear",
                ObservedState.Noted => "noted",
                ObservedState.Doubt => "doubt",
                ObservedState.Defect => "defect",
                ObservedState.NotApplicable => "not applicable",
                ObservedState.NoSign => "nobody to ask, no sign",
                _ => "not examined",
            };

        public override string TakeBack => "take the answer back";
        public override string NoteField => "Note";
        public override string DefectHow => "The defect, as the report states it.";
        public override string Diameters => "Diameters";
        public override string DiametersHow => "Type the readings of each place with a blank between them, in millimetres: 11.1 11.0";

        public override string AtPlace(string mm) => $"At {mm} mm";

        public override string FurtherPlaces => "Further places, mm from the reference end";
        public override string AddPlaces => "Add places";
        public override string Conclusion => "Your conclusion";

        public override string ConclusionIs(Conclusion conclusion) => conclusion is Core.Records.Conclusion.Fit ? "fit" : "withdraw";

        public override string AnsweredOf(int answered, int all) => Text($"{answered} of {all} answered");

        public override string Save => "Save";
        public override string SaveAndNext => "Save and next item";
        public override string SaveAndList => "Save and show all items";
        public override string Saving => "saving";
        public override string Saved => "saved";
        public override string SavingFailed => "NOT SAVED. The workbench does not answer; it is tried again while this page is open.";

        public override string NotSavedIs(NotSaved one)
        {
            ArgumentNullException.ThrowIfNull(one);
            if (IsRow(one.Field.Name))
                return $"{OfRow(one.Field.Name)} was not taken off. {Because(one.Because)}";
            var stands = one.Stands.Length > 0 ? $"\"{one.Stands}\"" : "nothing";
            var typed = one.Field.Now.Length > 0 ? $"\"{one.Field.Now}\"" : "nothing";
            return one.Because is NotSavedBecause.ChangedMeanwhile
                ? $"{Member(one.Field.Name)}: another page saved {stands} there meanwhile. Yours, {typed}, was not saved; all else was. "
                    + "Load this page again and choose."
                : $"{Member(one.Field.Name)}: {typed} was not saved, {stands} stands. {Because(one.Because)}";
        }

        public override string Because(NotSavedBecause because) =>
            because switch
            {
                NotSavedBecause.IdIsNotItsOwn => "Give the item an id that no other item of this visit has.",
                NotSavedBecause.IdIsOnRecord =>
                    "What is known of it from before is known under this id. Add an item with the new id and name this one as its "
                        + "former id.",
                NotSavedBecause.RowIsAnother =>
                    "Another page changed this entry meanwhile, added one or took one off. Load this page again and type "
                        + "it where it belongs.",
                _ => "Another page was quicker.",
            };

        public override string LoadAgain => "Load this page again";
    }
}
