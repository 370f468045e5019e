using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Templates.DuePlan.Wording;

/// <summary>Words of the plan and of the letters about what falls due.</summary>
public abstract class DuePhrases
{
    public static InEachLanguage<DuePhrases> Languages { get; } = new(new English(), new German(), new French());

    /// <summary>In the language of the page that is being made.</summary>
    public static DuePhrases Current => Languages.Current;

    /// <summary>Stands in the margins too: no quotation mark.</summary>
    public abstract string Title { get; }
    public abstract string Lead { get; }
    public abstract string Whose { get; }
    public abstract string Everybody { get; }
    public abstract string Period { get; }
    public abstract string Counted { get; }
    public abstract string DueAndApart(int due, int apart);
    public abstract string DecidesNothing { get; }

    public abstract string ApartHeading { get; }
    public abstract string ApartLead { get; }

    public abstract string TimelineHeading { get; }
    public abstract string TimelineLead { get; }
    public abstract string NothingDue { get; }

    /// <summary>Name of the row with the proposed visits.</summary>
    public abstract string VisitRow { get; }

    /// <summary>For those who do not see the plot.</summary>
    public abstract string PlotTitle(string place);

    public abstract string MonthsHeading { get; }
    public abstract string Month { get; }
    public abstract string Employer { get; }
    public abstract string Premises { get; }
    public abstract string Category { get; }
    public abstract string Items { get; }

    public abstract string VisitsHeading { get; }
    public abstract string VisitsLead { get; }
    public abstract string OnOrBefore { get; }
    public abstract string Where { get; }
    public abstract string Time { get; }
    public abstract string Which { get; }
    public abstract string HoursAndMinutes(int hours, int minutes);
    public abstract string NoFigureFor(string categories);

    public abstract string ListHeading { get; }
    public abstract string FallsDue { get; }
    public abstract string Item { get; }
    public abstract string Serial { get; }
    public abstract string NextBy { get; }
    public abstract string ToKnow { get; }

    public abstract string TimeNotMeasured { get; }

    /// <summary>Stands in the margins too: no quotation mark.</summary>
    public abstract string LetterTitle { get; }
    public abstract string LetterLead(string from, string to, string asOf);
    public abstract string LetterRing { get; }
}
