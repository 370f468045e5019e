using ExamDocs.Intake.Vocabulary;

namespace ExamDocs.Intake.Tests.Vocabulary;

public sealed class MonthNamesTests
{
    [Fact]
    public void No_name_stands_for_two_months_and_each_month_has_its_names()
    {
        Assert.Equal(12, MonthNames.All.Count);
        var names = MonthNames.All.SelectMany(m => m).ToList();
        Assert.Equal(names.Count, names.Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void The_calendars_own_names_are_known_in_three_languages()
    {
        foreach (var language in (string[])["en-GB", "de-DE", "fr-FR"])
        {
            var names = System.Globalization.CultureInfo.GetCultureInfo(language).DateTimeFormat.MonthNames;
            Assert.SkipWhen(names[0] is "M01", "the machine has no calendars of other languages");
            for (var month = 1; month <= 12; month++)
                Assert.Equal(month, MonthNames.Find(names[month - 1]));
        }
    }

    [Theory]
    [InlineData("Sept.", 9)]
    [InlineData("MÄRZ", 3)]
    [InlineData("juil.", 7)]
    [InlineData("jui", null)]
    [InlineData("ju", null)]
    [InlineData("marchs", null)]
    public void A_name_is_whole_or_a_usual_short_form(string name, int? month) => Assert.Equal(month, MonthNames.Find(name));
}
