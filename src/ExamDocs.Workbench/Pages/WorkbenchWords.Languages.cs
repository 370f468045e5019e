using System.Globalization;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Sentences;
using ExamDocs.Intake.Drafting;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.Workbench.Pages;

/// <content>The languages there are.</content>
public abstract partial class WorkbenchWords
{
    private static readonly WorkbenchWords[] All = [new English(), new German(), new French()];

    /// <summary>The words of this language; English where there are none.</summary>
    public static WorkbenchWords In(string tag) => All.FirstOrDefault(w => string.Equals(w.Tag, tag, StringComparison.Ordinal)) ?? All[0];

    /// <summary>What to say where the register is not there; null where it is.</summary>
    public string? Missing(RegisterPlace register) => register.Exists ? null : Say(register.Missing);

    /// <summary>A message of the program in this language.</summary>
    public string Say(Message message)
    {
        ArgumentNullException.ThrowIfNull(message);
        return message.In(Messages);
    }

    /// <summary>Why an item has its outcome, in this language.</summary>
    public string Say(Reason reason)
    {
        ArgumentNullException.ThrowIfNull(reason);
        var said = reason.Said.In(Sentences);
        return said.Length > 0 ? char.ToUpper(said[0], CultureInfo.InvariantCulture) + said[1..] : said;
    }

    /// <summary>Of a visit recorded here: for whom, when and under what reference, as far as that is known.</summary>
    public string VisitCalled(RecordDraft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        string[] parts = [draft.Text("/visit/employer/name"), draft.Text("/visit/examinedOn"), draft.Text("/visit/reference")];
        var called = string.Join(", ", parts.Where(p => p.Length > 0));
        return called.Length > 0 ? called : VisitRecordedHere;
    }

    /// <summary>Messages of the program in this language.</summary>
    public MessageLanguage Messages => ReadPrintStyle.Screen(Tag) ?? MessageLanguage.English;

    private SentenceBook Sentences =>
        Tag switch
        {
            "de" => SentenceBook.German,
            "fr" => SentenceBook.French,
            _ => SentenceBook.English,
        };

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    /// <summary>A day as this language writes it.</summary>
    public string Day(LocalDate day) => Messages.Value(day);
}
