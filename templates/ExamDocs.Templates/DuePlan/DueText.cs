using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Templates.DuePlan.Wording;
using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.DuePlan;

/// <summary>Names and times of what falls due as they are printed.</summary>
internal static class DueText
{
    private const int MinutesOfHour = 60;

    public static string Category(string? id) => Printed.Text(Phrases.Category(Catalogue.Find(id), id));

    /// <summary>A month with its year, for example Mar 2027.</summary>
    public static string Month(YearMonth month) => Printed.ShortDay(new PartialDate(month.Year, month.Month));

    public static string Place(PlannedPlace at) => $"{Printed.Text(at.Employer)}, {Printed.Text(at.Premises)}";

    /// <summary>How long a visit takes, with what has no figure; empty where neither is known.</summary>
    public static string Time(PlannedVisit visit)
    {
        var time =
            visit.Minutes > 0 ? DuePhrases.Current.HoursAndMinutes(visit.Minutes / MinutesOfHour, visit.Minutes % MinutesOfHour) : null;
        var unknown =
            visit.Minutes > 0 && visit.WithoutFigure.Count > 0
                ? DuePhrases.Current.NoFigureFor(string.Join(", ", visit.WithoutFigure.Select(Category)))
                : null;
        return Printed.Join("; ", time, unknown);
    }
}
