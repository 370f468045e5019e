using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Verifying;

namespace ExamDocs.Workbench.Pages;

/// <summary>What the pages say, in one language. Findings, reasons and documents have words of their own.</summary>
public abstract partial class WorkbenchWords
{
    /// <summary>As in BCP 47.</summary>
    public abstract string Tag { get; }

    /// <summary>Names and questions of the catalogue in this language.</summary>
    public abstract Terms Terms { get; }

    public abstract string Desk { get; }
    public abstract string Find { get; }
    public abstract string Returns { get; }
    public abstract string Verify { get; }
    public abstract string WhoYouAre { get; }
    public abstract string SkipToContent { get; }
    public abstract string Caution { get; }
    public abstract string Back { get; }
    public abstract string Failed { get; }
    public abstract string ProgramFault { get; }

    public abstract string BringIn { get; }
    public abstract string BringInHow { get; }
    public abstract string DropHere { get; }
    public abstract string BringInNow { get; }
    public abstract string OnTheDesk { get; }
    public abstract string NothingOnTheDesk { get; }
    public abstract string NothingDropped { get; }
    public abstract string TooManyFiles(int most);
    public abstract string NotOfAKind(string name);
    public abstract string Round(int number);
    public abstract string RegisterAt(string place);

    public abstract string NextMend(int errors);
    public abstract string NextDecide { get; }
    public abstract string NextIssued { get; }
    public abstract string NextUnreadable { get; }
    public abstract string Unreadable(string file, string why);
    public abstract string Mend { get; }
    public abstract string NothingToMend { get; }
    public abstract string TypeInstead { get; }
    public abstract string Error { get; }
    public abstract string Warning { get; }
    public abstract string Note { get; }
    public abstract string Further(int number);
    public abstract string Annotated { get; }
    public abstract string AnnotatedHow { get; }
    public abstract string DropMended { get; }
    public abstract string Decided { get; }
    public abstract string Item { get; }
    public abstract string OutcomeHead { get; }
    public abstract string NotAfter { get; }
    public abstract string NextBy { get; }
    public abstract string Why { get; }
    public abstract string NoId { get; }
    public abstract string RowsNotRead(int rows);

    public abstract string Issue { get; }
    public abstract string IssueHow { get; }
    public abstract string IssueNow { get; }
    public abstract string PerItem { get; }
    public abstract string Reason { get; }
    public abstract string ReasonHow { get; }
    public abstract string IssuingGoesOn { get; }
    public abstract string Stop { get; }
    public abstract string Stopped(string why);
    public abstract string Issued(int documents);
    public abstract string Refused { get; }
    public abstract string Documents { get; }
    public abstract string AllAsZip { get; }
    public abstract string Labels { get; }
    public abstract string LabelsHow { get; }
    public abstract string Stock { get; }
    public abstract string FirstPlace { get; }
    public abstract string MakeSheet { get; }
    public abstract string NoLabels { get; }
    public abstract string MendedSince { get; }

    public abstract string FindHow { get; }
    public abstract string FindNow { get; }
    public abstract string NothingFound(string asked);
    public abstract string NoneIsMarked(string asked);
    public abstract string SpeltLike(string id);
    public abstract string Found(int shown, int inAll);
    public abstract string Serial { get; }
    public abstract string Maker { get; }
    public abstract string Owner { get; }
    public abstract string History { get; }
    public abstract string NotRecorded { get; }
    public abstract string ReturnsHow { get; }
    public abstract string Scan { get; }
    public abstract string Add { get; }
    public abstract string Unknown { get; }
    public abstract string UnknownWhy { get; }
    public abstract string ListIsFull(int most);
    public abstract string StandingIs(Standing standing);
    public abstract string OutcomeIs(Outcome outcome);
    public abstract string Print { get; }

    public abstract string VerifyHow { get; }
    public abstract string VerifyNow { get; }
    public abstract string VerdictIs(Verdict verdict);
    public abstract string Settle { get; }

    public abstract string WhoHow { get; }
    public abstract string Name { get; }
    public abstract string Qualifications { get; }
    public abstract string Address { get; }
    public abstract string Firm { get; }
    public abstract string Contact { get; }
    public abstract string Language { get; }
    public abstract string Keep { get; }
}
