using System.Text.Json.Nodes;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences.Messages;
using NodaTime;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>The words of reasons, letter by letter: beside the outcome they are all that the owner reads of the rule.</summary>
public sealed class ReasonTextTests
{
    [Fact]
    public void D1_names_the_last_day_the_day_of_danger_and_the_defect() =>
        Assert.Equal(
            ["D1 not to be used after 31 Jul 2026: could become a danger by 1 Aug 2026: frayed sheath"],
            Reasons(Bridge().Answer("marking", "defect").Later("marking", "2026-08-01"), r =>
                r.Exam()["defects"]![0]!["description"] = "frayed sheath"
            )
        );

    [Theory]
    [InlineData(true, "marking")]
    [InlineData(false, "defect not described")]
    public void A_defect_without_words_is_named_by_its_criterion_where_it_has_one(bool criterion, string named)
    {
        var record = Bridge().Later("marking", "2026-08-01");
        var defect = record.Exam()["defects"]![0]!.AsObject().Without("description");
        if (!criterion)
            defect.Remove("criterion");
        var texts = Decided
            .From(record)
            .Item()
            .Reasons.Select(r => r.Text)
            .Concat(Decided.From(record).Item().CaseForService.Select(e => e.Text));
        Assert.NotEmpty(texts);
        var until = new ExamDocs.Core.Determination.FitUntil.DefectBecomesDanger().Days(Case(record), null!).Single().Reason.Text;
        Assert.Equal($"not to be used after 31 Jul 2026: could become a danger by 1 Aug 2026: {named}", until);
    }

    [Fact]
    public void D2_names_the_limit_that_ends() =>
        Assert.Equal(
            [
                "D2 not to be used after 20 Jun 2026: 2 years in use from first use on 20 Jun 2024 (Instructions for M-IT-1, "
                    + "revision 2, page 7)",
            ],
            Reasons(Bridge(), r =>
            {
                r.Item()["firstUsed"] = "2024-06-20";
                r.Limits()["maxUseYears"] = 2;
            })
        );

    [Fact]
    public void D3_names_the_part()
    {
        var record = GoodRecord.Assembly();
        record.Answer("marking", "defect", "B").Later("marking", "2026-08-01", "B");
        Assert.Equal(["D3 not to be used after 31 Jul 2026, the last day of the part B fitted to it"], Texts(Decided.From(record), "A"));
    }

    [Fact]
    public void W4_says_that_the_day_of_danger_has_come() =>
        Assert.Contains(
            "W4 could become a danger by 11 May 2026, which is not after the day examined: something invented",
            Reasons(Bridge().Later("marking", "2026-05-11"), r => r.Exam()["defects"]![0]!["description"] = "something invented")
        );

    [Theory]
    [InlineData("PN-B", "part number PN-B")]
    [InlineData(null, "a part without a part number")]
    public void W8_names_the_part_and_all_that_are_permitted(string? number, string named)
    {
        var record = GoodRecord.Assembly();
        record.Limits("A")["permittedParts"] = new JsonArray("SP-1", "SP-2");
        record.Item("B")["partNumber"] = number;
        Assert.Contains(
            $"W8 {named} is not among the parts permitted on A: SP-1, SP-2 (Instructions for M-A, revision 2, page 7)",
            Texts(Decided.From(record), "B")
        );
    }

    [Theory]
    [InlineData("An invented thing")]
    [InlineData("an item without an id")]
    public void W9_names_a_part_without_an_id_by_what_it_is(string named)
    {
        var record = GoodRecord.Assembly();
        var part = record.Item("C").Without("id");
        if (named.StartsWith("an item", StringComparison.Ordinal))
            part.Without("description");
        Assert.Equal(named, ExamDocs.Core.Sentences.Say.Name(ExamDocs.Core.Sentences.SentenceBook.English, Cases(record).Items[2].Item));
    }

    [Fact]
    public void W10_names_the_document_and_whether_a_release_was_tried()
    {
        PastWithdrawal open = new(GoodRecord.Id, "Q-2025-000007", new LocalDate(2025, 11, 20), ["W1"], NeverReleasable: false);
        Assert.Equal(
            ["W10 withdrawn on 20 Nov 2025 by Q-2025-000007 (a decisive criterion is defective), and not released since"],
            Texts(Decided.From(Bridge(), open)).Where(t => t.StartsWith('W'))
        );
        Assert.Equal(
            ["W10 withdrawn on 20 Nov 2025 by Q-2025-000007 (a decisive criterion is defective), which no release can end"],
            Texts(Decided.From(Bridge().Release("Q-2025-000007"), open with { NeverReleasable = true })).Where(t => t.StartsWith('W'))
        );
    }

    /// <summary>A reader need not know the codes. A code of a later version, which has no title here, is printed as it is.</summary>
    [Fact]
    public void Rules_are_said_in_words_in_each_language()
    {
        var said = OutcomeRules.InWords(["W1", "U5", "W99"]);
        Assert.Equal("a decisive criterion is defective; textile or plastic kit has no time limit recorded; W99", said.Text);
        Assert.Equal(
            "ein entscheidendes Kriterium ist mangelhaft; für Ausrüstung aus Textil oder Kunststoff ist keine Zeitgrenze eingetragen; W99",
            said.In(TranslatedMessages.German)
        );
        Assert.All(
            from language in new MessageLanguage[] { TranslatedMessages.German, TranslatedMessages.French }
            from rule in OutcomeRules.All
            select (language, rule),
            both =>
                Assert.NotEqual(
                    OutcomeRules.InWords([both.rule.Code]).Text,
                    OutcomeRules.InWords([both.rule.Code]).In(both.language),
                    StringComparer.Ordinal
                )
        );
    }

    /// <summary>A last day of use is left out for an item that may not be used at all.</summary>
    [Fact]
    public void A_withdrawn_item_has_no_last_day_among_its_reasons() =>
        Assert.Equal("W1 U3", Decided.From(Bridge().Answer("cover-cut", "defect").Later("cover-cut", "2026-08-01")).Codes());

    private static JsonObject Bridge() => GoodRecord.For("rope-bridge");

    private static IEnumerable<string> Reasons(JsonObject record, Action<JsonObject> edit)
    {
        edit(record);
        return Texts(Decided.From(record));
    }

    private static IEnumerable<string> Texts(Decided decided, string id = GoodRecord.Id) =>
        decided.Item(id).Reasons.Select(r => $"{r.Code} {r.Text}");

    private static ExamDocs.Core.Cases.ItemCase Case(JsonObject record) => Cases(record).Items[0];

    private static ExamDocs.Core.Cases.RecordContext Cases(JsonObject record) =>
        new(
            ExamDocs.Intake.Json.JsonRecordReader.Read(System.Text.Encoding.UTF8.GetBytes(record.ToJsonString()), "visit.json").Record!,
            History.None,
            new LocalDate(2026, 5, 12)
        );
}
