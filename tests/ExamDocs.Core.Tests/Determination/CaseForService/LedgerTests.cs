using System.Text.Json.Nodes;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Determination.CaseForService;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;

namespace ExamDocs.Core.Tests.Determination.CaseForService;

/// <summary>The ledger gives the grounds of the outcome in the order in which an examiner argues, and never contradicts it.</summary>
public sealed class LedgerTests
{
    public static TheoryData<string> Categories => [.. Catalogue.All.Select(c => c.Id)];

    [Theory, MemberData(nameof(Categories))]
    public void Headings_come_in_the_order_of_the_argument(string category)
    {
        var headings = Ledger(GoodRecord.For(category)).Select(e => e.Heading).ToList();

        Assert.Equal(headings.Order(), headings);
        Assert.Equal(
            [Heading.Identity, Heading.History, Heading.Decisive, Heading.Judged, Heading.Advisory, Heading.Limits, Heading.Doubts],
            headings.Distinct().Where(h => h is not Heading.Measurements)
        );
    }

    [Theory, MemberData(nameof(Categories))]
    public void Every_criterion_answered_is_listed_once_under_its_class(string category)
    {
        var ledger = Ledger(GoodRecord.For(category));

        Assert.All(Catalogue.Find(category)!.Criteria, c =>
        {
            var entry = Assert.Single(ledger, e => e.Criterion == c.Id);
            Assert.Equal(
                (c.Class.ToString(), Bearing.For, SourceUnderRegime.Of(c.Source, null, [RegimeIndex.Find("gb-loler")!])),
                (entry.Heading.ToString(), entry.Bearing, entry.Source)
            );
        });
    }

    /// <summary>
    /// Every answer to every criterion of every category: there is evidence against the item exactly where the outcome is not fit.
    /// </summary>
    [Theory, MemberData(nameof(Categories))]
    public void The_ledger_and_the_outcome_agree(string category)
    {
        foreach (var criterion in Catalogue.Find(category)!.Criteria)
        {
            foreach (var state in Words.States.All.Append("claer"))
            {
                var item = Decided.From(GoodRecord.For(category).Answer(criterion.Id, state)).Item();
                AssertAgrees(item);
            }
        }
    }

    [Fact]
    public void Every_reason_is_in_the_ledger()
    {
        var record = GoodRecord
            .For("rope-bridge")
            .Answer("cover-abrasion", "defect")
            .Later("cover-abrasion", "2026-08-01")
            .Later("", "2026-05-11")
            .Station(180, 9.0m, 9.0m);
        record.Limits().With("nominalDiameterMm", 11.0).With("diameterTolerancePercent", 10)["maxUseYears"] = 1;
        var item = Decided.From(record).Item();

        Assert.Equal(["W4", "W5", "W7"], item.Reasons.Select(r => r.Code).Where(c => c[0] is 'W').Distinct(StringComparer.Ordinal));
        Assert.All(item.Reasons.Where(r => r.Code[0] is 'W'), r =>
            Assert.Contains(item.CaseForService, e => e.Code == r.Code && e.Text == r.Text && e.Bearing is Bearing.Against)
        );
        AssertAgrees(item);
    }

    [Fact]
    public void A_released_withdrawal_is_listed_under_doubts_with_its_release()
    {
        var record = WithEarlier("connector", e => (e["conclusion"], e["examinedOn"]) = ("withdraw", "2025-11-20"));
        record["releases"] = new JsonArray(
            new JsonObject
            {
                ["item"] = GoodRecord.Id,
                ["by"] = "ex1",
                ["on"] = "2026-05-11",
                ["grounds"] = "gate closes by itself again",
            }
        );

        var entry = Assert.Single(Ledger(record), e =>
            e.Heading is Heading.Doubts && e.Text.StartsWith("withdrawn", StringComparison.Ordinal)
        );
        Assert.Equal(Bearing.For, entry.Bearing);
        Assert.Contains("released on 11 May 2026 by Odile Farrowby: gate closes by itself again", entry.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(null, Bearing.Open, "no remedy is recorded")]
    [InlineData("2026-03-01", Bearing.For, "strap renewed on 1 Mar 2026")]
    [InlineData("2025-11-19", Bearing.Open, "no remedy is recorded")]
    public void An_earlier_defect_is_listed_with_its_remedy_or_as_open(string? remedied, Bearing bearing, string words)
    {
        var record = WithEarlier("harness", e => e["examinedOn"] = "2025-11-20");
        var earlier = record["examinations"]!.AsArray()[1]!.AsObject();
        earlier["defects"] = new JsonArray(
            JsonNode.Parse(
                """{"criterion":"abrasion","description":"leg strap worn","danger":"later","becomesDangerOn":"2026-04-01","remedy":"renew the strap"}"""
            )
        );
        if (remedied is not null)
            record["remedies"] = new JsonArray(
                new JsonObject
                {
                    ["item"] = GoodRecord.Id,
                    ["what"] = "strap renewed",
                    ["doneOn"] = remedied,
                }
            );
        var decided = Decided.From(record);

        var entry = Assert.Single(decided.Item().CaseForService, e => e.Text.StartsWith("leg strap worn", StringComparison.Ordinal));
        Assert.Equal((Heading.Doubts, bearing), (entry.Heading, entry.Bearing));
        Assert.Contains(words, entry.Text, StringComparison.Ordinal);
        Assert.Equal(bearing is Bearing.Open, decided.Finds("CON022"));
    }

    /// <summary>Kit without serial and mark, date of manufacture and first use: each gap is listed as open.</summary>
    [Fact]
    public void What_is_not_known_is_listed_as_open()
    {
        var record = GoodRecord.For("connector");
        record.Item().Without("serial", "manufactured", "firstUsed", "lastExamined", "purchased", "declaration");
        var open = Ledger(record).Where(e => e.Bearing is Bearing.Open).Select(e => e.Text).ToList();

        Assert.Contains(open, t => t.Contains("neither a serial nor an owner's mark", StringComparison.Ordinal));
        Assert.Contains("date of manufacture not recorded", open);
        Assert.Contains("first use not recorded", open);
        Assert.Contains("no earlier examination is known", open);
    }

    [Fact]
    public void The_examiners_conclusion_comes_last()
    {
        Assert.Equal("the examiner concludes: fit", Ledger(GoodRecord.For("sling"))[^1].Text);
        Assert.Equal(
            ("W6", Bearing.Against),
            Ledger(GoodRecord.For("sling").Conclude("withdraw"))[^1] is var last ? (last.Code, last.Bearing) : default
        );
    }

    private static void AssertAgrees(DeterminedItem item)
    {
        var bearings = item.CaseForService.Select(e => e.Bearing).ToHashSet();
        if (item.Outcome is Outcome.Fit)
            Assert.DoesNotContain(Bearing.Against, bearings);
        if (item.Outcome is Outcome.Withdraw)
            Assert.Contains(Bearing.Against, bearings);
        if (item.Outcome is Outcome.Undetermined)
            Assert.Contains(Bearing.Open, bearings);
    }

    private static IReadOnlyList<LedgerEntry> Ledger(JsonObject record) => Decided.From(record).Item().CaseForService;

    private static JsonObject WithEarlier(string category, Action<JsonObject> alter)
    {
        var record = GoodRecord.For(category);
        var earlier = GoodRecord.Examination(GoodRecord.Id, category, "2025-11-20");
        alter(earlier);
        record["examinations"]!.AsArray().Add(earlier);
        return record;
    }
}
