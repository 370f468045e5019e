using ExamDocs.Core.Findings;
using ExamDocs.Intake.Photos;

namespace ExamDocs.Workbench.Pages;

/// <content>English, about photos.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class English
    {
        public override string AddPhoto => "Take or choose a photo";
        public override string RemovePhoto => "Take it off";
        public override string PhotoChangedMeanwhile =>
            "Another page changed this photo meanwhile: load this page again and choose. Nothing was replaced.";

        public override string AddPhotoOf(string question) => $"Photo: {question}";

        public override string RemovePhotoOf(string question) => $"Take it off: {question}";

        public override string PhotoOf(string question) => $"Photo of {question}";

        public override string PhotoNotTaken(PhotoFault fault)
        {
            ArgumentNullException.ThrowIfNull(fault);
            return $"Not taken: {Say(fault.Message)}. {Say(fault.Hint ?? fault.Rule.Hint)}";
        }
    }
}
