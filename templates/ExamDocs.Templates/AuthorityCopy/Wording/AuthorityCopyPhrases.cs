using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Templates.AuthorityCopy.Wording;

/// <summary>Words of the cover under which a copy of the report goes to the enforcing authority.</summary>
public abstract class AuthorityCopyPhrases
{
    public static InEachLanguage<AuthorityCopyPhrases> Languages { get; } = new(new English(), new German(), new French());

    /// <summary>In the language of the document that is being made.</summary>
    public static AuthorityCopyPhrases Current => Languages.Current;

    public abstract string Title { get; }
    public abstract string To { get; }
    public abstract string ByLaw { get; }
    public abstract string From { get; }
    public abstract string Why { get; }
    public abstract string Which { get; }
    public abstract string ColumnItem { get; }
    public abstract string ColumnDefect { get; }
    public abstract string ColumnState { get; }
    public abstract string Employer { get; }
    public abstract string Owner { get; }
    public abstract string Premises { get; }
    public abstract string ExaminedOn { get; }
    public abstract string Told { get; }
    public abstract string Enclosed { get; }
    public abstract string SentBy { get; }
    public abstract string RunningTitle(string original);
    public abstract string Lead(string original);
    public abstract string Imminent(Duty duty);
    public abstract string Copy(string original, string number);

    /// <summary>The same where report and copy are signed electronically, each in its own file.</summary>
    public abstract string SignedCopy(string original, string number);
    public abstract string Original(string original);
    public abstract string Notified(Notification? told);
}
