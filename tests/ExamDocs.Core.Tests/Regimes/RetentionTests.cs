using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using NodaTime;

namespace ExamDocs.Core.Tests.Regimes;

/// <summary>Unless said otherwise every expectation follows from SI 1998/2307 reg 11 as revised at 31 December 2020.</summary>
public sealed class RetentionTests
{
    private static readonly LocalDate Made = new(2025, 1, 15);

    /// <summary>Reg 11(2)(a)(iv): the later of the next report and two years.</summary>
    [Fact]
    public void A_periodic_report_is_kept_two_years_even_if_the_next_comes_sooner() =>
        Assert.Equal(new LocalDate(2027, 1, 15), Gb(KeptDocument.PeriodicReport, new(2025, 7, 10)).Until);

    /// <summary>Reg 11(2)(a)(iv).</summary>
    [Fact]
    public void A_periodic_report_is_kept_until_the_next_where_that_comes_later() =>
        Assert.Equal(new LocalDate(2027, 3, 1), Gb(KeptDocument.PeriodicReport, new(2027, 3, 1)).Until);

    /// <summary>Reg 11(2)(a)(ii).</summary>
    [Fact]
    public void A_first_report_on_an_accessory_is_kept_two_years() =>
        Assert.Equal(new LocalDate(2027, 1, 15), Gb(KeptDocument.ReportBeforeFirstServiceOfAccessory).Until);

    [Fact]
    public void A_periodic_report_without_a_next_one_has_no_end_yet()
    {
        var keep = Gb(KeptDocument.PeriodicReport);
        Assert.Null(keep.Until);
        Assert.Equal(new LocalDate(2027, 1, 15), keep.AtLeastUntil);
    }

    [Theory]
    [InlineData(KeptDocument.DeclarationOfConformity, "operated", "11(1)")]
    [InlineData(KeptDocument.ReportBeforeFirstService, "stops using", "11(2)(a)(i)")]
    [InlineData(KeptDocument.ReportAfterInstallation, "at the place", "11(2)(a)(iii)")]
    [InlineData(KeptDocument.InspectionRecord, "next such record", "11(2)(b)")]
    public void A_period_that_depends_on_an_event_is_given_in_words(KeptDocument document, string words, string provision)
    {
        var keep = Gb(document);
        Assert.Null(keep.Until);
        Assert.Contains(words, keep.Words, StringComparison.Ordinal);
        Assert.Equal(($"SI 1998/2307 reg {provision}", Confidence.Read), (keep.Source, keep.Confidence));
    }

    [Fact]
    public void An_inspection_record_is_kept_until_the_next() =>
        Assert.Equal(new LocalDate(2025, 4, 1), Gb(KeptDocument.InspectionRecord, new(2025, 4, 1)).Until);

    [Fact]
    public void A_next_document_dated_before_this_one_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Gb(KeptDocument.PeriodicReport, new(2025, 1, 14)));

    /// <summary>SR 1999/304 reg 11 as the twin of the above, from memory.</summary>
    [Fact]
    public void In_Northern_Ireland_as_in_Great_Britain_but_from_memory()
    {
        var keep = Of("ni-loler", KeptDocument.PeriodicReport, new(2025, 7, 10))!;
        Assert.Equal((new LocalDate(2027, 1, 15), Confidence.FromMemory), (keep.Until, keep.Confidence));
    }

    /// <summary>SI 2005/735 reg 12(6), from memory, and BetrSichV sec 14(7): until the next.</summary>
    [Theory]
    [InlineData("gb-wah", Confidence.FromMemory)]
    [InlineData("de", Confidence.Read)]
    public void A_record_is_kept_until_the_next(string regime, Confidence confidence)
    {
        var next = new LocalDate(2025, 7, 10);
        Assert.Equal(
            (next, confidence),
            (Of(regime, KeptDocument.PeriodicReport, next)!.Until, Of(regime, KeptDocument.PeriodicReport)!.Confidence)
        );
        Assert.Null(Of(regime, KeptDocument.PeriodicReport)!.AtLeastUntil);
    }

    /// <summary>
    /// Code du travail D4711-3, as quoted elsewhere: five years, and always the last two. So no next report gives it an end: it may
    /// still be one of the last two.
    /// </summary>
    [Theory]
    [InlineData(null)]
    [InlineData(2025)]
    [InlineData(2031)]
    public void In_France_five_years_at_least_and_never_an_end_while_it_may_be_one_of_the_last_two(int? next)
    {
        var keep = Of("fr", KeptDocument.PeriodicReport, next is { } year ? new LocalDate(year, 7, 10) : null)!;
        Assert.Equal((null, new LocalDate(2030, 1, 15), true), (keep.Until, keep.AtLeastUntil, keep.IsKnown));
        Assert.Equal(("Code du travail D4711-3", Confidence.UnofficialCopy), (keep.Source, keep.Confidence));
        Assert.Contains("the last two", keep.Words, StringComparison.Ordinal);
    }

    /// <summary>No source gave a number of years for these: none may be made up.</summary>
    [Theory]
    [InlineData("eu-en365")]
    [InlineData("au-nz")]
    [InlineData("us")]
    public void Where_no_source_says_how_long_no_date_is_made_up(string regime) =>
        Assert.All(Enum.GetValues<KeptDocument>().Where(d => d is not KeptDocument.DeclarationOfConformity), document =>
        {
            var keep = Of(regime, document, new(2025, 7, 10))!;
            Assert.False(keep.IsKnown);
            Assert.Null(keep.Until ?? keep.AtLeastUntil);
        });

    /// <summary>Reg 9(1), (2) and (3) with 11(2)(a).</summary>
    [Theory]
    [InlineData(Basis.FirstUse, Purpose.Accessory, KeptDocument.ReportBeforeFirstServiceOfAccessory)]
    [InlineData(Basis.FirstUse, Purpose.LiftsPersons, KeptDocument.ReportBeforeFirstService)]
    [InlineData(Basis.Installation, Purpose.Other, KeptDocument.ReportAfterInstallation)]
    [InlineData(Basis.Scheme, Purpose.Accessory, KeptDocument.PeriodicReport)]
    [InlineData(null, null, KeptDocument.PeriodicReport)]
    public void The_basis_says_which_report_it_is(Basis? basis, Purpose? purpose, KeptDocument expected) =>
        Assert.Equal(expected, Kept.As(basis, purpose));

    private static KeepUntil Gb(KeptDocument document, LocalDate? next = null) => Of("gb-loler", document, next)!;

    private static KeepUntil? Of(string regime, KeptDocument document, LocalDate? next = null) =>
        RegimeIndex.Find(regime)!.Keep(document, Made, next);
}
