namespace ExamDocs.Workbench.Pages;

/// <content>English, for the page that prints what the records teach.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class English
    {
        public override string Lessons => "What the records teach";
        public override string LessonsHow =>
            "How many items were withdrawn for wear or a defect, how long rope bridges last, how fast they get thinner, "
            + "why kit is withdrawn, and whether two examiners see the same: counted from the register.";
        public override string LessonsDecideNothing => "These numbers are of this register only, and decide on no item.";
        public override string NothingToLearn => "No examination is on record: there is nothing to count.";
        public override string WhoseKit => "Whose kit";
        public override string EverybodysKit => "Everybody's in the register";
        public override string DownloadLessons => "Download the pages (PDF)";
        public override string DownloadNumbers => "Download the numbers (workbook)";
        public override string LessonsTakeAMoment => "The pages are printed for you alone and get no number. That takes a few seconds.";
    }
}
