using ExamDocs.Core.Records;
using ExamDocs.Intake.Drafting;
using ExamDocs.UseCases.Recording;
using NodaTime;

namespace ExamDocs.Workbench.Pages;

/// <content>What the pages say that record a visit.</content>
public abstract partial class WorkbenchWords
{
    public abstract string StartAVisit { get; }
    public abstract string StartHow { get; }
    public abstract string DueBy { get; }
    public abstract string DueByHow { get; }
    public abstract string OfOneEmployer { get; }
    public abstract string StartFromRegister { get; }
    public abstract string StartEmpty { get; }
    public abstract string NotADay(string typed);
    public abstract string NotStarted(string why);
    public abstract string RecordedHere { get; }
    public abstract string VisitRecordedHere { get; }
    public abstract string RecordedOnScreen { get; }
    public abstract string GoOnRecording { get; }

    public abstract string VisitParticulars { get; }
    public abstract string NextParticulars { get; }
    public abstract string NextAddItem { get; }
    public abstract string NextRecord(int left);
    public abstract string RecordNow(string item);
    public abstract string OutcomesAndIssue { get; }
    public abstract string Items { get; }
    public abstract string AllItems { get; }
    public abstract string AddItem { get; }
    public abstract string AddItemNow { get; }
    public abstract string ChooseACategory { get; }
    public abstract string ToDo { get; }
    public abstract string NotHere { get; }
    public abstract string LeftToAnswer(int criteria, bool isConcluded);

    public abstract string ItemParticulars { get; }
    public abstract string Circumstances { get; }
    public abstract string Optional { get; }
    public abstract string LastTime(LocalDate day);
    public abstract string StateIs(ObservedState state);
    public abstract string TakeBack { get; }
    public abstract string NoteField { get; }
    public abstract string DefectHow { get; }
    public abstract string Diameters { get; }
    public abstract string DiametersHow { get; }
    public abstract string AtPlace(string mm);
    public abstract string FurtherPlaces { get; }
    public abstract string AddPlaces { get; }
    public abstract string Conclusion { get; }
    public abstract string ConclusionIs(Conclusion conclusion);
    public abstract string AnsweredOf(int answered, int all);

    public abstract string Save { get; }
    public abstract string SaveAndNext { get; }
    public abstract string SaveAndList { get; }
    public abstract string Saving { get; }
    public abstract string Saved { get; }
    public abstract string SavingFailed { get; }
    public abstract string NotSavedIs(NotSaved one);
    public abstract string Because(NotSavedBecause because);
    public abstract string LoadAgain { get; }

    /// <summary>What a field offers, in words; null where anything may be typed.</summary>
    /// <inheritdoc cref="Member"/>
    public abstract IReadOnlyList<(string Value, string Label)>? Choices(string name);
}
