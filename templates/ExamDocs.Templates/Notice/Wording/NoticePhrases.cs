using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.Notice.Wording;

/// <summary>Words of the notice of defect.</summary>
public abstract class NoticePhrases
{
    public static InEachLanguage<NoticePhrases> Languages { get; } = new(new English(), new German(), new French());

    /// <summary>In the language of the document that is being made.</summary>
    public static NoticePhrases Current => Languages.Current;

    public abstract string Title { get; }
    public abstract string ImminentRisk { get; }
    public abstract string Recipients { get; }
    public abstract string Employer { get; }
    public abstract string Owner { get; }
    public abstract string AuthorityHeading { get; }
    public abstract string AuthorityRecorded { get; }
    public abstract string AuthorityMissing { get; }
    public abstract string Premises { get; }
    public abstract string Item { get; }
    public abstract string Defects { get; }
    public abstract string Duty { get; }
    public abstract string Why { get; }
    public abstract string Told { get; }
    public abstract string ToldWhom { get; }
    public abstract string ToldHow { get; }
    public abstract string ToldOn { get; }
    public abstract string For { get; }
    public abstract string GivenBy { get; }
    public abstract string ReceivedBy { get; }
    public abstract string NoDetail { get; }
    public abstract string KeepApart { get; }
    public abstract IReadOnlyList<string> Cautions { get; }

    /// <summary>Of an item that nobody looked at.</summary>
    /// <param name="day">When it was taken out of use.</param>
    /// <param name="notice">Reference of the maker's safety notice that took it out of use.</param>
    public abstract string TakenOut(LocalDate? day, string notice);

    public abstract string WithdrawnOn { get; }
    public abstract string PremisesUnseen { get; }
    public abstract string GivenUnseenBy { get; }

    public abstract string DoNotUse { get; }

    public abstract string DoNotUseAfter(LocalDate? lastDay);

    public abstract string LastDay(LocalDate? lastDay);

    /// <summary>A risk is imminent, and no duty can be looked up.</summary>
    public abstract string LawNotKnown { get; }

    /// <summary>A copy is owed, and there is no report to copy.</summary>
    public abstract string ReportHeldBack { get; }
}
