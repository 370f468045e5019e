using ExamDocs.Intake.OwnList.Words;

namespace ExamDocs.Workbench.Pages;

/// <content>What the page says that takes a list of the user's own.</content>
public abstract partial class WorkbenchWords
{
    public abstract string TakeAsList { get; }
    public abstract string ListHow { get; }
    public abstract string ListFormIncomplete { get; }
    public abstract string NextNoItems { get; }
    public abstract string NextLookAtResult { get; }
    public abstract string Columns { get; }
    public abstract string ColumnHead { get; }
    public abstract string HoldsHead { get; }
    public abstract string SeemsHead { get; }
    public abstract string TakeAsHead { get; }
    public abstract string ChooseOne { get; }
    public abstract string Meanings { get; }
    public abstract string DatesQuestion { get; }
    public abstract string MakersQuestion { get; }
    public abstract string SplitMakers { get; }
    public abstract string TakeWhole { get; }
    public abstract string AsOf { get; }
    public abstract string AsOfHow { get; }
    public abstract string KindsOfKit { get; }
    public abstract string WordHead { get; }
    public abstract string UnknownKind { get; }
    public abstract string OutOfUseHeading { get; }
    public abstract string OutOfUseHow { get; }
    public abstract string NotSettledUse { get; }
    public abstract string TakeAnswers { get; }
    public abstract string WhatComesOut { get; }
    public abstract string FirstSettle { get; }
    public abstract string NothingIsExamined { get; }
    public abstract string ComesInAs { get; }
    public abstract string ToExamine { get; }
    public abstract string ToKnow { get; }
    public abstract string NotTaken { get; }
    public abstract string RecordList { get; }
    public abstract string DownloadWorkbook { get; }
    public abstract string DownloadMap { get; }
    public abstract string ListIsOnlyRead { get; }

    public abstract string ListCalled(string name);
    public abstract string NotADayBefore(string typed);
    public abstract string NextSettle(int number);
    public abstract string TakeColumnAs(string heading);
    public abstract string TakeWordAs(string word);
    public abstract string ColourCalled(string colour);
    public abstract string SurenessIs(Sureness sure);
    public abstract string UseIs(UseMeaning meaning);
    public abstract string ForExample(IEnumerable<string> samples);
    public abstract string RowsOf(int rows);
    public abstract string NotShown(int rows);
    public abstract string ComeInWithdrawn(int items);
    public abstract string RowNotTaken(string sheet, int row, string why);
}
