using System.Globalization;
using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared;
using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Documents.Tests.Languages;

/// <summary>Days and numbers by language, held against the culture data of .NET.</summary>
public sealed class NotationTests
{
    public static TheoryData<string, string> Cultures => new() { { "de", "de-DE" }, { "fr", "fr-FR" } };

    [Theory]
    [MemberData(nameof(Cultures))]
    public void Months_are_those_of_the_culture(string tag, string culture) =>
        Assert.Equal(CultureInfo.GetCultureInfo(culture).DateTimeFormat.MonthGenitiveNames.Take(12), Language.Find(tag)!.Notation.Months);

    [Fact]
    public void English_months_are_the_abbreviations_of_the_invariant_culture() =>
        Assert.Equal(CultureInfo.InvariantCulture.DateTimeFormat.AbbreviatedMonthNames.Take(12), Language.English.Notation.Months);

    [Theory]
    [MemberData(nameof(Cultures))]
    public void Decimals_stand_behind_the_sign_of_the_culture(string tag, string culture)
    {
        var notation = Language.Find(tag)!.Notation;
        var numbers = CultureInfo.GetCultureInfo(culture).NumberFormat;
        Assert.Equal(numbers.NumberDecimalSeparator, notation.Decimal);
        Assert.Equal(11.25m.ToString("0.00", numbers), notation.Number(11.250m, "0.00"));
        Assert.Equal(11.0m.ToString(numbers), notation.Number(11.0m));
    }

    [Theory]
    [InlineData("en", 11, "11 May 2026")]
    [InlineData("de", 11, "11. Mai 2026")]
    [InlineData("fr", 11, "11 mai 2026")]
    [InlineData("de", 1, "1. Mai 2026")]
    [InlineData("fr", 1, "1er mai 2026")]
    [InlineData("fr", 2, "2 mai 2026")]
    public void A_day_has_its_month_as_a_word(string tag, int day, string written) =>
        Assert.Equal(written, Language.Find(tag)!.In(() => Printed.Day(new LocalDate(2026, 5, day))));

    [Theory]
    [MemberData(nameof(Cultures))]
    public void Every_day_of_a_year_reads_back_to_itself_by_the_culture(string tag, string culture)
    {
        var notation = Language.Find(tag)!.Notation;
        var pattern = tag == "de" ? "d. MMMM yyyy" : "d MMMM yyyy";
        for (var day = new LocalDate(2024, 1, 1); day.Year == 2024; day = day.PlusDays(1))
        {
            var written = notation.Day(day).Replace("1er ", "1 ", StringComparison.Ordinal);
            Assert.Equal(day.ToDateTimeUnspecified(), DateTime.ParseExact(written, pattern, CultureInfo.GetCultureInfo(culture)));
        }
    }

    [Theory]
    [InlineData("en", "May 2024", "2024")]
    [InlineData("de", "Mai 2024", "2024")]
    [InlineData("fr", "mai 2024", "2024")]
    public void A_month_or_a_year_alone_stays_one(string tag, string month, string year)
    {
        var notation = Language.Find(tag)!.Notation;
        Assert.Equal(month, notation.Day(new PartialDate(2024, 5)));
        Assert.Equal(year, notation.Day(new PartialDate(2024)));
    }

    [Theory]
    [InlineData("en", "2 persons", "1 person", "11.0 kN")]
    [InlineData("de", "2 Personen", "1 Person", "11,0 kN")]
    [InlineData("fr", "2 personnes", "1 personne", "11,0 kN")]
    public void Loads_have_their_unit_in_the_language(string tag, string two, string one, string force) =>
        Language
            .Find(tag)!
            .In(() =>
            {
                Assert.Equal(two, Printed.Load(new Load { Value = 2, Unit = "persons" }));
                Assert.Equal(one, Printed.Load(new Load { Value = 1, Unit = "persons" }));
                Assert.Equal(force, Printed.Load(new Load { Value = 11.0m, Unit = "kN" }));
                return 0;
            });
}
