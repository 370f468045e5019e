using System.Text.Json.Nodes;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>Cases where two rules, two rows or two dates meet.</summary>
public sealed class FurtherCaseTests
{
    [Theory]
    [InlineData(1, 6)]
    [InlineData(6, 1)]
    public void Of_two_equally_specific_limits_the_stricter_holds_in_either_order(int first, int second)
    {
        var record = GoodRecord.For("sling");
        record.Limits()["maxUseYears"] = first;
        record["limits"]!.AsArray().Add(record.Limits().Copy().With("maxUseYears", second));

        Assert.Equal("withdraw", Decided.From(record).Outcome());
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Of_two_equally_specific_lists_of_parts_each_binds(bool first)
    {
        var record = GoodRecord.Of(("A", "harness", null), ("B", "rope-bridge", "A"));
        var listing = record.Limits("A").Copy().With("permittedParts", new JsonArray("PN-X"));
        record["limits"]!.AsArray().Insert(first ? 0 : 2, listing);

        Assert.Equal("withdraw", Decided.From(record).Outcome("B"));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Of_two_equally_specific_tolerances_each_binds(bool first)
    {
        var record = GoodRecord.For("rope-bridge").Station(50, 9.0m, 9.0m);
        var measured = record.Limits().Copy().With("nominalDiameterMm", 11.0m).With("diameterTolerancePercent", 10);
        record["limits"]!.AsArray().Insert(first ? 0 : 1, measured);

        Assert.Equal("withdraw", Decided.From(record).Outcome());
    }

    [Theory]
    [InlineData("maxUseYears")]
    [InlineData("noLimit")]
    public void The_examiners_own_end_of_service_binds_beside_anything(string beside)
    {
        var record = GoodRecord.For("sling");
        record
            .Limits()
            .Without("maxUseYears", "maxStorageYears", "maxAgeYears")
            .With("unobtainable", new JsonObject { ["sought"] = "asked", ["useUntil"] = "2026-05-10" })
            .With(beside, beside is "noLimit" ? JsonValue.Create(true) : JsonValue.Create(6));

        Assert.NotInRange(Decided.From(record).Rank(), 0, 1);
    }

    [Fact]
    public void A_release_before_a_second_withdrawal_does_not_cover_it()
    {
        var record = GoodRecord
            .For("sling")
            .Earlier("sling", "2026-02-10", e => e["conclusion"] = "withdraw")
            .Release(null, on: "2026-02-20")
            .Earlier("sling", "2026-03-01", e => e["conclusion"] = "withdraw");
        Assert.Equal("withdraw", Decided.From(record).Outcome());

        Assert.Equal("fit", Decided.From(record.Release(null)).Outcome());
    }

    [Fact]
    public void A_release_of_a_stored_withdrawal_does_not_end_another_in_the_record()
    {
        var past = new PastWithdrawal(GoodRecord.Id, "Q-2025-000007", new LocalDate(2025, 11, 20), ["W2"], false);
        var record = GoodRecord.For("sling").Earlier("sling", "2026-02-10", e => e["conclusion"] = "withdraw").Release("Q-2025-000007");
        Assert.Equal("withdraw", Decided.From(record, past).Outcome());

        Assert.Equal("fit", Decided.From(record.Release(null), past).Outcome());
    }

    [Fact]
    public void Examined_again_the_next_day_the_first_withdrawal_is_open()
    {
        var record = GoodRecord.For("sling").Conclude("withdraw");
        record["examinations"]!.AsArray().Add(GoodRecord.Examination(GoodRecord.Id, "sling", "2026-05-12"));
        Assert.Equal("withdraw", Decided.From(record).Outcome());
    }

    [Theory]
    [InlineData("A")]
    [InlineData("B")]
    [InlineData("C")]
    public void Nothing_in_a_circle_is_fit(string id)
    {
        var record = GoodRecord.Of(("A", "harness", "C"), ("B", "rope-bridge", "A"), ("C", "swivel-ring", "B"));

        Assert.NotInRange(Decided.From(record).Rank(id), 0, 1);
    }

    [Theory]
    [InlineData("doneOn", "2026-05-12")]
    [InlineData("doneOn", "")]
    [InlineData("doneBy", "")]
    [InlineData("doneBy", "ex9")]
    [InlineData("supervisedBy", "")]
    [InlineData("supervisedBy", "ex9")]
    [InlineData("fittedPart", "NN")]
    public void A_renewal_that_is_not_sound_does_not_leave_the_whole_fit(string member, string value)
    {
        var record = GoodRecord
            .Of(("A", "harness", null), ("B", "rope-bridge", null), ("N", "rope-bridge", "A"))
            .Answer("heat", "doubt", "B")
            .Conclude("withdraw", "B")
            .Renew("A", "B", "N");
        Assert.Equal("fit", Decided.From(record).Outcome("A"));
        record["renewals"]![0]![member] = value;

        Assert.NotInRange(Decided.From(record).Rank("A"), 0, 1);
    }

    [Theory]
    [InlineData("11.00", "fit")]
    [InlineData("11.01", "withdraw")]
    [InlineData("10.99", "withdraw")]
    public void A_tolerance_of_zero_allows_only_the_nominal(string reading, string outcome)
    {
        var record = GoodRecord.For("rope-bridge");
        record.Limits().With("nominalDiameterMm", 11.0m).With("diameterTolerancePercent", 0);
        var read = decimal.Parse(reading, System.Globalization.CultureInfo.InvariantCulture);

        Assert.Equal(outcome, Decided.From(record.Station(50, read, read)).Outcome());
    }

    [Theory]
    [InlineData("2026-05-10", "withdraw")]
    [InlineData("2026-05-12", "withdraw")]
    public void A_stored_withdrawal_dated_before_or_after_the_examination_is_open(string on, string outcome)
    {
        var day = NodaTime.Text.LocalDatePattern.Iso.Parse(on).Value;
        var past = new PastWithdrawal(GoodRecord.Id, "Q-2026-000001", day, ["W1"], false);

        Assert.Equal(outcome, Decided.From(GoodRecord.For("sling"), past).Outcome());
    }

    /// <summary>It stays withdrawn, whether another visit of that day withdrew it or an earlier version of this visit.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_stored_withdrawal_of_the_same_day_is_open_whichever_visit_made_it(bool ofThisVisit)
    {
        var past = new PastWithdrawal(GoodRecord.Id, "Q-2026-000001", new LocalDate(2026, 5, 11), ["W1"], false)
        {
            IsOfThisVisit = ofThisVisit,
        };

        Assert.Equal("withdraw", Decided.From(GoodRecord.For("sling"), past).Outcome());
    }

    /// <summary>Kit in store ages as kit in use does.</summary>
    [Theory]
    [InlineData("stored")]
    [InlineData("in-use")]
    public void Where_it_was_kept_changes_nothing_about_a_life_that_has_ended(string status)
    {
        var record = GoodRecord.For("sling");
        record.Item().With("status", status).With("obsoleteOn", "2026-05-10");

        Assert.Equal("withdraw", Decided.From(record).Outcome());
    }

    /// <summary>A row with an unknown id may be about the item whose id it most resembles.</summary>
    [Theory]
    [InlineData("releases", """{"item":"IT-11","document":"Q-2025-000001","by":"ex1","on":"2026-05-11","grounds":"x"}""")]
    [InlineData("disposals", """{"item":"IT-l","action":"destroyed","by":"store","on":"2026-05-11"}""")]
    [InlineData("disposals", """{"item":"lT-1","action":"quarantined","by":"store","on":"2026-05-11"}""")]
    public void A_row_about_a_misspelt_item_holds_back_the_one_it_resembles(string list, string row) =>
        Assert.Equal("undetermined", Decided.From(GoodRecord.For("sling").Row(list, row)).Outcome());

    [Fact]
    public void No_text_typed_makes_it_fail()
    {
        var random = new Random(7);
        string[] values =
        [
            "\"\"",
            "null",
            "[]",
            "{}",
            "[[]]",
            "true",
            "-1",
            "0",
            "1e28",
            "1e-28",
            "79228162514264337593543950335",
            "\"2200-12-31\"",
            "\"1900-01-01\"",
            "\"2024-02\"",
            "\"2024\"",
            "\"0001-01-01\"",
            "\"9999-12-31\"",
            "\"IT-1\"",
            "\"A\"",
            "100",
            "\"later\"",
            "\"withdraw\"",
        ];
        for (var trial = 0; trial < 150; trial++)
        {
            var record = RichRecord.Make();
            for (var i = random.Next(1, 4); i > 0; i--)
            {
                var places = JsonPaths.All(record).ToList();
                JsonPaths.Set(record, places[random.Next(places.Count)], JsonNode.Parse(values[random.Next(values.Length)]));
            }
            var decided = Decided.From(record);
            Assert.False(decided.Refused);
        }
    }
}
