using ExamDocs.Intake.Photos;

namespace ExamDocs.Workbench.Pages;

/// <content>What the page of an item says about photos.</content>
public abstract partial class WorkbenchWords
{
    public abstract string AddPhoto { get; }
    public abstract string RemovePhoto { get; }
    public abstract string PhotoChangedMeanwhile { get; }
    public abstract string AddPhotoOf(string question);
    public abstract string RemovePhotoOf(string question);
    public abstract string PhotoOf(string question);
    public abstract string PhotoNotTaken(PhotoFault fault);
}
