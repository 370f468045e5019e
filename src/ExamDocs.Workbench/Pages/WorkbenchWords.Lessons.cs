namespace ExamDocs.Workbench.Pages;

/// <content>What the page says that prints what the records teach.</content>
public abstract partial class WorkbenchWords
{
    public abstract string Lessons { get; }
    public abstract string LessonsHow { get; }
    public abstract string LessonsDecideNothing { get; }
    public abstract string NothingToLearn { get; }
    public abstract string WhoseKit { get; }
    public abstract string EverybodysKit { get; }
    public abstract string DownloadLessons { get; }
    public abstract string DownloadNumbers { get; }
    public abstract string LessonsTakeAMoment { get; }
}
