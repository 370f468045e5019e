using ExamDocs.Core.Criteria;
using ExamDocs.Core.Statistics;
using ExamDocs.Templates.Lessons.Wording;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Templates.Lessons;

/// <summary>Numbers and names of the lessons as they are printed.</summary>
internal static class LessonsText
{
    /// <summary>Places after the point of an age in months, of a rate, and of a wear.</summary>
    private const string Tenths = "0.0";
    private const string Thousandths = "0.000";

    /// <summary>Below it a probability is printed as less than this.</summary>
    private const double LeastProbability = 0.001;

    public static string Percent(double share) => $"{Whole(share * 100)} %";

    public static string Percent(ConfidenceInterval? interval) =>
        interval is null ? "–" : $"{Whole(interval.Low * 100)} – {Whole(interval.High * 100)} %";

    public static string Rate(double value) => Language.Current.Notation.Number(value, Tenths);

    public static string Rate(ConfidenceInterval interval) => $"{Rate(interval.Low)} – {Rate(interval.High)}";

    public static string Mm(double value) => Language.Current.Notation.Number(value, Thousandths);

    public static string Months(double? age) => age is { } months ? Rate(months) : LessonsPhrases.Current.NotReached;

    public static string Probability(double p) => p < LeastProbability ? $"< {Mm(LeastProbability)}" : Mm(p);

    /// <summary>The name of a group: what was recorded, or the catalogue's word.</summary>
    public static string Name(GroupedBy by, string? name) =>
        by switch
        {
            GroupedBy.Everything => LessonsPhrases.Current.AllBridges,
            GroupedBy.Category when name is not null => Category(name),
            GroupedBy.Age when name is not null => LessonsPhrases.Current.Years(name),
            _ => Printed.Text(name),
        };

    public static string Category(string? id) => Printed.Text(Phrases.Category(Catalogue.Find(id), id));

    private static string Whole(double value) => Language.Current.Notation.Number(Math.Round(value), "0");
}
