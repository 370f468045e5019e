using ExamDocs.Core.Determination;
using ExamDocs.Core.Regimes;
using ExamDocs.Core.Tests.Determination;

namespace ExamDocs.Core.Tests.Regimes;

/// <summary>The source of a reason never names the law of another place.</summary>
public sealed class SourceUnderRegimeTests
{
    private static readonly string[] British = ["gb-loler", "gb-wah"];

    public static TheoryData<string> Ids => [.. RegimeIndex.All.Select(r => r.Id)];

    [Theory]
    [InlineData("gb-loler", "SI 1998/2307 reg 10(3)", "SI 1998/2307 reg 10(3)")]
    [InlineData("gb-wah", "SI 1998/2307 reg 10(3)", "SI 1998/2307 reg 10(3)")]
    [InlineData("de", "SI 1998/2307 reg 10(3)", "rule of this program")]
    [InlineData("fr", "SI 1998/2307 reg 10(1): a defect", "rule of this program: a defect")]
    [InlineData("fr", "arrêté of 1 March 2004 art 24: deformation", "arrêté of 1 March 2004 art 24: deformation")]
    [InlineData("de", "arrêté of 1 March 2004 art 24: deformation", "rule of this program: deformation")]
    [InlineData("us", "29 CFR 1910.140(c)(18) (as quoted elsewhere): wear", "29 CFR 1910.140(c)(18) (as quoted elsewhere): wear")]
    [InlineData("eu-en365", "29 CFR 1910.140(c)(18) (as quoted elsewhere): wear", "rule of this program: wear")]
    [InlineData("ni-loler", "SI 1998/2307 Schedule 1 para 9", "rule of this program")]
    [InlineData("de", "EN 365:2004 4.4", "EN 365:2004 4.4")]
    [InlineData("de", "HSE INDG367 (as quoted elsewhere): dirt", "HSE INDG367 (as quoted elsewhere): dirt")]
    [InlineData(null, "SI 1998/2307 reg 10(3)", "rule of this program")]
    public void A_law_is_named_only_where_it_applies(string? regime, string source, string expected) =>
        Assert.Equal(expected, SourceUnderRegime.Of(source, null, regime is null ? [] : [RegimeIndex.Find(regime)!]));

    /// <summary>BetrSichV sec 14(2): the deadline is set anew where kit cannot run safely to the next test. SR 1999/304 from memory.</summary>
    [Theory]
    [InlineData("de", "D1", "BetrSichV sec 14(2)")]
    [InlineData("de", "W4", "rule of this program")]
    [InlineData("ni-loler", "W4", "SR 1999/304 reg 10(3) (from memory)")]
    [InlineData("gb-loler", "D1", "SI 1998/2307 reg 10(3)(b) and Schedule 1 para 8(c)")]
    public void A_provision_of_the_regime_itself_comes_first(string regime, string code, string expected) =>
        Assert.Equal(
            expected,
            SourceUnderRegime.Of(OutcomeRules.All.Single(r => r.Code == code).Source, code, [RegimeIndex.Find(regime)!])
        );

    [Fact]
    public void Where_two_regimes_bind_the_law_of_either_is_named() =>
        Assert.Equal(
            "SI 1998/2307 reg 10(3)",
            SourceUnderRegime.Of("SI 1998/2307 reg 10(3)", "W4", [RegimeIndex.Find("de")!, RegimeIndex.Find("gb-loler")!])
        );

    [Fact]
    public void A_regime_of_the_users_own_names_the_laws_that_it_lists()
    {
        var own = RegimeIndex.Find("gb-loler")! with { Id = "own", AddedFrom = "own.json" };
        Assert.Equal("SI 1998/2307 reg 10(3)", SourceUnderRegime.Of("SI 1998/2307 reg 10(3)", "W4", [own]));
        Assert.Equal("rule of this program", SourceUnderRegime.Of("SI 1992/2966 reg 7", "W4", [own]));
    }

    /// <summary>Every reason and every line of the case for service, of an item with a defect now and one that comes later.</summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void Nothing_that_is_determined_cites_British_law_elsewhere(string regime)
    {
        var record = GoodRecord.For("harness");
        record["visit"]!["regime"] = regime;
        var examination = record["examinations"]![0]!;
        (examination["regime"], examination["conclusion"], examination["defects"]) = (
            regime,
            "withdraw",
            System.Text.Json.Nodes.JsonNode.Parse("""[{ "criterion": "stitching", "description": "pulled", "danger": "now" }]""")
        );
        var item = Decided.From(record).Item();
        Assert.Contains(item.Reasons, r => r.Code == "W4");
        Assert.Contains(item.Reasons, r => r.Code == "W6");
        var cited = item.Reasons.Select(r => r.Source).Concat(item.CaseForService.Select(e => e.Source));
        var names = cited.Any(s => s.Contains("SI 1998/2307", StringComparison.Ordinal));
        Assert.Equal(British.Contains(regime, StringComparer.Ordinal), names);
    }
}
