using System.Globalization;

namespace ExamDocs.Templates.DuePlan.Wording;

/// <inheritdoc />
internal sealed class English : DuePhrases
{
    public override string Title => "What falls due";
    public override string Lead => "A plan made from the decisions in one register. It is no report and has no number.";
    public override string Whose => "Whose kit";
    public override string Everybody => "everybody's in the register";
    public override string Period => "Falls due";
    public override string Counted => "Items";

    public override string DueAndApart(int due, int apart) => $"to be examined: {N(due)}; not to be used: {N(apart)}";

    public override string DecidesNothing => "This page decides nothing: it tells what the decisions on record say on its day.";

    public override string ApartHeading => "Not to be used";
    public override string ApartLead =>
        "Withdrawn, held or overdue on the day of this page, whatever falls due when. No visit is proposed for it.";

    public override string TimelineHeading => "Month by month";
    public override string TimelineLead =>
        "Above each line stands how many items fall due in the month; each stroke is a day. A diamond is the last day of a proposed visit.";

    public override string NothingDue => "Nothing falls due in this time.";
    public override string VisitRow => "visits proposed";

    public override string PlotTitle(string place) => $"What falls due by month: {place}";

    public override string MonthsHeading => "How much in each month";
    public override string Month => "Month";
    public override string Employer => "Employer";
    public override string Premises => "Premises";
    public override string Category => "Category";
    public override string Items => "Items";

    public override string VisitsHeading => "Visits proposed";
    public override string VisitsLead =>
        "Each on its day or before it. An item may come earlier than it must, never later. Public holidays and weekends are not looked at.";

    public override string OnOrBefore => "On or before";
    public override string Where => "Where";
    public override string Time => "Time";
    public override string Which => "Which items";

    public override string HoursAndMinutes(int hours, int minutes) => $"{N(hours)} h {N(minutes)} min";

    public override string NoFigureFor(string categories) => $"no figure for {categories}";

    public override string ListHeading => "Item by item";
    public override string FallsDue => "Falls due";
    public override string Item => "Item";
    public override string Serial => "Serial number";
    public override string NextBy => "Next examination by";
    public override string ToKnow => "To be known";

    public override string TimeNotMeasured =>
        "Times are the user's own figures. Records hold no times of day, so how long past visits took cannot be measured from them.";

    public override string LetterTitle => "Thorough examinations that fall due";

    public override string LetterLead(string from, string to, string asOf) =>
        $"This kit of yours has to be examined from {from} to {to} to stay in use, by what is on record on {asOf}. Please have it ready "
        + "by the days named. On the day itself it may still be used, after it no longer.";

    public override string LetterRing => "If kit is missing here, or is yours no longer, please tell us.";

    private static string N(int number) => number.ToString(CultureInfo.InvariantCulture);
}
