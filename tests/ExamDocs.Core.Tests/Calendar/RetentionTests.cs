using ExamDocs.Core.Calendar;
using NodaTime;

namespace ExamDocs.Core.Tests.Calendar;

/// <summary>Every expectation follows from SI 1998/2307 reg 11 as revised at 31 December 2020.</summary>
public sealed class RetentionTests
{
    private static readonly LocalDate Made = new(2025, 1, 15);

    /// <summary>Reg 11(2)(a)(iv): the later of the next report and two years.</summary>
    [Fact]
    public void A_periodic_report_is_kept_two_years_though_the_next_came_sooner() =>
        Assert.Equal(new LocalDate(2027, 1, 15), Retention.Of(KeptDocument.PeriodicReport, Made, new(2025, 7, 10)).Until);

    /// <summary>Reg 11(2)(a)(iv).</summary>
    [Fact]
    public void A_periodic_report_is_kept_until_the_next_where_that_comes_later() =>
        Assert.Equal(new LocalDate(2027, 3, 1), Retention.Of(KeptDocument.PeriodicReport, Made, new(2027, 3, 1)).Until);

    /// <summary>Reg 11(2)(a)(ii).</summary>
    [Fact]
    public void A_first_report_on_an_accessory_is_kept_two_years() =>
        Assert.Equal(
            new LocalDate(2027, 1, 15), Retention.Of(KeptDocument.ReportBeforeFirstServiceOfAccessory, Made).Until);

    [Fact]
    public void A_periodic_report_without_a_next_one_has_no_end_yet()
    {
        var keep = Retention.Of(KeptDocument.PeriodicReport, Made);
        Assert.Null(keep.Until);
        Assert.Equal(new LocalDate(2027, 1, 15), keep.AtLeastUntil);
    }

    [Theory]
    [InlineData(KeptDocument.DeclarationOfConformity, "operated", "11(1)")]
    [InlineData(KeptDocument.ReportBeforeFirstService, "stops using", "11(2)(a)(i)")]
    [InlineData(KeptDocument.ReportAfterInstallation, "at the place", "11(2)(a)(iii)")]
    [InlineData(KeptDocument.InspectionRecord, "next such record", "11(2)(b)")]
    public void What_hangs_on_an_event_is_kept_as_words(KeptDocument document, string words, string provision)
    {
        var keep = Retention.Of(document, Made);
        Assert.Null(keep.Until);
        Assert.Contains(words, keep.Words, StringComparison.Ordinal);
        Assert.Equal($"SI 1998/2307 reg {provision}", keep.Source);
    }

    [Fact]
    public void An_inspection_record_is_kept_until_the_next() =>
        Assert.Equal(new LocalDate(2025, 4, 1), Retention.Of(KeptDocument.InspectionRecord, Made, new(2025, 4, 1)).Until);

    [Fact]
    public void A_next_document_dated_before_this_one_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Retention.Of(KeptDocument.PeriodicReport, Made, new(2025, 1, 14)));
}
