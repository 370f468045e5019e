using ExamDocs.Core.Findings;
using ExamDocs.Intake.Photos;

namespace ExamDocs.Workbench.Pages;

/// <content>German, about photos.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class German
    {
        public override string AddPhoto => "Foto aufnehmen oder auswählen";
        public override string RemovePhoto => "Foto entfernen";
        public override string PhotoChangedMeanwhile =>
            "Eine andere Seite hat dieses Foto inzwischen geändert: laden Sie diese Seite neu und wählen Sie. Es wurde nichts ersetzt.";

        public override string AddPhotoOf(string question) => $"Foto: {question}";

        public override string RemovePhotoOf(string question) => $"Foto entfernen: {question}";

        public override string PhotoOf(string question) => $"Foto zu: {question}";

        public override string PhotoNotTaken(PhotoFault fault)
        {
            ArgumentNullException.ThrowIfNull(fault);
            return $"Nicht genommen: {Say(fault.Message)}. {Say(fault.Hint ?? fault.Rule.Hint)}";
        }
    }
}
