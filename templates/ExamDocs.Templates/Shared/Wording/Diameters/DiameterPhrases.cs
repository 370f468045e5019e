using NodaTime;

namespace ExamDocs.Templates.Shared.Wording.Diameters;

/// <summary>Words of the plots of diameters: one profile, and the trend from examination to examination.</summary>
public abstract class DiameterPhrases
{
    public static InEachLanguage<DiameterPhrases> Languages { get; } = new(new English(), new German(), new French());

    /// <summary>In the language of the document that is being made.</summary>
    public static DiameterPhrases Current => Languages.Current;

    public abstract string NoTolerance { get; }
    public abstract string Tolerance(string nominal, string tolerance, string low, string high, string source);

    public abstract string NominalOnly(string nominal, string source);

    public abstract string PlotTitle(string item);
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

    /// <summary>A whole sentence, with the places in it.</summary>
    public abstract string StandingOut(string places);

    public abstract string TooCloseToCall(string places);
}
