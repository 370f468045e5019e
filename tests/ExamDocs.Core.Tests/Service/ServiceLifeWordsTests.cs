using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using ExamDocs.Core.Service;
using NodaTime;

namespace ExamDocs.Core.Tests.Service;

/// <summary>The words printed beside a limit, letter by letter: a reader checks the limit by them.</summary>
public sealed class ServiceLifeWordsTests
{
    private static readonly LimitsSource Instructions = new()
    {
        Title = "Use and care",
        Revision = "C",
        Page = "7",
    };

    [Theory]
    [InlineData("Use and care", "C", "7", "Use and care, revision C, page 7")]
    [InlineData("Use and care", null, "7", "Use and care, page 7")]
    [InlineData("Use and care", "C", null, "Use and care, revision C")]
    [InlineData("Use and care", null, null, "Use and care")]
    [InlineData(null, "C", "7", "maker's document not recorded")]
    public void The_document_is_named_with_what_is_recorded_of_it(string? title, string? revision, string? page, string expected)
    {
        var limits = new MakersLimits
        {
            Source = new()
            {
                Title = title,
                Revision = revision,
                Page = page,
            },
        };
        Assert.Equal(expected, LimitsSourceText.Of(limits));
        Assert.Equal($" ({expected})", LimitsSourceText.Beside(limits));
    }

    [Fact]
    public void A_missing_document_is_named_as_not_recorded() =>
        Assert.Equal("maker's document not recorded", LimitsSourceText.Of(new MakersLimits()));

    [Fact]
    public void The_marked_day_of_obsolescence_is_named() =>
        Assert.Equal(
            "End of service 1 Feb 2034: obsolescence on 1 Feb 2034, as marked on the item",
            Life(new Item { ObsoleteOn = PartialDate.Of(new(2034, 2, 1)) }).Sentence.Text
        );

    [Fact]
    public void Use_counted_from_manufacture_says_so() =>
        Assert.Equal(
            "End of service 1 Feb 2030: 6 years in use from manufacture on 1 Feb 2024, first use not being recorded (Use and "
                + "care, revision C, page 7)",
            Life(
                new Item { Manufactured = PartialDate.Of(new(2024, 2, 1)) },
                new MakersLimits { MaxUseYears = 6, Source = Instructions }
            ).Sentence.Text
        );

    [Theory]
    [InlineData(null)]
    [InlineData(false)]
    public void Each_limit_that_cannot_be_counted_is_named(bool? neverUsed) =>
        Assert.Equal(
            [
                "the greatest age cannot be counted without the date of manufacture",
                "the longest storage cannot be counted without the date of manufacture",
                "the time in use cannot be counted without the date of first use or of manufacture",
                "the greatest number of cleanings cannot be held against a count that is not recorded",
            ],
            Life(
                new Item { NeverUsed = neverUsed },
                new MakersLimits
                {
                    MaxAgeYears = 12,
                    MaxStorageYears = 2,
                    MaxUseYears = 6,
                    MaxCleanings = 20,
                }
            )
                .Uncountable.Select(s => s.Text)
        );

    [Fact]
    public void A_use_limit_is_not_counted_for_kit_never_used() =>
        Assert.Empty(Life(new Item { NeverUsed = true }, new MakersLimits { MaxUseYears = 6 }).Uncountable);

    /// <summary>Only kit that was never used and has a limit of use is said not to have begun its use.</summary>
    [Theory]
    [InlineData(true, 6, true)]
    [InlineData(true, null, false)]
    [InlineData(false, 6, false)]
    [InlineData(null, 6, false)]
    public void Use_has_not_begun_only_for_kit_never_used_with_a_use_limit(bool? neverUsed, int? years, bool expected)
    {
        var life = Life(new Item { NeverUsed = neverUsed }, new MakersLimits { MaxUseYears = years, Source = Instructions });
        Assert.Equal(expected, life.UseHasNotBegun);
        Assert.Equal(
            expected
                ? "Never used: the time in use has not begun (Use and care, revision C, page 7)"
                : "No time limit of the maker's is recorded",
            life.Sentence.Text
        );
    }

    [Fact]
    public void Use_has_not_begun_where_one_of_two_entries_limits_it() =>
        Assert.True(Life(new Item { NeverUsed = true }, new MakersLimits(), new MakersLimits { MaxUseYears = 6 }).UseHasNotBegun);

    [Fact]
    public void A_makers_statement_of_no_time_limit_is_named_with_its_document() =>
        Assert.Equal(
            "The maker states that there is no time limit (Use and care, revision C, page 7)",
            Life(new Item(), new MakersLimits { NoLimit = true, Source = Instructions }).Sentence.Text
        );

    private static ServiceLife Life(Item item, params MakersLimits[] limits) => ServiceLife.Of(item, limits, []);
}
