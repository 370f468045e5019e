using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Templates.Lessons.Wording;

/// <summary>Words of what the records teach.</summary>
public abstract class LessonsPhrases
{
    public static InEachLanguage<LessonsPhrases> Languages { get; } = new(new English(), new German(), new French());

    /// <summary>In the language of the page that is being made.</summary>
    public static LessonsPhrases Current => Languages.Current;

    /// <summary>Stands in the margins too: no quotation mark.</summary>
    public abstract string Title { get; }
    public abstract string Lead { get; }
    public abstract string Whose { get; }
    public abstract string Everybody { get; }
    public abstract string Counted { get; }
    public abstract string VisitsAndItems(int visits, int items);
    public abstract string Period { get; }
    public abstract string ThisRegisterOnly { get; }

    public abstract string RatesHeading { get; }
    public abstract string RatesLead(int least);
    public abstract string Group { get; }
    public abstract string Items { get; }
    public abstract string Withdrawn { get; }
    public abstract string Share { get; }
    public abstract string Interval { get; }
    public abstract string TooFew { get; }
    public abstract string TooFewToCompare(int least);
    public abstract string MoreInWorkbook(int groups);

    /// <summary>What the groups of a table have in common, as its heading.</summary>
    public abstract string By(GroupedBy by);

    /// <param name="span">Such as 1 – 2 or 8 +.</param>
    public abstract string Years(string span);

    public abstract string SurvivalHeading { get; }
    public abstract string SurvivalLead { get; }
    public abstract string NoBridges { get; }
    public abstract string LeftOut(int bridges);
    public abstract string ManyComparisons { get; }
    public abstract string AllBridges { get; }
    public abstract string Bridges { get; }
    public abstract string Median { get; }
    public abstract string LeftAfter(int months);
    public abstract string PerHundredYears { get; }
    public abstract string AgainstOthers { get; }
    public abstract string NotReached { get; }
    public abstract string MonthsOfUse { get; }

    /// <summary>Beside a median that few bridges decide.</summary>
    public abstract string OnlyAtRisk(int bridges);

    /// <summary>For those who do not see the plot.</summary>
    public abstract string PlotTitle(string by);

    public abstract string WearHeading { get; }
    public abstract string WearLead { get; }
    public abstract string MedianWear { get; }
    public abstract string MiddleHalf { get; }

    public abstract string ReasonsHeading { get; }
    public abstract string ReasonsLead { get; }
    public abstract string NoReasons { get; }
    public abstract string Criterion { get; }

    public abstract string AgreementHeading { get; }
    public abstract string AgreementLead { get; }
    public abstract string NoPairs { get; }
    public abstract string AllTogether { get; }
    public abstract string Pairs { get; }
    public abstract string Alike { get; }
    public abstract string Kappa { get; }

    public abstract IReadOnlyList<string> Cautions { get; }
}
