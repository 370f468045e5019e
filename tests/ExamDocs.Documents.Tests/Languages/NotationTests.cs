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

    [Theory]
    [MemberData(nameof(Cultures))]
    public void Short_months_are_those_of_the_culture(string tag, string culture) =>
        Assert.Equal(
            CultureInfo.GetCultureInfo(culture).DateTimeFormat.AbbreviatedMonthGenitiveNames.Take(12),
            Language.Find(tag)!.Notation.ShortMonths
        );

    [Theory]
    [InlineData("en", "30\u00A0Sep\u00A02026", "Sep\u00A02026")]
    [InlineData("de", "30.\u00A0Sept.\u00A02026", "Sept.\u00A02026")]
    [InlineData("fr", "30\u00A0sept.\u00A02026", "sept.\u00A02026")]
    public void A_short_day_still_has_its_month_as_a_word_and_all_of_its_year(string tag, string day, string month)
    {
        var notation = Language.Find(tag)!.Notation;
        Assert.Equal(day, notation.ShortDay(new LocalDate(2026, 9, 30)));
        Assert.Equal(day, notation.ShortDay(new PartialDate(2026, 9, 30)));
        Assert.Equal(month, notation.ShortDay(new PartialDate(2026, 9)));
        Assert.Equal("2026", notation.ShortDay(new PartialDate(2026)));
    }

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
    [InlineData("en", 11, "11\u00A0May 2026")]
    [InlineData("de", 11, "11.\u00A0Mai 2026")]
    [InlineData("fr", 11, "11\u00A0mai 2026")]
    [InlineData("de", 1, "1.\u00A0Mai 2026")]
    [InlineData("fr", 1, "1er\u00A0mai 2026")]
    [InlineData("fr", 2, "2\u00A0mai 2026")]
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
            var written = notation.Day(day).Replace("1er", "1", StringComparison.Ordinal).Replace('\u00A0', ' ');
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

    /// <summary>A note that somebody typed is none of the language's business: only what the program puts between is.</summary>
    [Theory]
    [InlineData("en", "Cover: worn", "a; b")]
    [InlineData("de", "Cover: worn", "a; b")]
    [InlineData("fr", "Cover\u00A0: worn", "a\u00A0; b")]
    public void Colons_and_semicolons_stand_as_the_language_sets_them(string tag, string said, string list) =>
        Assert.Equal((said, list), Language.Find(tag)!.In(() => (Printed.Of("Cover", "worn"), Printed.List(["a", "b"]))));

    [Fact]
    public void A_colon_needs_something_on_both_sides() => Assert.Equal("worn", Printed.Of(null, "worn"));

    [Theory]
    [InlineData("en", "2\u00A0persons", "1\u00A0person", "11.0\u00A0kN")]
    [InlineData("de", "2\u00A0Personen", "1\u00A0Person", "11,0\u00A0kN")]
    [InlineData("fr", "2\u00A0personnes", "1\u00A0personne", "11,0\u00A0kN")]
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
