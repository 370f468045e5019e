namespace ExamDocs.Intake.Vocabulary;

/// <summary>The century of a year that is typed with two digits. Common practice, no source.</summary>
internal static class TwoDigitYear
{
    /// <summary>Years from here on belong to the century before.</summary>
    private const int FirstOfLastCentury = 70;

    /// <param name="year">From 0 to 99.</param>
    public static int Whole(int year) => year + (year < FirstOfLastCentury ? 2000 : 1900);
}
