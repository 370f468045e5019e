using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using NodaTime;

namespace ExamDocs.Core.Tests.Regimes;

/// <summary>Every expectation follows from SI 1998/2307 reg 10 as made.</summary>
public sealed class DutiesTests
{
    /// <summary>Reg 10(1)(b).</summary>
    [Fact]
    public void A_report_goes_to_the_employer_and_to_the_owner_of_hired_kit()
    {
        Assert.Equal([Recipient.Employer, Recipient.Owner], Duties.Report(hired: true));
        Assert.Equal([Recipient.Employer], Duties.Report(hired: false));
    }

    /// <summary>Reg 10(1)(c) and 10(4).</summary>
    [Theory]
    [InlineData(true, true, Recipient.HealthAndSafetyExecutive)]
    [InlineData(false, true, Recipient.AuthorityForThePremises)]
    [InlineData(true, false, null)]
    [InlineData(false, false, null)]
    public void An_imminent_risk_is_reported_to_the_right_authority(bool hired, bool imminent, Recipient? expected) =>
        Assert.Equal(expected, Duties.ImminentRiskCopy(hired, imminent));

    [Fact]
    public void Every_recipient_has_words_of_its_own()
    {
        var words = Enum.GetValues<Recipient>().Select(recipient => recipient.Words()).ToList();
        Assert.Equal(words.Count, words.Distinct(StringComparer.Ordinal).Count());
    }
}
