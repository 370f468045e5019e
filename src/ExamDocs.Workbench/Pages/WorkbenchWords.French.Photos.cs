using ExamDocs.Core.Findings;
using ExamDocs.Intake.Photos;

namespace ExamDocs.Workbench.Pages;

/// <content>French, about photos.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class French
    {
        public override string AddPhoto => "Prendre ou choisir une photo";
        public override string RemovePhoto => "Retirer la photo";
        public override string PhotoChangedMeanwhile =>
            "Une autre page a changé cette photo entre-temps\u00A0: rechargez cette page et choisissez. Rien n’a été remplacé.";

        public override string AddPhotoOf(string question) => $"Photo\u00A0: {question}";

        public override string RemovePhotoOf(string question) => $"Retirer la photo\u00A0: {question}";

        public override string PhotoOf(string question) => $"Photo à propos de\u00A0: {question}";

        public override string PhotoNotTaken(PhotoFault fault)
        {
            ArgumentNullException.ThrowIfNull(fault);
            return $"Non prise\u00A0: {Say(fault.Message)}. {Say(fault.Hint ?? fault.Rule.Hint)}";
        }
    }
}
