using ExamDocs.Core.Regimes;
using NodaTime;

namespace ExamDocs.Templates.Wording;

/// <summary>Words of the notice of defect.</summary>
public abstract class NoticePhrases
{
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

    public abstract string Authority(Recipient whom, string source, Confidence confidence);

    public abstract string DoNotUse { get; }

    public abstract string DoNotUseAfter(LocalDate? lastDay);

    public abstract string LastDay(LocalDate? lastDay);
}
