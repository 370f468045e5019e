using ExamDocs.Core.Regimes;
using ExamDocs.Core.Rules;
using NodaTime;

namespace ExamDocs.Core.Tests.Regimes;

/// <summary>What must be true of the data of every regime, also of those still to be added.</summary>
public sealed class RegimeDataTests
{
    private static readonly LocalDate Day = new(2026, 5, 11);

    /// <summary>Rules that the law on lifting asks for and that not every regime asks for.</summary>
    private static readonly string[] Lifting = ["CON006", "CON020", "DAT016", "PAR005", "PAR006", "PAR022", "PAR024", "PAR032"];

    public static TheoryData<string> Ids => [.. RegimeIndex.All.Select(r => r.Id)];

    [Fact]
    public void Every_index_line_has_a_data_file_and_every_data_file_an_index_line() =>
        Assert.Equal(RegimeIndex.All.Select(r => r.Id).Order(StringComparer.Ordinal), RegimeIndex.DataFiles.Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_data_are_sound(string id) => Assert.Empty(SoundRegime.Faults(Of(id)));

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_rule_named_is_in_the_rule_book(string id)
    {
        var regime = Of(id);
        var named = regime
            .Particulars.SelectMany(p => p.Entries)
            .SelectMany(p => p.Checks)
            .Concat(regime.Duties.SelectMany(p => p.Entries).SelectMany(d => d.Checks))
            .Concat(regime.Checks.Select(c => c.Code));
        Assert.Empty(named.Except(RuleBook.All.Select(r => r.Info.Code), StringComparer.Ordinal));
    }

    /// <summary>The law on lifting asks for the same in both countries; elsewhere nobody asks for a load or an authority.</summary>
    [Theory]
    [InlineData("gb-loler", true)]
    [InlineData("ni-loler", true)]
    [InlineData("gb-wah", false, "CON021")]
    [InlineData("eu-en365", false, "PAR032")]
    [InlineData("de", false)]
    [InlineData("fr", false)]
    [InlineData("au-nz", false)]
    [InlineData("us", false)]
    public void Each_regime_asks_for_its_own_rules(string id, bool lifting, params string[] others)
    {
        var asked = RuleBook.All.Where(r => r is RegimeRule && Of(id).Asks(r.Info.Code, Day)).Select(r => r.Info.Code);
        Assert.Equal(lifting ? Lifting : others, asked);
    }

    /// <summary>BetrSichV sec 14(7) and, for the occasion, TRBS 1201 8.3.1(2).</summary>
    [Fact]
    public void Germany_asks_for_the_occasion_of_the_test_and_a_signature_that_is_electronic_only_where_nothing_is_on_paper()
    {
        var words = Of("de").Particulars.InForce(Day).Select(p => p.Words).ToList();
        Assert.Contains("Occasion of the test", words);
        Assert.EndsWith("an electronic signature where documents are transmitted only electronically", words[^1], StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_reason_with_a_provision_of_its_own_is_an_outcome_rule(string id) =>
        Assert.Empty(
            Of(id).Reasons.Select(r => r.Code).Except(Core.Determination.OutcomeRules.All.Select(r => r.Code), StringComparer.Ordinal)
        );

    /// <summary>In Great Britain the source of a finding is the provision that the rule's own page names.</summary>
    [Fact]
    public void The_provisions_of_Great_Britain_are_those_of_the_rules() => Assert.All(RuleBook.All.Where(r => r is RegimeRule), rule =>
        {
            var source = Of("gb-loler").SourceOf(rule.Info.Code, Day) ?? Of("gb-wah").SourceOf(rule.Info.Code, Day);
            Assert.NotNull(source);
            Assert.StartsWith(source, rule.Info.Source, StringComparison.Ordinal);
        });

    [Theory]
    [MemberData(nameof(Ids))]
    public void What_was_not_read_is_said_to_the_user(string id)
    {
        var regime = Of(id);
        var decides = regime
            .Laws.SelectMany(p => p.Entries)
            .Select(l => l.Confidence)
            .Concat(regime.Intervals.SelectMany(p => p.Entries).Select(i => i.Confidence));
        if (!id.StartsWith("gb-", StringComparison.Ordinal) && decides.Any(c => c is Confidence.UnofficialCopy or Confidence.FromMemory))
            Assert.NotEmpty(regime.NotConfirmed);
        Assert.All(regime.NotConfirmed, s => Assert.Matches(@"^[A-Z0-9].*\.$", s));
    }

    /// <summary>
    /// SI 1998/2307 Schedule 1 has eleven paragraphs (1 to 8(c) read as made, the rest from memory); SR 1999/304 Schedule 2 likewise (1 to
    /// 8(a) read).
    /// </summary>
    [Theory]
    [InlineData("gb-loler", "SI 1998/2307 Schedule 1 para 8(d)", "8(d) 8(e) 8(f) 9 10 11")]
    [InlineData("ni-loler", "SR 1999/304 Schedule 2 para 8(b)", "8(b) 8(c) 8(d) 8(e) 8(f) 9 10 11")]
    public void The_schedule_has_eleven_paragraphs_in_order_and_says_what_was_not_read(string id, string firstFromMemory, string fromMemory)
    {
        var particulars = Of(id).Particulars.InForce(Day);
        var numbers = particulars
            .Select(p => int.Parse(p.Paragraph.Split('(')[0], System.Globalization.CultureInfo.InvariantCulture))
            .ToList();
        Assert.Equal(Enumerable.Range(1, 11), numbers.Distinct());
        Assert.Equal(numbers.Order(), numbers);
        Assert.Equal(particulars.Count, particulars.Select(p => p.Source).ToHashSet(StringComparer.Ordinal).Count);
        var unread = particulars.Where(p => p.Confidence is Confidence.FromMemory).ToList();
        Assert.Equal(firstFromMemory, unread[0].Source);
        Assert.Equal(fromMemory, string.Join(' ', unread.Select(p => p.Paragraph)));
    }

    /// <summary>SI 2005/735 reg 12(6) asks for a record of personal kit, but does not say what it must hold (from memory).</summary>
    [Fact]
    public void Personal_kit_is_not_asked_for_the_schedule_of_platforms() => Assert.Single(Of("gb-wah").Particulars.InForce(Day));

    private static Regime Of(string id) => RegimeIndex.Find(id)!;
}
