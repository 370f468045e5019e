using ExamDocs.Core.Records;
using ExamDocs.Intake.Workbook.Package;
using static ExamDocs.Intake.Tests.Workbook.XlsxFile;

namespace ExamDocs.Intake.Tests.Workbook;

/// <summary>What becomes of single cells, as spreadsheet programs store them.</summary>
public sealed class CellTests
{
    [Theory]
    [InlineData("_x005F_x0041_", "_x0041_")]
    [InlineData("_x0041_", "A")]
    [InlineData("a_x000A_b", "a\nb")]
    public void An_escaped_text_is_turned_back_once(string stored, string typed)
    {
        Assert.Equal(
            typed,
            new ReadWorkbook(new XlsxFile().Sheet("Rope bridges", Row("id", "description") + Row("B-1", stored)))
                .Record
                .Items[0]
                .Description
        );
        Assert.Equal(
            typed,
            new ReadWorkbook(
                new XlsxFile { SharedStrings = [$"<t>{stored}</t>"] }.Sheet(
                    "Rope bridges",
                    Row("id", "description") + Row("B-1", "<c t=\"s\"><v>0</v></c>")
                )
            )
                .Record
                .Items[0]
                .Description
        );
    }

    private static readonly string[] Formats =
    [
        "yyyy-mm-dd",
        "[$-409]d-mmm-yy",
        "[Red]0.00",
        "h:mm",
        "[h]:mm",
        "dd/mm/yyyy hh:mm",
        "00000",
        "0%",
    ];

    /// <summary>
    /// Source of the serials: ECMA-376 1st ed. Part 4, "Date Representation", and MS-XLS Date1904; 40729 / 39267 from
    /// the help page of e_convert_Date_to_ExcelDate; 45351 / 43889 computed from those.
    /// </summary>
    [Theory]
    [InlineData("", "40729", "2011-07-05")]
    [InlineData("date1904=\"1\"", "39267", "2011-07-05")]
    [InlineData("date1904=\"true\"", "43889", "2024-02-29")]
    [InlineData("date1904=\"0\"", "45351", "2024-02-29")]
    [InlineData("", "1", "1900-01-01")]
    [InlineData("", "59", "1900-02-28")]
    [InlineData("", "61", "1900-03-01")]
    [InlineData("", "36526", "2000-01-01")]
    [InlineData("", "60", null)]
    [InlineData("", "0", null)]
    [InlineData("", "-3", null)]
    [InlineData("", "2958466", null)]
    public void A_date_cell_is_a_day_or_is_refused(string properties, string serial, string? day)
    {
        var read = Item("manufactured", $"<c s=\"1\"><v>{serial}</v></c>", properties);
        Assert.Equal(day, read.Record.Items[0].Manufactured?.ToString());
        Assert.Equal(day is null ? "INT026 kit.xlsx!Rope bridges!B2" : "", string.Join(' ', read.Places));
    }

    [Theory]
    [InlineData("<c s=\"2\"><v>45351</v></c>", "2024-02-29", "")]
    [InlineData("<c s=\"6\"><v>45351</v></c>", "2024-02-29", "")]
    [InlineData("<c s=\"6\"><v>45351.5</v></c>", null, "INT025")]
    [InlineData("<c s=\"4\"><v>0.5</v></c>", null, "INT025")]
    [InlineData("<c s=\"5\"><v>1.5</v></c>", null, "INT025")]
    [InlineData("<c s=\"3\"><v>45351</v></c>", null, "INT004")]
    [InlineData("<c><v>2024</v></c>", "2024", "")]
    [InlineData("<c><v>45351</v></c>", null, "INT004")]
    [InlineData("<c t=\"d\"><v>2024-02-29</v></c>", "2024-02-29", "")]
    [InlineData("<c t=\"d\"><v>2024-02-29T00:00:00.000</v></c>", "2024-02-29", "")]
    [InlineData("<c t=\"d\"><v>2024-02-29T12:30:00</v></c>", null, "INT025")]
    [InlineData("<c t=\"str\"><f>A1</f><v>2024-02</v></c>", "2024-02", "INT035")]
    [InlineData("<c t=\"inlineStr\"><is><t> 2024-02&#160;</t></is></c>", "2024-02", "")]
    [InlineData("<c t=\"inlineStr\"><is><t>03/04/2026</t></is></c>", null, "INT004")]
    [InlineData("<c t=\"e\"><v>#N/A</v></c>", null, "INT023")]
    [InlineData("<c><f>TODAY()</f></c>", null, "INT024")]
    [InlineData("<c><f>TODAY()</f><v/></c>", null, "INT024")]
    [InlineData("<c t=\"s\"><v>77</v></c>", null, "INT036")]
    [InlineData("<c t=\"s\"><v>-1</v></c>", null, "INT036")]
    [InlineData("<c s=\"1\"><v>1E+400</v></c>", null, "INT036")]
    [InlineData("<c t=\"weird\"><v>1</v></c>", null, "INT036")]
    public void In_a_date_column(string cell, string? day, string code)
    {
        var read = Item("manufactured", cell);
        Assert.Equal(day, read.Record.Items[0].Manufactured?.ToString());
        Assert.Equal(code.Length == 0 ? "" : $"{code} kit.xlsx!Rope bridges!B2", string.Join(' ', read.Places));
    }

    [Theory]
    [InlineData("<c><v>12345</v></c>", "12345", "INT028")]
    [InlineData("<c s=\"7\"><v>123</v></c>", "00123", "")]
    [InlineData("<c><v>1.1000000000000001</v></c>", "1.1", "INT028")]
    [InlineData("<c><v>1.2345E+5</v></c>", "123450", "INT028")]
    [InlineData("<c><v>1234567890123456</v></c>", "1234567890123456", "INT029")]
    [InlineData("<c s=\"1\"><v>12345</v></c>", null, "INT027")]
    [InlineData("<c s=\"8\"><v>0.1</v></c>", null, "INT039")]
    [InlineData("<c t=\"s\"><v>0</v></c>", "plain rich", "")]
    [InlineData("<c t=\"s\"><v>1</v></c>", "課", "")]
    [InlineData("<c t=\"str\"><v>a_x000A_b</v></c>", "a\nb", "")]
    [InlineData("<c t=\"b\"><v>1</v></c>", "TRUE", "")]
    public void In_a_serial(string cell, string? text, string code)
    {
        var read = Item("serial", cell);
        Assert.Equal(text, read.Record.Items[0].Serial);
        Assert.Equal(code.Length == 0 ? "" : $"{code} kit.xlsx!Rope bridges!B2", string.Join(' ', read.Places));
    }

    [Theory]
    [InlineData("<c><v>1.1000000000000001</v></c>", "1.1", "")]
    [InlineData("<c s=\"3\"><v>25</v></c>", "25", "")]
    [InlineData("<c t=\"inlineStr\"><is><t>12.5</t></is></c>", "12.5", "")]
    [InlineData("<c t=\"inlineStr\"><is><t>12,5</t></is></c>", "12.5", "")]
    [InlineData("<c t=\"inlineStr\"><is><t>1,250</t></is></c>", null, "INT053")]
    [InlineData("<c s=\"1\"><v>45351</v></c>", null, "INT027")]
    [InlineData("<c s=\"8\"><v>0.1</v></c>", null, "INT039")]
    [InlineData("<c t=\"e\"><v>#DIV/0!</v></c>", null, "INT023")]
    public void In_a_number_column(string cell, string? value, string code)
    {
        var read = Item("safe working load", cell);
        Assert.Equal(value, read.Record.Items[0].SafeWorkingLoad?.Value?.ToString(System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal(code.Length == 0 ? "" : $"{code} kit.xlsx!Rope bridges!B2", string.Join(' ', read.Places));
    }

    [Theory]
    [InlineData("<c t=\"b\"><v>1</v></c>", true)]
    [InlineData("<c t=\"inlineStr\"><is><t>Yes</t></is></c>", true)]
    [InlineData("<c t=\"inlineStr\"><is><t>no</t></is></c>", false)]
    [InlineData("<c t=\"inlineStr\"><is><t>maybe</t></is></c>", null)]
    [InlineData("<c><v>1</v></c>", null)]
    public void In_a_yes_or_no_column(string cell, bool? value)
    {
        var read = Item("never used", cell);
        Assert.Equal(value, read.Record.Items[0].NeverUsed);
        Assert.Equal(value is null ? "INT003 kit.xlsx!Rope bridges!B2" : "", string.Join(' ', read.Places));
    }

    [Fact]
    public void A_list_is_split_at_semicolons_and_each_entry_has_the_cell()
    {
        var read = Item("standards", "<c t=\"inlineStr\"><is><t>EN 358; EN 813 ;;</t></is></c>");
        Assert.Equal("EN 358|EN 813", string.Join('|', read.Record.Items[0].Standards));
        Assert.Equal("Rope bridges!B2", read.Content.Cells["/items/0/standards/1"]);
    }

    [Fact]
    public void An_error_in_an_answer_leaves_it_without_a_state()
    {
        var read = Item("cover-cut", "<c t=\"e\"><v>#REF!</v></c>");
        Assert.Null(Assert.Single(read.Record.Examinations[0].Observations).StateAsTyped);
        Assert.Equal("INT023 kit.xlsx!Rope bridges!B2", Assert.Single(read.Places));
    }

    [Theory]
    [InlineData("yyyy-mm-dd", "Date")]
    [InlineData("[$-409]d-mmm-yy", "Date")]
    [InlineData("[$-F800]dddd, mmmm dd, yyyy", "Date")]
    [InlineData("mmm", "Date")]
    [InlineData("d\\-m", "Date")]
    [InlineData("[Red]0.00", "Plain")]
    [InlineData("General", "Plain")]
    [InlineData("0.00E+00", "Plain")]
    [InlineData("#,##0 \"days\"", "Plain")]
    [InlineData("0.0 \"mm\";[Red]-0.0 \"mm\"", "Plain")]
    [InlineData("0_d", "Plain")]
    [InlineData("@", "Plain")]
    [InlineData("h:mm AM/PM", "Time")]
    [InlineData("mm:ss.0", "Time")]
    [InlineData("[h]:mm", "Duration")]
    [InlineData("[mm]:ss", "Duration")]
    [InlineData("d/m/yyyy h:mm", "DateAndTime")]
    [InlineData("000000", "Zeros")]
    [InlineData("0", "Plain")]
    [InlineData("0.0%", "Percent")]
    public void A_number_format_says_what_its_number_is(string code, string kind) =>
        Assert.Equal(kind, NumberFormat.Of(code).Kind.ToString());

    [Theory]
    [InlineData(1, "A")]
    [InlineData(26, "Z")]
    [InlineData(27, "AA")]
    [InlineData(16384, "XFD")]
    public void A_column_has_letters(int column, string letters)
    {
        Assert.Equal(letters, CellAddress.Letters(column));
        Assert.Equal(column, CellAddress.Column(letters + "12"));
    }

    private static ReadWorkbook Item(string heading, string cell, string properties = "") =>
        new(
            new XlsxFile
            {
                Properties = properties,
                Formats = Formats,
                SharedStrings =
                [
                    "<r><t>plain </t></r><r><rPr><b/></rPr><t>rich</t></r>",
                    "<t>課</t><rPh sb=\"0\" eb=\"1\"><t>カ</t></rPh><phoneticPr fontId=\"1\"/>",
                ],
            }.Sheet("Rope bridges", Row("id", heading) + Row("B-1", cell))
        );
}
