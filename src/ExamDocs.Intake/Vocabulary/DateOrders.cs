namespace ExamDocs.Intake.Vocabulary;

/// <summary>The order in which dates are typed.</summary>
public enum DateOrder
{
    DayFirst,
    MonthFirst,
    YearFirst,
}

/// <summary>The words for them, on the visit sheet and in a map.</summary>
internal static class DateOrders
{
    /// <summary>In the order of <see cref="DateOrder"/>.</summary>
    public static IReadOnlyList<string> Words { get; } = ["day-month-year", "month-day-year", "year-month-day"];

    public static string Word(DateOrder order) => Words[(int)order];

    /// <summary>Null where the text means none of them.</summary>
    public static DateOrder? Find(string typed)
    {
        var word = Synonyms.Find(typed, Words)?.Word ?? Synonyms.Find(typed.Replace('/', '-'), Words)?.Word;
        return word is null ? null : (DateOrder)Words.ToList().IndexOf(word);
    }
}
