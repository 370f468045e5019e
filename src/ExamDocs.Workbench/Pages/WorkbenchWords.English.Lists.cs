using ExamDocs.Intake.OwnList.Words;

namespace ExamDocs.Workbench.Pages;

/// <content>English, for the page that takes a list of the user's own.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class English
    {
        public override string TakeAsList => "Take it as your own list of kit: match its columns";
        public override string ListHow =>
            "This is taken for your own list of kit. Say what its columns and words are; what is proposed stands in the fields already. "
            + "Nothing in the list decides anything: an earlier \"pass\" is kept as a remark, and what the list has as out of use comes in "
            + "withdrawn.";
        public override string ListFormIncomplete => "What was sent is not whole, and nothing of it was kept. Choose once more.";
        public override string NextNoItems => "No row of the list is about an item of kit. See whether the columns are what you say.";
        public override string NextLookAtResult => "Next: look at what comes out below, then record the visit or download the workbook.";
        public override string Columns => "Columns";
        public override string ColumnHead => "Column";
        public override string HoldsHead => "Holds, for example";
        public override string SeemsHead => "Seems to be";
        public override string TakeAsHead => "Take it as";
        public override string ChooseOne => "choose";
        public override string Meanings => "What its words mean";
        public override string DatesQuestion => "In which order are the dates typed?";
        public override string MakersQuestion => "Maker and model stand in one column";
        public override string SplitMakers => "split them after the makers that the list shows";
        public override string TakeWhole => "take each value whole as the model";
        public override string AsOf => "Out of use since, where the list gives no day";
        public override string AsOfHow => "Your visit has to be on a later day.";
        public override string KindsOfKit => "Kinds of kit";
        public override string WordHead => "Word";
        public override string UnknownKind => "not known: it stays as it is in the list";
        public override string OutOfUseHeading => "In use or out of use";
        public override string OutOfUseHow =>
            "A word that is not known counts against the item until you say otherwise: the item comes in withdrawn, to be released.";
        public override string NotSettledUse => "not known: counts as out of use";
        public override string TakeAnswers => "Keep the answers and show what comes out";
        public override string WhatComesOut => "What comes out";
        public override string FirstSettle => "Nothing yet: first choose what is marked above.";
        public override string NothingIsExamined => "Nothing counts as examined: every item is still to be examined.";
        public override string ComesInAs => "Comes in as";
        public override string ToExamine => "to be examined";
        public override string ToKnow => "To know";
        public override string NotTaken => "Rows not taken, and why";
        public override string RecordList => "Record the visit here";
        public override string DownloadWorkbook => "Download the workbook";
        public override string DownloadMap => "Download these answers, to use them with --map";
        public override string ListIsOnlyRead => "Your list is only read; the visit or the workbook is made anew.";

        public override string ListCalled(string name) => $"Your own list: {name}";

        public override string NotADayBefore(string typed) => $"\"{typed}\" is not a day before today. All other answers were kept.";

        public override string NextSettle(int number) =>
            Text($"Next: choose what is marked, {number} {(number == 1 ? "thing" : "things")}.");

        public override string TakeColumnAs(string heading) => $"Take the column {heading} as";

        public override string TakeWordAs(string word) => $"Take {word} as";

        public override string ColourCalled(string colour) => $"Rows of their own colour ({colour})";

        public override string SurenessIs(Sureness sure) =>
            sure switch
            {
                Sureness.Yes => "sure",
                Sureness.Likely => "likely",
                _ => "a guess",
            };

        public override string UseIs(UseMeaning meaning) =>
            meaning switch
            {
                UseMeaning.Remark => "nothing against it: a remark",
                UseMeaning.Stored => "in store",
                UseMeaning.Lost => "lost",
                UseMeaning.Withdrawn => "out of use: comes in withdrawn",
                _ => "destroyed: comes in withdrawn",
            };

        public override string ForExample(IEnumerable<string> samples) => $"For example: {string.Join("; ", samples)}";

        public override string RowsOf(int rows) => Text($"{rows} {(rows == 1 ? "row" : "rows")}");

        public override string NotShown(int rows) =>
            Text($"{rows} more are not shown; they stay as proposed. What is not known among them counts against its items.");

        public override string ComeInWithdrawn(int items) =>
            Text(
                $"{items} {(items == 1 ? "comes" : "come")} in withdrawn, until a competent person releases {(items == 1 ? "it" : "them")}."
            );

        public override string RowNotTaken(string sheet, int row, string why) => Text($"{sheet}, row {row}: {why}");
    }
}
