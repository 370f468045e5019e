using ExamDocs.Core.Regimes;
using NodaTime;

namespace ExamDocs.Core.Tests.Regimes;

/// <summary>Unless said otherwise every expectation follows from SI 1998/2307 reg 10 as made.</summary>
public sealed class DutiesTests
{
    private static readonly LocalDate Day = new(2026, 5, 11);

    /// <summary>Reg 10(1)(b).</summary>
    [Fact]
    public void A_report_goes_to_the_employer_and_to_the_owner_of_hired_kit()
    {
        Assert.Equal([Recipient.Employer, Recipient.Owner], To("gb-loler", DutyKind.SendReport, hired: true));
        Assert.Equal([Recipient.Employer], To("gb-loler", DutyKind.SendReport, hired: false));
    }

    /// <summary>Reg 10(1)(a).</summary>
    [Fact]
    public void The_employer_is_told_forthwith() => Assert.Equal([Recipient.Employer], To("gb-loler", DutyKind.TellForthwith, hired: true));

    /// <summary>Reg 10(1)(c) and 10(4).</summary>
    [Theory]
    [InlineData(true, Recipient.HealthAndSafetyExecutive)]
    [InlineData(false, Recipient.AuthorityForThePremises)]
    public void An_imminent_risk_is_reported_to_the_right_authority(bool hired, Recipient expected) =>
        Assert.Equal([expected], To("gb-loler", DutyKind.CopyAtImminentRisk, hired));

    /// <summary>SR 1999/304 reg 10, from memory: which authority was not confirmed, so none is named.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void In_Northern_Ireland_the_authority_is_not_named(bool hired) =>
        Assert.Equal([Recipient.EnforcingAuthority], To("ni-loler", DutyKind.CopyAtImminentRisk, hired));

    /// <summary>No source names an authority for these.</summary>
    [Theory]
    [InlineData("gb-wah")]
    [InlineData("eu-en365")]
    [InlineData("de")]
    [InlineData("fr")]
    [InlineData("au-nz")]
    [InlineData("us")]
    public void Elsewhere_no_authority_is_named(string regime)
    {
        Assert.Empty(To(regime, DutyKind.CopyAtImminentRisk, hired: true).Concat(To(regime, DutyKind.CopyAtImminentRisk, hired: false)));
        Assert.Equal([Recipient.Employer], To(regime, DutyKind.TellForthwith, hired: false));
    }

    /// <summary>BetrSichV sec 14(7): at changing places of use.</summary>
    [Fact]
    public void In_Germany_proof_of_the_last_test_is_where_the_kit_is_used() =>
        Assert.Equal([Recipient.Employer], To("de", DutyKind.KeepProofAtPlaceOfUse, hired: false));

    [Fact]
    public void Every_recipient_has_words_of_its_own()
    {
        var words = Enum.GetValues<Recipient>().Select(recipient => recipient.Words()).ToList();
        Assert.Equal(words.Count, words.Distinct(StringComparer.Ordinal).Count());
    }

    private static IEnumerable<Recipient> To(string regime, DutyKind what, bool hired) =>
        RegimeIndex.Find(regime)!.DutiesTo(what, hired, Day).Select(d => d.Whom);
}
