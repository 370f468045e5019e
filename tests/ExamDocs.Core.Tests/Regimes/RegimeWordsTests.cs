using System.Text;
using System.Text.Json;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Core.Rules;
using NodaTime;

namespace ExamDocs.Core.Tests.Regimes;

/// <summary>
/// The words in which a regime's data are printed, letter by letter, and what is said of unsound data.
/// </summary>
public sealed class RegimeWordsTests
{
    [Theory]
    [InlineData(Recipient.Employer, "the employer")]
    [InlineData(Recipient.Owner, "the owner from whom it is hired or leased")]
    [InlineData(Recipient.HealthAndSafetyExecutive, "the Health and Safety Executive")]
    [InlineData(Recipient.AuthorityForThePremises, "the enforcing authority for the premises where it was examined")]
    [InlineData(Recipient.EnforcingAuthority, "the enforcing authority")]
    public void Whom_to_tell_in_words(Recipient recipient, string words) => Assert.Equal(words, recipient.Words());

    [Theory]
    [InlineData(Bound.AtMost, Confidence.Read, "12 months for slings (a standard)")]
    [InlineData(Bound.LessThan, Confidence.FromMemory, "less than 12 months for slings (a standard, from memory)")]
    [InlineData(Bound.AtMost, Confidence.UnofficialCopy, "12 months for slings (a standard, unofficial copy)")]
    public void An_interval_in_words(Bound bound, Confidence confidence, string words) =>
        Assert.Equal(
            words,
            new ExaminationInterval
            {
                Months = 12,
                Bound = bound,
                What = "for slings",
                Source = "a standard",
                Confidence = confidence,
            }.Why
        );

    [Theory]
    [InlineData("Lifting Act", "No 5", "Lifting Act (No 5)")]
    [InlineData("EN 365", "EN 365", "EN 365")]
    public void A_law_is_cited_with_its_number_where_the_title_lacks_it(string title, string number, string cited) =>
        Assert.Equal(
            cited,
            new Law
            {
                Title = title,
                Number = number,
                Confidence = Confidence.Read,
            }.Cited
        );

    /// <summary>Where a purpose has several intervals, a basis may state none longer than the shortest of them.</summary>
    [Fact]
    public void A_basis_may_give_no_more_than_the_shortest_interval_of_the_purpose() =>
        Assert.Equal(6, With(Entry(12), Entry(6)).MonthsFor(Purpose.Accessory, null));

    [Fact]
    public void A_document_without_a_rule_of_retention_has_no_answer() =>
        Assert.Null((Gb with { Retention = [new() { Entries = [] }] }).Keep(KeptDocument.PeriodicReport, new(2026, 5, 11)));

    [Fact]
    public void A_rule_that_no_regime_can_ask_for_is_named_with_those_that_can()
    {
        var askable = ExamDocs
            .Core.Rules.RuleBook.All.Where(r => r is ExamDocs.Core.Rules.RegimeRule)
            .Select(r => r.Info.Code)
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal)
            .ToList();
        Assert.True(askable.Count > 2);
        var fault = $"/: PAR999 is no rule that a regime can ask for; type one of {string.Join(", ", askable)}, or take it out";
        Assert.Equal([fault], RegimeFaults.Of(Gb with { Checks = [.. Gb.Checks, new RegimeCheck("PAR999", "invented")] }));
        Assert.Equal(
            [fault],
            RegimeFaults.Of(
                Gb with
                {
                    Duties = [.. Gb.Duties.Select(p => p with { Entries = [p.Entries[0] with { Checks = ["PAR999"] }] })],
                }
            )
        );
        Assert.Equal(
            [fault],
            RegimeFaults.Of(
                Gb with
                {
                    Particulars = [.. Gb.Particulars.Select(p => p with { Entries = [p.Entries[0] with { Checks = ["PAR999"] }] })],
                }
            )
        );
        Assert.Empty(RegimeFaults.Of(Gb));
    }

    [Fact]
    public void Periods_out_of_order_are_named_by_their_section()
    {
        var wrong = Gb with { Laws = [Gb.Laws[0] with { From = new(2020, 1, 1) }, Gb.Laws[0] with { From = new(2019, 1, 1) }] };
        Assert.Equal(
            [
                "/laws: the periods do not follow one another; give every one after the first its from, and end each the day "
                    + "before the next begins",
            ],
            RegimeFaults.Of(wrong)
        );
    }

    /// <summary>Of two periods that begin on one day, the first would never be in force.</summary>
    [Fact]
    public void Periods_from_the_same_day_do_not_follow_one_another()
    {
        Period<string> one = new() { From = new(2020, 1, 1), Entries = ["a"] };
        Assert.False(new[] { one, one }.FollowOneAnother());
        Assert.True(new[] { one }.FollowOneAnother());
    }

    [Fact]
    public void A_period_may_be_a_single_day_and_none_may_end_before_it_begins()
    {
        Period<string> day = new()
        {
            From = new(2020, 1, 1),
            Until = new(2020, 1, 1),
            Entries = ["a"],
        };
        Assert.True(new[] { day }.FollowOneAnother());
        Period<string> next = new()
        {
            From = new(2020, 1, 2),
            Until = new(2019, 1, 1),
            Entries = ["b"],
        };
        Assert.False(new[] { day, next }.FollowOneAnother());
    }

    /// <summary>Unsound built-in data stop the program before it decides anything.</summary>
    [Fact]
    public void Built_in_data_that_are_missing_empty_misnamed_or_unsound_are_refused()
    {
        Assert.Equal("the index names xx, and there is no Regimes/Data/xx.json", Refused(null));
        var sound = Json(Gb);
        Assert.Equal("Regimes/Data/xx.json: id gb-loler", Refused(sound));
        var unsound = Json(Gb with { Laws = [Gb.Laws[0], Gb.Laws[0]] });
        Assert.StartsWith(
            "Regimes/Data/xx.json: id gb-loler; /laws: the periods do not follow one another",
            Refused(unsound),
            StringComparison.Ordinal
        );
        using var whole = new MemoryStream(Encoding.UTF8.GetBytes(sound));
        Assert.Equal("gb-loler", RegimeIndex.Read("gb-loler", whole).Id);
        using var empty = new MemoryStream("null"u8.ToArray());
        Assert.Throws<JsonException>(() => RegimeIndex.Read("xx", empty));
    }

    [Fact]
    public void An_unknown_id_and_an_empty_list_give_nothing()
    {
        Assert.Null(RegimeIndex.Find("nowhere"));
        Assert.Null(RegimeIndex.Find(null));
        Assert.Empty(Array.Empty<Period<string>>().InForce(new LocalDate(2026, 5, 11)));
        Assert.Empty(Array.Empty<Period<string>>().InForce(null));
    }

    /// <summary>
    /// Where several parts of the data name a rule, its source is the particular, else the duty, else the entry among the checks.
    /// </summary>
    [Fact]
    public void The_source_of_a_rule_is_the_first_provision_that_names_it()
    {
        var day = new LocalDate(2026, 5, 11);
        var particular = Gb with
        {
            Particulars =
            [
                .. Gb.Particulars.Select(p => p with { Entries = [p.Entries[0] with { Checks = ["PAR999"], Source = "particular" }] }),
            ],
        };
        var duty = Gb with
        {
            Duties = [.. Gb.Duties.Select(p => p with { Entries = [p.Entries[0] with { Checks = ["PAR999"], Source = "duty" }] })],
            Checks = [new RegimeCheck("PAR999", "beside")],
        };
        Assert.Equal("duty", duty.SourceOf("PAR999", day));
        Assert.Equal("particular", (duty with { Particulars = particular.Particulars }).SourceOf("PAR999", day));
        Assert.Equal("beside", (Gb with { Checks = duty.Checks }).SourceOf("PAR999", day));
        Assert.Null(Gb.SourceOf("PAR999", day));
    }

    [Theory]
    [InlineData("scheme", "3 months by the examination scheme (the record of the examination)")]
    [InlineData("six-month", "6 months by the six-month basis of the examination (the record of the examination)")]
    public void An_interval_by_the_basis_says_so(string basis, string why)
    {
        var record = ExamDocs.Core.Tests.Determination.GoodRecord.For("pulley");
        var item = record["items"]![0]!;
        item["purpose"] = "other";
        var examination = record["examinations"]![0]!;
        (examination["basis"], examination["scheme"]) = (
            basis,
            System.Text.Json.Nodes.JsonNode.Parse("""{"reference":"S","author":"A","months":3}""")
        );
        var read = ExamDocs.Intake.Json.JsonRecordReader.Read(Encoding.UTF8.GetBytes(record.ToJsonString()), "visit.json").Record!;
        var context = new ExamDocs.Core.Cases.RecordContext(read, ExamDocs.Core.Records.History.None, new LocalDate(2026, 5, 12));
        var examined = context.Examinations[0];
        var interval = Gb.IntervalFor(examined.Examination, examined.Item!.Item.Purpose, examined.On, new LocalDate(2026, 5, 11));
        Assert.Equal((why, true), (interval.Why, interval.IsByBasis));
    }

    private static string Refused(string? json)
    {
        using var stream = json is null ? null : new MemoryStream(Encoding.UTF8.GetBytes(json));
        return Assert.Throws<InvalidOperationException>(() => RegimeIndex.Read("xx", stream)).Message;
    }

    /// <summary>As in a data file, without what follows from other members.</summary>
    private static string Json(Regime regime)
    {
        var json = JsonSerializer.SerializeToNode(regime, RuleJson.Options)!;
        foreach (var law in json["laws"]!.AsArray().SelectMany(p => p!["entries"]!.AsArray()))
            law!.AsObject().Remove("cited");
        return json.ToJsonString();
    }

    private static Regime Gb => RegimeIndex.Find("gb-loler")!;

    private static ExaminationInterval Entry(int months) =>
        new()
        {
            Months = months,
            What = "invented",
            Source = "invented",
            Confidence = Confidence.Read,
        };

    private static Regime With(params ExaminationInterval[] entries) => Gb with { Intervals = [new() { Entries = entries }] };
}
