using ExamDocs.Core.Records;
using static ExamDocs.Intake.Tests.Workbook.XlsxFile;

namespace ExamDocs.Intake.Tests.Workbook;

/// <summary>What an answer's cell may hold besides the word, and what it then counts as.</summary>
public sealed class AnswerTests
{
    [Theory]
    [InlineData("defect - cut 4 mm", ObservedState.Defect, "defect - cut 4 mm")]
    [InlineData("DEFECT!", ObservedState.Defect, null)]
    [InlineData("Defective", ObservedState.Defect, "Defective")]
    [InlineData("defect-free?", ObservedState.Defect, "defect-free?")]
    [InlineData("?doubt", ObservedState.Doubt, null)]
    [InlineData("Doubtful, see photo", ObservedState.Doubt, "Doubtful, see photo")]
    [InlineData("- Defect: cut 4 mm", ObservedState.Defect, "- Defect: cut 4 mm")]
    public void What_begins_with_an_adverse_word_counts_as_that(string typed, ObservedState state, string? note)
    {
        var read = Read(typed);
        var seen = Assert.Single(Assert.Single(read.Record.Examinations).Observations);
        Assert.Equal((state, typed, note), (seen.State, seen.StateAsTyped, seen.Note));
        Assert.Equal(["INT061 kit.xlsx!Rope bridges!B2"], read.Places);
    }

    [Theory]
    [InlineData("no defect")]
    [InlineData("yes")]
    [InlineData("pass")]
    [InlineData("n.i.O.")]
    [InlineData("clear!")]
    [InlineData("undoubted")]
    [InlineData("clear - cut 4 mm")]
    public void What_begins_otherwise_is_no_answer(string typed)
    {
        var read = Read(typed);
        Assert.Null(Assert.Single(Assert.Single(read.Record.Examinations).Observations).State);
        Assert.Equal(["INT005 kit.xlsx!Rope bridges!B2"], read.Places);
    }

    [Theory]
    [InlineData("noted: dried soil", ObservedState.Noted, "dried soil")]
    [InlineData("Noted: dried soil", ObservedState.Noted, "dried soil")]
    [InlineData("OK: washed before", ObservedState.Clear, "washed before")]
    [InlineData("N/A: it has no eye", ObservedState.NotApplicable, "it has no eye")]
    [InlineData("Mangel: Schnitt, 4 mm", ObservedState.Defect, "Schnitt, 4 mm")]
    [InlineData("noté : terre sèche", ObservedState.Noted, "terre sèche")]
    [InlineData(" noted : dried soil: wiped off", ObservedState.Noted, "dried soil: wiped off")]
    [InlineData("defect:cut 4 mm", ObservedState.Defect, "cut 4 mm")]
    [InlineData("doubt: clear or not?", ObservedState.Doubt, "clear or not?")]
    [InlineData("clear:", ObservedState.Clear, null)]
    [InlineData("clear: washed before", ObservedState.Clear, "washed before")]
    public void A_note_may_follow_its_answer_in_the_same_cell(string typed, ObservedState state, string? note)
    {
        var read = Read(typed);
        var seen = Assert.Single(Assert.Single(read.Record.Examinations).Observations);
        Assert.Equal((state, note), (seen.State, seen.Note));
        Assert.Empty(read.Places);
    }

    [Theory]
    [InlineData("clear: defect at 200 mm")]
    [InlineData("clear: slight doubt")]
    [InlineData("clear: (noted) soil")]
    [InlineData("clear: not-examined at the eye")]
    [InlineData("no-sign: Defect")]
    [InlineData("noted: doubtful")]
    [InlineData("clear: owner withdrew it")]
    [InlineData("ok: Mangel am Auge")]
    [InlineData("clear: léger défaut")]
    [InlineData("in Ordnung: kein Zweifel")]
    [InlineData("noted: n/a")]
    [InlineData("clear: not examined, too dirty")]
    public void Two_answers_in_a_cell_are_none(string typed)
    {
        var read = Read(typed);
        var seen = Assert.Single(Assert.Single(read.Record.Examinations).Observations);
        Assert.Equal((null, null, typed), (seen.State, seen.StateAsTyped, seen.Note));
        Assert.Equal(["INT062 kit.xlsx!Rope bridges!B2"], read.Places);
    }

    [Theory]
    [InlineData("clear", "defect at 200 mm")]
    [InlineData("OK", "cracked")]
    [InlineData("clear", "NOTED: soil")]
    [InlineData("clear", "must be taken out of service")]
    [InlineData("clear", "Haarriss am Auge")]
    [InlineData("no-sign", "Defect")]
    [InlineData("no-sign", "no cut seen, rope core torn")]
    [InlineData("clear", "no doubt cracked")]
    [InlineData("clear", "no, cracked")]
    [InlineData("clear", "keine Schäden, aber Rost")]
    [InlineData("clear", "sans défaut, déchirure")]
    [InlineData("noted", "defect")]
    [InlineData("not-applicable", "not examined, too dirty")]
    public void Two_answers_in_a_cell_and_its_column_of_notes_are_none(string typed, string note)
    {
        var read = Read(typed, note);
        var seen = Assert.Single(Assert.Single(read.Record.Examinations).Observations);
        Assert.Equal((null, null), (seen.State, seen.StateAsTyped));
        Assert.EndsWith($": {note}", seen.Note, StringComparison.Ordinal);
        Assert.Equal(["INT062 kit.xlsx!Rope bridges!B2"], read.Places.Where(p => !p.StartsWith("INT080", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("clear", "washed before")]
    [InlineData("clear", "clear of dirt once it was washed")]
    [InlineData("noted", "noted last time too")]
    [InlineData("noted", "defect of an earlier owner, mended")]
    [InlineData("not-applicable", "the end stitch is missing by design")]
    [InlineData("clear", "no doubt about it")]
    [InlineData("clear", "no damage, no signs of wear")]
    [InlineData("clear", "keine sichtbaren Schäden")]
    [InlineData("clear", "aucun défaut, pas d'usure")]
    [InlineData("defect", "clear cut of 4 mm")]
    [InlineData("clear", "fit")]
    public void One_answer_and_a_note_beside_it_stay(string typed, string note)
    {
        var read = Read(typed, note);
        var seen = Assert.Single(Assert.Single(read.Record.Examinations).Observations);
        Assert.Equal((typed, note), (seen.StateAsTyped, seen.Note));
        Assert.Empty(read.Places);
    }

    [Fact]
    public void A_note_in_the_cell_and_one_in_its_column_are_an_error_and_both_kept()
    {
        var read = Read("defect: cut 4 mm", "near the eye");
        var seen = Assert.Single(Assert.Single(read.Record.Examinations).Observations);
        Assert.Equal((ObservedState.Defect, "cut 4 mm; near the eye"), (seen.State, seen.Note));
        Assert.Equal(["INT063 kit.xlsx!Rope bridges!B2"], read.Places);
        Assert.Empty(Read("defect:", "near the eye").Places);
    }

    [Theory]
    [InlineData("withdrawn - cut", Conclusion.Withdraw)]
    [InlineData("WITHDREW", Conclusion.Withdraw)]
    [InlineData("pass", null)]
    [InlineData("yes", null)]
    [InlineData("fit: but cut", null)]
    public void A_conclusion_that_begins_with_withdraw_is_one(string typed, Conclusion? conclusion)
    {
        var read = Read("clear", "", typed);
        Assert.Equal(conclusion, Assert.Single(read.Record.Examinations).Conclusion);
        Assert.Equal([$"{(conclusion is null ? "INT005" : "INT061")} kit.xlsx!Rope bridges!D2"], read.Places);
    }

    [Fact]
    public void Earlier_observations_are_read_by_the_same_rule()
    {
        var read = new ReadWorkbook(
            new XlsxFile().Sheet(
                "Earlier observations",
                Row("item", "examined on", "criterion", "state", "note")
                    + Row("B-1", "2025-11-10", "cover-cut", "noted: soil")
                    + Row("B-1", "2025-11-10", "heat", "Defect: glazed")
                    + Row("B-1", "2025-11-10", "core-visible", "clear: doubt")
            )
        );
        Assert.Equal(
            [(ObservedState.Noted, "soil"), (ObservedState.Defect, "glazed"), (null, "clear: doubt")],
            Assert.Single(read.Record.Examinations).Observations.Select(o => (o.State, o.Note!))
        );
        Assert.DoesNotContain(read.Places, p => p.StartsWith("INT061", StringComparison.Ordinal));
        Assert.Contains("INT062 kit.xlsx!Earlier observations!D4", read.Places);
    }

    private static ReadWorkbook Read(string state, string note = "", string conclusion = "") =>
        new(
            new XlsxFile().Sheet(
                "Rope bridges",
                Row("id", "cover-cut", "cover-cut note", "conclusion") + Row("B-1", state, note, conclusion)
            )
        );

    /// <summary>Who found nothing types clear alone: what says something bad behind it is another answer.</summary>
    [Theory]
    [InlineData("clear: cracked")]
    [InlineData("clear: broken")]
    [InlineData("clear: gate does not close")]
    [InlineData("OK: riss 3 mm")]
    [InlineData("i.O.: gebrochen")]
    [InlineData("clear: Haarriss")]
    [InlineData("clear: n.i.O.")]
    [InlineData("clear: NOK")]
    [InlineData("clear: must be taken out of service")]
    [InlineData("RAS: fissuré")]
    [InlineData("clear: fissure\u0301")]
    [InlineData("clear: cr\u00ADacked")]
    public void Clear_with_something_bad_behind_it_is_no_answer(string typed)
    {
        var read = new ReadWorkbook(new XlsxFile().Sheet("Rope bridges", XlsxFile.Row("id", "cover-cut") + XlsxFile.Row("B-1", typed)));
        Assert.Null(read.Record.Examinations[0].Observations[0].State);
        Assert.Contains(read.Findings, f => f.Code is "INT062");
    }
}
