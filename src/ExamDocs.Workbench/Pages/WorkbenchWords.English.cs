using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Verifying;

namespace ExamDocs.Workbench.Pages;

/// <content>English.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class English : WorkbenchWords
    {
        public override string Tag => "en";
        public override Terms Terms => Terms.English;

        public override string Desk => "Desk";
        public override string Find => "Find";
        public override string Returns => "Returns";
        public override string Verify => "Verify";
        public override string WhoYouAre => "Who you are";
        public override string SkipToContent => "Skip to the content";
        public override string Caution =>
            "The maker's instructions, local law and the competent person's judgement come first, whatever this page says.";
        public override string Back => "Back";
        public override string Failed => "That did not work";
        public override string ProgramFault =>
            "The program made a mistake. Nothing was issued by it; what the terminal shows helps to mend it.";

        public override string BringIn => "Bring in a visit";
        public override string BringInHow =>
            "A filled-in workbook (.xlsx), a record (.json), what the form for the yard saved (.json, .zip), or tables (.csv); several "
            + "files of one visit together.";
        public override string DropHere => "Drop files here, or choose them";
        public override string BringInNow => "Bring in";
        public override string OnTheDesk => "On the desk";
        public override string NothingOnTheDesk => "Nothing yet. What you bring in lies here until it is issued, and after.";
        public override string NothingDropped => "No file came, or it is empty. Choose one and try again.";

        public override string TooManyFiles(int most) => Text($"At most {most} files at a time: bring the rest in after these.");

        public override string NotOfAKind(string name) =>
            $"{name} cannot be brought in: it must end with .xlsx, .json, .csv, .pdf or .zip.";

        public override string Round(int number) =>
            number == 1 ? "as brought in" : Text($"mended {number - 1} {(number == 2 ? "time" : "times")}");

        public override string RegisterAt(string place) => $"Register: {place}";

        public override string NextMend(int errors) =>
            Text($"Next: mend {errors} {(errors == 1 ? "error" : "errors")}, or issue what may be issued now.");

        public override string NextDecide => "Next: look at the outcomes, then issue.";
        public override string NextIssued => "Done. The documents are below; print the labels and send the rest.";
        public override string NextUnreadable => "Next: drop a file that can be read.";

        public override string Unreadable(string file, string why) => $"{file} cannot be read: {why}";

        public override string Mend => "Mend";
        public override string NothingToMend => "Nothing was found that needs mending.";
        public override string TypeInstead => "What to do";
        public override string Error => "error";
        public override string Warning => "warning";
        public override string Note => "note";

        public override string Further(int number) => Text($"and {number} like it");

        public override string Annotated => "Download the workbook with notes";
        public override string AnnotatedHow => "Each finding stands as a note on its cell. Mend there, then drop it below.";
        public override string DropMended => "Drop the mended file";
        public override string Decided => "Outcomes";
        public override string Item => "Item";
        public override string OutcomeHead => "Outcome";
        public override string NotAfter => "Not after";
        public override string NextBy => "Next examination by";
        public override string Why => "Why";
        public override string NoId => "(no id)";

        public override string RowsNotRead(int rows) =>
            Text($"{rows} {(rows == 1 ? "row was" : "rows were")} not read: nothing is decided about what is typed there.");

        public override string Issue => "Issue";
        public override string IssueHow =>
            "Reports and next-examination labels for what may be used; notices and do-not-use labels for what may not.";
        public override string IssueNow => "Issue the documents";
        public override string PerItem => "One report for each item";
        public override string Reason => "Why it is corrected";
        public override string ReasonHow => "Only where an earlier version was issued; printed on what replaces it.";

        public override string IssuingGoesOn => "You may close this page: it goes on.";
        public override string Stop => "Stop after the document in hand";

        public override string Stopped(string why) => $"Stopped: {why}.";

        public override string Issued(int documents) => Text($"{documents} {(documents == 1 ? "document is" : "documents are")} out.");

        public override string Refused => "Not issued";
        public override string Documents => "Documents";
        public override string AllAsZip => "All in one folder (zip)";
        public override string Labels => "Labels";
        public override string LabelsHow => "Print at actual size, without scaling.";
        public override string Stock => "Printed on";
        public override string FirstPlace => "First free place on the sheet";
        public override string MakeSheet => "Make the sheet";
        public override string NoLabels => "No label of this kind is called for.";
        public override string MendedSince => "Something was mended since: issue again.";

        public override string FindHow =>
            "Id, serial number, owner's mark, maker, model, employer, document number, or the scanned code of a label.";
        public override string FindNow => "Find";

        public override string NothingFound(string asked) => $"The register knows nothing of \"{asked}\". Treat it as never examined.";

        public override string NoneIsMarked(string asked) => $"No item is marked \"{asked}\". These have its words:";

        public override string SpeltLike(string id) => $"Spelt much like {id}:";

        public override string Found(int shown, int inAll) =>
            shown == inAll
                ? Text($"{inAll} {(inAll == 1 ? "item" : "items")}, the worst first")
                : Text($"{shown} of {inAll} items; type more to narrow it down");

        public override string Serial => "Serial number";
        public override string Maker => "Maker and model";
        public override string Owner => "Owner";
        public override string History => "History";
        public override string NotRecorded => "not recorded";
        public override string ReturnsHow => "Scan or type one marking after the other. What may not be used comes first.";
        public override string Scan => "Scan or type a marking";
        public override string Add => "Add";
        public override string Unknown => "UNKNOWN: DO NOT USE";
        public override string UnknownWhy => "The register knows no item with this marking.";

        public override string ListIsFull(int most) => Text($"The list is full: {most} items. Print it, then start another.");

        public override string StandingIs(Standing standing) =>
            standing switch
            {
                Standing.Withdrawn => "DO NOT USE",
                Standing.Held => "NOT DETERMINED: DO NOT USE",
                Standing.Overdue => "EXAMINATION OVERDUE: DO NOT USE",
                Standing.NotIssued => "NO CURRENT REPORT: DO NOT USE",
                _ => "In service",
            };

        public override string OutcomeIs(Outcome outcome) =>
            outcome switch
            {
                Outcome.Fit => "fit",
                Outcome.FitUntil => "fit until a day",
                Outcome.Undetermined => "not determined",
                _ => "withdrawn",
            };

        public override string Print => "Print this list";

        public override string VerifyHow =>
            "Drop documents (PDF) to see whether they are genuine, whole and current. Nothing of them is kept.";
        public override string VerifyNow => "Verify";

        public override string VerdictIs(Verdict verdict) =>
            verdict switch
            {
                Verdict.Valid => "Valid",
                Verdict.NotValid => "NOT VALID",
                _ => "Cannot tell",
            };

        public override string Settle => "What would settle it";

        public override string WhoHow => "Asked once. It goes onto the letterhead, and is offered when you record a visit.";
        public override string Name => "Your name";
        public override string Qualifications => "Qualifications";
        public override string Address => "Address";
        public override string Firm => "Firm on the letterhead";
        public override string Contact => "Telephone for questions";
        public override string Language => "Language";
        public override string Keep => "Keep";
    }
}
