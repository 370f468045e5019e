using System.Text;
using System.Text.Json.Nodes;
using ClosedXML.Excel;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Csv;
using ExamDocs.Intake.Json;
using ExamDocs.Intake.Merging;
using ExamDocs.Intake.Tests.Workbook;
using ExamDocs.Intake.Workbook;

namespace ExamDocs.Intake.Tests;

/// <summary>One record read from JSON, from a workbook and from files of separated values is the same record.</summary>
public sealed class EqualInputsTests
{
    private static readonly string[] Lists = ["people", "items", "limits", "examinations", "renewals", "remedies", "releases", "disposals"];

    [Fact]
    public void Json_workbook_and_separated_values_give_the_full_record()
    {
        var record = FullRecord.Make();
        var inputs = new[] { Json(record), Workbook(record), Separated(record) };

        Assert.All(inputs, i => Assert.DoesNotContain(i.Findings, f => f.Severity is Severity.Error));
        Assert.All(inputs, i => Assert.Equal(Text(record), Text(i.Record!)));
    }

    [Fact]
    public void Inputs_that_say_the_same_are_merged_into_the_full_record()
    {
        var record = FullRecord.Make();

        var merged = MergeInputs.Of([Json(record), Workbook(record), Separated(record)]);

        Assert.DoesNotContain(merged.Findings, f => f.Severity is Severity.Error);
        Assert.Equal(Text(record), Text(merged.Record!));
    }

    [Theory]
    [InlineData("items", 1, "formerly")]
    [InlineData("items", 1, "notTheSameAs")]
    [InlineData("releases", 0, "withdrawnOn")]
    [InlineData("releases", 0, "because")]
    public void An_empty_text_is_a_missing_value(string list, int index, string member)
    {
        var json = JsonNode.Parse(JsonRecordWriter.Write(FullRecord.Make()))!;
        var holder = json[list]![index]!.AsObject();
        if (holder[member] is JsonArray answers)
            answers[0]!["document"] = "";
        else
            holder[member] = "";

        var read = JsonRecordReader.Read(Encoding.UTF8.GetBytes(json.ToJsonString()), "visit.json");

        Assert.Empty(read.Findings);
        var tree = TreeText.List(RecordTree.Of(read.Record!), list)[index];
        Assert.DoesNotContain(holder[member] is JsonArray ? "R-2025-000003" : member + ":", tree, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("because", "\"Made good\"", "INT005")]
    [InlineData("because", "true", "INT005")]
    [InlineData("withdrawnOn", "\"2025-11\"", "INT004")]
    [InlineData("withdrawnOn", "\"11/12/2025\"", "INT004")]
    public void A_slip_in_a_release_is_an_error_at_its_place_and_counts_as_missing(string member, string typed, string code)
    {
        var json = JsonNode.Parse(JsonRecordWriter.Write(FullRecord.Make()))!;
        json["releases"]![0]![member] = JsonNode.Parse(typed);

        var read = JsonRecordReader.Read(Encoding.UTF8.GetBytes(json.ToJsonString()), "visit.json");

        Assert.Equal(($"/releases/0/{member}", code), Assert.Single(read.Findings.Select(f => (f.Path, f.Code))));
        Assert.DoesNotContain(member + ":", TreeText.List(RecordTree.Of(read.Record!), "releases")[0], StringComparison.Ordinal);
    }

    /// <summary>Of two reasons neither is the worse: the one that ends more must not count.</summary>
    [Fact]
    public void A_release_with_two_reasons_has_none()
    {
        var json = Encoding
            .UTF8.GetString(JsonRecordWriter.Write(FullRecord.Make()))
            .Replace(
                "\"because\": \"made-good\"",
                "\"because\": \"made-good\", \"because\": \"recorded-in-error\"",
                StringComparison.Ordinal
            );

        var read = JsonRecordReader.Read(Encoding.UTF8.GetBytes(json), "visit.json");

        Assert.Equal("INT002", Assert.Single(read.Findings).Code);
        Assert.Null(read.Record!.Releases[0].Because);
    }

    [Fact]
    public void A_row_that_tells_an_unknown_item_apart_is_an_error_at_its_cell_and_holds_back_no_other()
    {
        var file = new XlsxFile()
            .Sheet("Rope bridges", XlsxFile.Row("id", "description") + XlsxFile.Row("B", "bridge"))
            .Sheet(
                "Not the same",
                XlsxFile.Row("item", "earlier item", "because")
                    + XlsxFile.Row("B", "X", "serial differs")
                    + XlsxFile.Row("Bb", "Y", "serial differs")
                    + XlsxFile.Row("", "Z", "serial differs")
            );

        var read = new ReadWorkbook(file);

        Assert.Equal(["X"], read.Record.Items[0].NotTheSameAs.Select(d => d.Id));
        Assert.Contains("INT060 kit.xlsx!Not the same!A3", read.Places);
        Assert.Contains("INT031 kit.xlsx!Not the same!A4", read.Places);
        Assert.All(read.Content.Findings.Where(f => f.Code is "INT060" or "INT031"), f =>
            Assert.StartsWith("/items/2147483647/", f.Path, StringComparison.Ordinal)
        );
    }

    private static ReadResult Json(ExaminationRecord record) => JsonRecordReader.Read(JsonRecordWriter.Write(record), "visit.json");

    private static ReadResult Workbook(ExaminationRecord record) =>
        WorkbookRecordReader.Read(RoundTripTests.Written(record, Catalogue.All, forNextVisit: false), "visit.xlsx");

    /// <summary>Each sheet that is read, as a file of its own.</summary>
    private static ReadResult Separated(ExaminationRecord record)
    {
        using var workbook = new XLWorkbook(RoundTripTests.Written(record, Catalogue.All, forNextVisit: false));
        var files = workbook
            .Worksheets.Where(s => s.Name is not ("How to fill this in" or "Words"))
            .Select(s => new CsvFile($"{s.Name}.csv", Encoding.UTF8.GetBytes(Csv(s.RangeUsed()!))))
            .ToList();
        return CsvRecordReader.Read(files, "visit");
    }

    private static string Csv(IXLRange range) =>
        string.Concat(
            range
                .Rows()
                .Select(row =>
                    string.Join(',', row.Cells().Select(c => $"\"{c.GetString().Replace("\"", "\"\"", StringComparison.Ordinal)}\"")) + "\n"
                )
        );

    private static string Text(ExaminationRecord record)
    {
        var tree = RecordTree.Of(record);
        return string.Join('\n', Lists.SelectMany(l => TreeText.List(tree, l).Order(StringComparer.Ordinal)))
            + TreeText.Of(tree.Members.Single(m => m.Key is "visit").Value);
    }
}
