using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Vocabulary;

namespace ExamDocs.Intake.Tests.Vocabulary;

/// <summary>What is typed where there is no value satisfies nothing, whatever the language, the column and the kind of file.</summary>
public sealed class PlaceholderTests
{
    /// <summary>Typed instead of a serial: code of the finding, and what is typed.</summary>
    public static TheoryData<string, string> Serials { get; } =
        new()
        {
            { "INT084", "n/a" },
            { "INT084", "N/A" },
            { "INT084", "n.a." },
            { "INT084", "None" },
            { "INT084", "nil" },
            { "INT084", "-" },
            { "INT084", "--" },
            { "INT084", "---" },
            { "INT084", "–" },
            { "INT084", "—" },
            { "INT084", "/" },
            { "INT084", "?" },
            { "INT084", "??" },
            { "INT084", "unknown" },
            { "INT084", "(unknown)" },
            { "INT084", "not known" },
            { "INT084", "illegible" },
            { "INT084", "Unreadable" },
            { "INT084", "tbc" },
            { "INT084", "T.B.A." },
            { "INT084", "to follow" },
            { "INT084", "not marked" },
            { "INT084", "no serial" },
            { "INT084", "xxx" },
            { "INT084", "XX" },
            { "INT084", "null" },
            { "INT084", "..." },
            { "INT084", "./." },
            { "INT084", "keine" },
            { "INT084", "ohne" },
            { "INT084", "entfällt" },
            { "INT084", "k.A." },
            { "INT084", "unbekannt" },
            { "INT084", "unleserlich" },
            { "INT084", "nicht lesbar" },
            { "INT084", "fehlt" },
            { "INT084", "wird nachgereicht" },
            { "INT084", "aucun" },
            { "INT084", "néant" },
            { "INT084", "sans objet" },
            { "INT084", "inconnu" },
            { "INT084", "illisible" },
            { "INT084", "à compléter" },
            { "INT085", "as above" },
            { "INT085", "ditto" },
            { "INT085", "\"" },
            { "INT085", "same" },
            { "INT085", "siehe oben" },
            { "INT085", "dito" },
            { "INT085", "idem" },
            { "INT085", "voir ci-dessus" },
            { "INT085", "x" },
            { "INT085", "X" },
            { "INT085", "0" },
            { "INT085", "0000" },
            { "INT085", "NA" },
            { "INT085", "unknown (label gone)" },
            { "INT085", "illegible - worn off" },
            { "INT085", "unbekannt, Etikett fehlt" },
        };

    [Theory]
    [MemberData(nameof(Serials))]
    public void No_placeholder_is_a_serial_from_any_kind_of_file(string code, string typed)
    {
        var inputs = new[]
        {
            FitCord.InWorkbook("serial", typed),
            FitCord.InCsv("serial", typed),
            FitCord.InJson("\"HC-9950\"", System.Text.Json.JsonSerializer.Serialize(typed)),
        };
        Assert.All(inputs, cord =>
        {
            Assert.Null(cord.Record.Items[0].Serial);
            Assert.Equal(code, cord.Codes);
            Assert.Equal(Outcome.Undetermined, cord.Outcome);
            Assert.DoesNotContain("HC-9950", cord.Messages, StringComparison.Ordinal);
        });
        Assert.Matches($@"\A{code} cord\.xlsx!{FitCord.Sheet}![A-Z]+2\z", Assert.Single(inputs[0].Places));
        Assert.Contains($"{code} cord.json#/items/0/serial", inputs[2].Places);
    }

    [Fact]
    public void The_table_holds_forty_and_more_in_three_languages_and_none_of_two_kinds()
    {
        Assert.InRange(Serials.Count, 40, 200);
        Assert.All(Enum.GetValues<Language>(), l =>
            Assert.InRange(Placeholder.All.Where(p => p.Language == l).Sum(p => p.Words.Length), 15, 200)
        );
        foreach (var (kind, _, words) in Placeholder.All)
            Assert.All(words, word => Assert.Equal(kind, Placeholder.Of(word)));
    }

    [Theory]
    [InlineData("HC-9950")]
    [InlineData("X1")]
    [InlineData("0001")]
    [InlineData("A")]
    [InlineData("7")]
    [InlineData("NA-14")]
    [InlineData("No. X")]
    [InlineData("TBC14")]
    [InlineData("Same-2")]
    [InlineData("XXL")]
    [InlineData("unknowable")]
    public void A_real_serial_is_one(string typed)
    {
        var cord = FitCord.InWorkbook("serial", typed);
        Assert.Equal(typed, cord.Record.Items[0].Serial);
        Assert.Equal((Outcome.Fit, ""), (cord.Outcome, cord.Codes));
    }

    /// <summary>Columns of other kinds: what is typed is missing, and the item is fit only where it does without the value.</summary>
    [Theory]
    [InlineData(FitCord.Sheet, "owner's mark", "none", "INT084", Outcome.Fit)]
    [InlineData(FitCord.Sheet, "owner's mark", "X", "INT085", Outcome.Undetermined)]
    [InlineData(FitCord.Sheet, "part number", "-", "INT084", Outcome.Fit)]
    [InlineData(FitCord.Sheet, "part number", "0", "INT085", Outcome.Undetermined)]
    [InlineData(FitCord.Sheet, "maker", "unbekannt", "INT084", Outcome.Undetermined)]
    [InlineData(FitCord.Sheet, "maker", "ditto", "INT085", Outcome.Undetermined)]
    [InlineData(FitCord.Sheet, "model", "wie oben", "INT085", Outcome.Undetermined)]
    [InlineData(FitCord.Sheet, "model", "?", "INT084", Outcome.Undetermined)]
    [InlineData(FitCord.Sheet, "description", "tbc", "INT084", Outcome.Undetermined)]
    [InlineData(FitCord.Sheet, "manufactured", "unknown", "INT084", Outcome.Undetermined)]
    [InlineData(FitCord.Sheet, "first used", "nicht bekannt", "INT084", Outcome.Fit)]
    [InlineData(FitCord.Sheet, "last examined", "inconnu", "INT084", Outcome.Fit)]
    [InlineData(FitCord.Sheet, "obsolete on", "n/a", "INT084", Outcome.Fit)]
    [InlineData(FitCord.Sheet, "obsolete on", "illegible", "INT085", Outcome.Undetermined)]
    [InlineData(FitCord.Sheet, "next by", "tba", "INT085", Outcome.Undetermined)]
    [InlineData(FitCord.Sheet, "next by", "aucun", "INT084", Outcome.Fit)]
    [InlineData(FitCord.Sheet, "examined on", "?", "INT085", Outcome.Undetermined)]
    [InlineData(FitCord.Sheet, "examined on", "-", "INT084", Outcome.Undetermined)]
    [InlineData(FitCord.Sheet, "safe working load", "n/a", "INT084", Outcome.Undetermined)]
    [InlineData(FitCord.Sheet, "safe working load", "unleserlich", "INT084", Outcome.Undetermined)]
    [InlineData("Models", "max use years", "unknown", "INT085", Outcome.Undetermined)]
    [InlineData("Models", "max use years", "-", "INT084", Outcome.Fit)]
    [InlineData("Models", "max age years", "none", "INT084", Outcome.Fit)]
    [InlineData("Models", "max age years", "à confirmer", "INT085", Outcome.Undetermined)]
    [InlineData("Models", "interval months", "tbc", "INT085", Outcome.Undetermined)]
    [InlineData("Models", "source title", "n/a", "INT084", Outcome.Undetermined)]
    [InlineData("Models", "nominal diameter mm", "--", "INT084", Outcome.Fit)]
    [InlineData("Visit", "person address", "as above", "INT085", Outcome.Undetermined)]
    [InlineData("Visit", "person qualifications", "none", "INT084", Outcome.Undetermined)]
    [InlineData("Visit", "person name", "xxx", "INT084", Outcome.Undetermined)]
    [InlineData("Visit", "reference", "tbc", "INT084", Outcome.Undetermined)]
    [InlineData("Visit", "employer address", "siehe oben", "INT085", Outcome.Undetermined)]
    [InlineData("Visit", "premises name", "?", "INT084", Outcome.Undetermined)]
    [InlineData("Visit", "reported on", "tbc", "INT084", Outcome.Undetermined)]
    [InlineData("Visit", "reported on", "idem", "INT085", Outcome.Undetermined)]
    public void In_other_columns_it_is_missing_too(string sheet, string heading, string typed, string code, Outcome outcome)
    {
        var (workbook, csv) = (FitCord.InWorkbook(heading, typed, sheet), FitCord.InCsv(heading, typed, sheet));
        Assert.Equal((code, outcome), (workbook.Codes, workbook.Outcome));
        Assert.Equal((code, outcome), (csv.Codes, csv.Outcome));
    }

    [Theory]
    [InlineData("noted: -")]
    [InlineData("noted: n/a.")]
    [InlineData("defect: ?")]
    [InlineData("doubt: unbekannt")]
    public void A_note_that_is_needed_is_more_than_a_placeholder(string typed)
    {
        var cord = FitCord.InWorkbook("cover-abrasion", typed);
        Assert.NotEqual(Outcome.Fit, cord.Outcome);
        Assert.DoesNotContain(cord.Record.Examinations[0].Observations, o => o.Note is not null);
    }

    [Fact]
    public void In_an_answer_it_is_the_state_that_it_is_listed_for()
    {
        var cord = FitCord.InWorkbook("suppleness", "N/A");
        Assert.Equal(ObservedState.NotApplicable, cord.Record.Examinations[0].Observations.Single(o => o.Criterion == "suppleness").State);
        Assert.Equal("INT080", cord.Codes);
        Assert.Equal(Outcome.Undetermined, FitCord.InWorkbook("heat", "n/a").Outcome);
        Assert.Equal(Outcome.Undetermined, FitCord.InWorkbook("heat", "-").Outcome);
        Assert.Equal(Outcome.Undetermined, FitCord.InWorkbook("heat", "unknown").Outcome);
    }

    [Fact]
    public void A_dash_in_every_row_of_a_large_list_is_counted_and_not_refused()
    {
        var rows = string.Join(
            ',',
            Enumerable.Range(0, 7_500).Select(n => $$"""{ "id": "B-{{n}}", "partNumber": "-", "maker": "-", "model": "-" }""")
        );
        var read = ExamDocs.Intake.Json.JsonRecordReader.Read(
            System.Text.Encoding.UTF8.GetBytes($$"""{ "format": "examdocs/1", "visit": {}, "items": [ {{rows}} ] }"""),
            "list.json"
        );
        Assert.Null(read.Unreadable);
        Assert.Equal("20500 more values are missing in the same way", read.Findings[^1].Message.Text);
        Assert.All(read.Record!.Items, i => Assert.Null(i.PartNumber));
    }
}
