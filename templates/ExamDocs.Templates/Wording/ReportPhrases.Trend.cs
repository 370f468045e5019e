using NodaTime;

namespace ExamDocs.Templates.Wording;

public abstract partial class ReportPhrases
{
    public abstract string TrendHeading { get; }
    public abstract string TrendLegend { get; }
    public abstract string TrendWithoutLimits { get; }
    public abstract string NothingProjected { get; }
    public abstract string NoApproach { get; }
    public abstract string TrendTitle(string item);

    public abstract string TrendLimits(string least, string most, string source);

    public abstract string Proposal(LocalDate? on, bool thinning, string perYear, string limit, LocalDate? byBand, LocalDate? byLine);

    public abstract string AfterService(LocalDate? end);

    public abstract string Millimetres(string number);

    public abstract string MeanAt(string mean, string position);

    /// <summary>Followed by nothing: the places are in it.</summary>
    public abstract string StandingOut(string places);

    public abstract string TooCloseToCall(string places);
}
