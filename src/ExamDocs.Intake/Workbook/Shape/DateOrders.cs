namespace ExamDocs.Intake.Workbook.Shape;

/// <summary>The order in which a workbook says that its dates are typed.</summary>
internal enum DateOrder
{
    DayFirst,
    MonthFirst,
    YearFirst,
}

/// <summary>The words for them on the visit sheet.</summary>
internal static class DateOrders
{
    /// <summary>In the order of <see cref="DateOrder"/>.</summary>
    public static IReadOnlyList<string> Words { get; } = ["day-month-year", "month-day-year", "year-month-day"];

    /// <summary>Null where the word is not one of them.</summary>
    public static DateOrder? Find(string word) =>
        Words.ToList().IndexOf(Heading.Normal(word).Replace(' ', '-').Replace('/', '-')) is >= 0 and var at ? (DateOrder)at : null;
}
