using ExamDocs.Intake.OwnList.Words;
using ExamDocs.Intake.Vocabulary;

namespace ExamDocs.Intake.Tests.OwnList.Words;

/// <summary>What can be read in one way is read; what cannot waits for the order.</summary>
public sealed class ListDateTests
{
    [Theory]
    [InlineData("2024-03-12", "2024-03-12")]
    [InlineData("2024-03-12 00:00:00", "2024-03-12")]
    [InlineData("2024-03", "2024-03")]
    [InlineData("2024", "2024")]
    [InlineData("2024/03/12", "2024-03-12")]
    [InlineData("25/03/2024", "2024-03-25")]
    [InlineData("03/25/2024", "2024-03-25")]
    [InlineData("05/05/2024", "2024-05-05")]
    [InlineData("12.03.2024", "2024-03-12")]
    [InlineData("1.2.24", "2024-02-01")]
    [InlineData("12 March 2024", "2024-03-12")]
    [InlineData("12th of March 2024", "2024-03-12")]
    [InlineData("March 12, 2024", "2024-03-12")]
    [InlineData("12. März 2024", "2024-03-12")]
    [InlineData("1er févr. 2024", "2024-02-01")]
    [InlineData("août 2019", "2019-08")]
    [InlineData("Mar-24", "2024-03")]
    [InlineData("03/2024", "2024-03")]
    [InlineData("3.2024", "2024-03")]
    [InlineData("12/98", "1998-12")]
    public void One_reading(string typed, string expected) => Assert.Equal(expected, ListDate.Of(typed)?.Only?.ToString());

    [Theory]
    [InlineData("03/04/2024", "2024-04-03", "2024-03-04")]
    [InlineData("3-4-24", "2024-04-03", "2024-03-04")]
    public void Two_readings(string typed, string dayFirst, string monthFirst)
    {
        var date = ListDate.Of(typed)!;
        Assert.Null(date.Only);
        Assert.Null(date.In(null));
        Assert.Equal(dayFirst, date.In(DateOrder.DayFirst)?.ToString());
        Assert.Equal(monthFirst, date.In(DateOrder.MonthFirst)?.ToString());
    }

    [Theory]
    [InlineData("")]
    [InlineData("31/02/2024")]
    [InlineData("30.02.2024")]
    [InlineData("13/2024")]
    [InlineData("03/04")]
    [InlineData("Q1 2024")]
    [InlineData("45231")]
    [InlineData("K-12")]
    [InlineData("March")]
    [InlineData("40 March 2024")]
    [InlineData("1850")]
    public void No_date(string typed) => Assert.Null(ListDate.Of(typed));
}
