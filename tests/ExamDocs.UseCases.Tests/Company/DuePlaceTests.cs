using ExamDocs.UseCases.Company;

namespace ExamDocs.UseCases.Tests.Company;

/// <summary>Which premises are one, and which are two: a visit is made to one place.</summary>
public sealed class DuePlaceTests
{
    private const string Employer = "Alder Vale Ltd";

    [Theory]
    [InlineData("The yard", "the  Yard")]
    [InlineData("The yard", "The yard.")]
    [InlineData("St. Ann's Depot", "St Anns Depot")]
    [InlineData("1 Some Lane, Norshire", "1 Some Lane Norshire")]
    public void Spellings_of_one_place(string one, string other) =>
        Assert.Equal(new DuePlace(Employer, one).Key, new DuePlace("ALDER VALE LIMITED", other).Key);

    [Theory]
    [InlineData("Depot 2, 1 Mill Lane", "Depot 21 Mill Lane")]
    [InlineData("Unit 1-1", "Unit 11")]
    [InlineData("Yard SE", "Yard")]
    [InlineData("Yard A", "Yard AS")]
    [InlineData("Yard", null)]
    public void Two_places(string one, string? other) =>
        Assert.NotEqual(new DuePlace(Employer, one).Key, new DuePlace(Employer, other).Key);
}
