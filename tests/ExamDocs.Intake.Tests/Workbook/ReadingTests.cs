using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using static ExamDocs.Intake.Tests.Workbook.XlsxFile;

namespace ExamDocs.Intake.Tests.Workbook;

/// <summary>What users do to a workbook, and what becomes of it.</summary>
public sealed class ReadingTests
{
    private const string Headings = "id,description,examiner,cover-cut,cover-cut note,conclusion";

    [Fact]
    public void Columns_may_stand_in_any_order_and_headings_in_any_case()
    {
        var read = Bridges("Conclusion,COVER-CUT  Note,cover-cut,Examiner, Id ,serial", "fit,seen,noted,ex1,B-1,0012");
        Assert.Empty(read.Places);
        var item = Assert.Single(read.Record.Items);
        Assert.Equal(("B-1", "rope-bridge", "0012"), (item.Id, item.Category, item.Serial));
        var examination = Assert.Single(read.Record.Examinations);
        Assert.Equal(("B-1", "ex1", Conclusion.Fit), (examination.Item, examination.Examiner, examination.Conclusion));
        Assert.Equal(
            ("cover-cut", ObservedState.Noted, "seen"),
            (examination.Observations[0].Criterion, examination.Observations[0].State, examination.Observations[0].Note)
        );
    }

    [Fact]
    public void A_misspelt_column_is_named_at_each_value_and_passed_over_where_it_holds_none()
    {
        var read = Bridges("id,description,serail", "B-1,short,red", "B-2,long,");
        Assert.Equal("INT021 kit.xlsx!Rope bridges!C2", Assert.Single(read.Places));
        Assert.Equal(["/items/0/serail"], read.Content.Findings.Select(f => f.Path).ToList());
        Assert.Equal(2, read.Record.Items.Count);
    }

    [Fact]
    public void A_value_without_a_heading_is_reported() =>
        Assert.Equal("INT022 kit.xlsx!Rope bridges!C2", Assert.Single(Bridges("id,description", "B-1,short,stray").Places));

    [Fact]
    public void A_row_with_nothing_under_a_known_heading_is_no_item_and_is_reported()
    {
        var read = Bridges("id,remark", ",checked");
        Assert.Empty(read.Record.Items);
        Assert.Equal("INT021 kit.xlsx!Rope bridges!B2", Assert.Single(read.Places));
    }

    [Fact]
    public void An_unknown_sheet_is_named_where_something_stands_on_it()
    {
        var file = new XlsxFile().Sheet("Rope bridges", Row("id") + Row("B-1")).Sheet("Bridges 2", Row("id")).Sheet("Sheet3", "<row/>");
        Assert.Equal("INT020 kit.xlsx!Bridges 2!A1", Assert.Single(new ReadWorkbook(file).Places));
    }

    [Fact]
    public void A_misspelt_state_keeps_its_cell_and_is_no_answer()
    {
        var read = Bridges(Headings, "B-1,short,ex1,claer,,fit");
        Assert.Equal("INT005 kit.xlsx!Rope bridges!D2", Assert.Single(read.Places));
        var observation = Assert.Single(read.Record.Examinations[0].Observations);
        Assert.Equal(("claer", null), (observation.StateAsTyped, observation.State));
    }

    [Fact]
    public void An_empty_criterion_is_no_observation_and_its_place_is_known()
    {
        var read = Bridges(Headings, "B-1,short,ex1,,,fit");
        Assert.Empty(Assert.Single(read.Record.Examinations).Observations);
        Assert.Equal("Rope bridges!D2", read.Content.Cells["/examinations/0/observations"]);
        Assert.Equal("Rope bridges!D2", read.Content.Cells["/examinations/0/observations/cover-cut"]);
    }

    [Fact]
    public void A_note_without_a_state_is_an_observation_without_a_state()
    {
        var observation = Assert.Single(Bridges(Headings, "B-1,short,ex1,,frayed,fit").Record.Examinations[0].Observations);
        Assert.Equal(("cover-cut", null, "frayed"), (observation.Criterion, observation.StateAsTyped, observation.Note));
    }

    [Fact]
    public void Every_place_of_a_row_is_known_filled_or_not()
    {
        var cells = Bridges("id,serial,safe working load,cover-cut,cover-cut note,conclusion", "B-1,,,clear,,").Content.Cells;
        Assert.Equal("Rope bridges!A2", cells["/items/0"]);
        Assert.Equal("Rope bridges!A2", cells["/items/0/id"]);
        Assert.Equal("Rope bridges!B2", cells["/items/0/serial"]);
        Assert.Equal("Rope bridges!C2", cells["/items/0/safeWorkingLoad/value"]);
        Assert.Equal("Rope bridges!D2", cells["/examinations/0/observations/0"]);
        Assert.Equal("kit.xlsx!Rope bridges!D2", SourceMap.ForWorkbook("kit.xlsx", cells).Locate("/examinations/0/observations/0/state"));
        Assert.Equal("Rope bridges!E2", cells["/examinations/0/observations/0/note"]);
        Assert.Equal("Rope bridges!F2", cells["/examinations/0/conclusion"]);
    }

    [Fact]
    public void Rows_keep_their_places_over_gaps_and_over_sheets_of_one_list()
    {
        var rows = (string[])["B-1", "B-2", "", "B-3", "", "", "B-4", "B-5"];
        var file = new XlsxFile()
            .Sheet("Rope bridges", Row("id", "conclusion") + string.Concat(rows.Select(id => id.Length == 0 ? "<row/>" : Row(id))))
            .Sheet(
                "Harnesses",
                Row("serial", "id", "conclusion") + Row("", "H-1", "fit") + Row("", "H-2") + "<row/>" + Row("", "H-3", "fit")
            );
        var read = new ReadWorkbook(file);
        var cells = read.Content.Cells;
        Assert.Empty(read.Places);
        Assert.Equal(["B-1", "B-2", "B-3", "B-4", "B-5", "H-1", "H-2", "H-3"], read.Record.Items.Select(i => i.Id));
        Assert.Equal(
            [
                "Rope bridges!A2",
                "Rope bridges!A3",
                "Rope bridges!A5",
                "Rope bridges!A8",
                "Rope bridges!A9",
                "Harnesses!B2",
                "Harnesses!B3",
                "Harnesses!B5",
            ],
            read.Record.Items.Select((_, n) => cells[FormattableString.Invariant($"/items/{n}/id")])
        );
        Assert.Equal(
            ["Harnesses!C2", "Harnesses!C5"],
            read.Record.Examinations.Select((_, n) => cells[FormattableString.Invariant($"/examinations/{n}/conclusion")])
        );
        Assert.False(cells.ContainsKey("/items/8"));
        Assert.False(cells.ContainsKey("/items/8/id"));
        Assert.All(cells, place => Assert.Equal(place.Value, cells[place.Key]));
        Assert.Contains(KeyValuePair.Create("/items/5/serial", "Harnesses!A2"), cells);
        Assert.Equal(cells.Count, cells.Select(place => place.Key).Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void An_item_without_anything_of_an_examination_has_none() =>
        Assert.Empty(Bridges(Headings, "B-1,short,,,,").Record.Examinations);

    [Fact]
    public void Two_columns_of_one_heading_both_count()
    {
        var read = Bridges("id,cover-cut,cover-cut,serial,serial", "B-1,clear,defect,1a,1b");
        Assert.Equal([ObservedState.Clear, ObservedState.Defect], read.Record.Examinations[0].Observations.Select(o => o.State!.Value));
        Assert.Equal("INT002 kit.xlsx!Rope bridges!D2", Assert.Single(read.Places));
    }

    [Fact]
    public void A_danger_named_for_an_item_without_an_examination_is_carried_and_reported()
    {
        var read = new ReadWorkbook(
            new XlsxFile()
                .Sheet("Rope bridges", Row("id") + Row("B-1"))
                .Sheet(
                    "Defects",
                    Row("item", "criterion", "danger") + Row("B-1", "cover-cut", "now") + Row("B-9", "heat", "now") + Row("", "heat", "now")
                )
        );
        Assert.Equal(["INT030 kit.xlsx!Defects!A2", "INT030 kit.xlsx!Defects!A3", "INT031 kit.xlsx!Defects!A4"], read.Places);
        Assert.Equal(
            [("B-1", Danger.Now), ("B-9", Danger.Now), (null, Danger.Now)],
            read.Record.Examinations.Select(e => (e.Item, e.Defects[0].Danger!.Value))
        );
    }

    [Fact]
    public void Rows_of_other_sheets_go_to_the_examination_of_their_day()
    {
        var read = new ReadWorkbook(
            new XlsxFile()
                .Sheet(
                    "Diameters",
                    Row("item", "examined on", "position mm", "reading 1", "reading 2")
                        + Row("B-1", "", "50", "11.1", "11.0")
                        + Row("B-1", "2025-11-10", "50", "11.3")
                )
                .Sheet("Photos", Row("item", "criterion", "photo") + Row("B-1", "cover-cut", "p.jpg") + Row("B-1", "termination", "q.jpg"))
                .Sheet(
                    "Earlier observations",
                    Row("item", "examined on", "criterion", "state")
                        + Row("B-1", "2025-11-10", "heat", "clear")
                        + Row("B-1", "", "heat", "clear")
                )
                .Sheet("Earlier examinations", Row("item", "examined on", "conclusion") + Row("B-1", "2025-11-10", "fit"))
                .Sheet("Rope bridges", Row("id", "cover-cut") + Row("B-1", "clear"))
                .Sheet("Visit", Row("particular", "value") + Row("examined on", "2026-05-11"))
        );
        Assert.Equal(
            ["INT032 kit.xlsx!Earlier observations!B3", "INT033 kit.xlsx!Photos!C3"],
            read.Places.Order(StringComparer.Ordinal).ToList()
        );
        Assert.Equal(2, read.Record.Examinations.Count);
        Assert.Equal([11.1m, 11.0m], read.Record.Examinations[0].Diameters[0].ReadingsMm.Select(r => r!.Value));
        Assert.Equal([11.3m], read.Record.Examinations[1].Diameters[0].ReadingsMm.Select(r => r!.Value));
        Assert.Equal("p.jpg", read.Record.Examinations[0].Observations[0].Photo);
        Assert.Equal("heat", Assert.Single(read.Record.Examinations[1].Observations).Criterion);
    }

    [Fact]
    public void Two_examinations_of_one_item_on_one_day_are_reported()
    {
        var read = new ReadWorkbook(
            new XlsxFile()
                .Sheet("Rope bridges", Row("id", "examined on", "conclusion") + Row("B-1", "2026-05-11", "fit"))
                .Sheet("Earlier examinations", Row("item", "examined on", "conclusion") + Row("B-1", "2026-05-11", "fit"))
        );
        Assert.Equal("INT038 kit.xlsx!Earlier examinations!B2", Assert.Single(read.Places));
    }

    [Fact]
    public void Hidden_rows_and_sheets_are_read_and_reported()
    {
        var read = new ReadWorkbook(
            new XlsxFile()
                .Sheet("Rope bridges", Row("id") + Row("B-1").Replace("<row>", "<row hidden=\"1\">", StringComparison.Ordinal))
                .Sheet("Helmets", Row("id") + Row("C-1"), "state=\"hidden\"")
        );
        Assert.Equal(2, read.Record.Items.Count);
        Assert.Equal(["INT034 kit.xlsx!Rope bridges!A2", "INT034 kit.xlsx!Helmets!A1"], read.Places);
    }

    [Fact]
    public void The_visit_is_read_by_its_particulars()
    {
        var read = new ReadWorkbook(
            new XlsxFile().Sheet(
                "Visit",
                Row("particular", "value", "what to type")
                    + Row("Employer  name", "Alder", "help")
                    + Row("examined on", "11/05/2026")
                    + Row("weather", "dry")
                    + Row("", "stray")
                    + Row("regime", "gb-loler", "", "note")
            )
        );
        Assert.Equal("Alder", read.Record.Visit.Employer!.Name);
        Assert.Equal(
            [
                "INT004 kit.xlsx!Visit!B3",
                "INT021 kit.xlsx!Visit!B4",
                "INT021 kit.xlsx!Visit!B5",
                "INT022 kit.xlsx!Visit!D6",
                "INT067 kit.xlsx!Visit!C2",
            ],
            read.Places.Order(StringComparer.Ordinal).ToList()
        );
    }

    /// <param name="lines">Rows, their cells separated by commas.</param>
    private static ReadWorkbook Bridges(params string[] lines) =>
        new(new XlsxFile().Sheet("Rope bridges", string.Concat(lines.Select(l => Row(l.Split(','))))));
}
