using System.Text;
using ClosedXML.Excel;
using ExamDocs.Core;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Csv;
using ExamDocs.Intake.Json;
using ExamDocs.Intake.Workbook;
using NodaTime;

namespace ExamDocs.Intake.Tests;

/// <summary>A visit with one friction cord that is fit, into which one value is typed: what the cord is then.</summary>
internal sealed class FitCord
{
    public const string Sheet = "Friction cords";

    private static readonly LocalDate AsOf = new(2026, 6, 3);

    private static readonly string[] Criteria =
    [
        "identity",
        "cover-cut",
        "saw-contact",
        "core-visible",
        "heat",
        "contamination",
        "termination",
        "core-feel",
        "grip",
        "severe-load",
        "marking",
        "cover-abrasion",
        "suppleness",
    ];

    private static readonly Lazy<byte[]> Written = new(Write);

    private FitCord(ReadResult read)
    {
        Assert.Null(read.Unreadable);
        Read = read;
        Visit = Determine.Visit(read.Record!, read.Findings, History.None, AsOf);
    }

    public ReadResult Read { get; }

    public DeterminedVisit Visit { get; }

    public ExaminationRecord Record => Read.Record!;

    public Outcome Outcome => Visit.Items[0].Outcome;

    /// <summary>Codes of reading, each once, in their order.</summary>
    public string Codes =>
        string.Join(
            ' ',
            Read.Findings.Select(f => f.Code).Where(c => c is not "INT040").Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)
        );

    /// <summary>Codes and places of what reading found.</summary>
    public IEnumerable<string> Places => Read.Findings.Select(f => $"{f.Code} {Read.Sources.Locate(f.Path)}");

    public string Messages => string.Join('\n', Read.Findings.Select(f => f.Message.Text));

    /// <summary>With a text typed under a heading of a sheet, in a workbook.</summary>
    public static FitCord InWorkbook(string heading, string typed, string sheet = Sheet) => InWorkbook((sheet, heading, typed));

    public static FitCord InWorkbook(params (string Sheet, string Heading, string Typed)[] cells) =>
        InWorkbook(book =>
        {
            foreach (var (sheet, heading, typed) in cells)
                Cell(book.Worksheet(sheet), heading).SetValue(typed);
        });

    public static FitCord InWorkbook(Action<XLWorkbook> change)
    {
        using var book = Book();
        change(book);
        using var saved = new MemoryStream();
        book.SaveAs(saved);
        saved.Position = 0;
        return new(WorkbookRecordReader.Read(saved, "cord.xlsx"));
    }

    /// <summary>The same in files of separated values.</summary>
    public static FitCord InCsv(string heading, string typed, string sheet = Sheet)
    {
        using var book = Book();
        Cell(book.Worksheet(sheet), heading).SetValue(typed);
        return new(
            CsvRecordReader.Read(
                [
                    .. book
                        .Worksheets.Where(s => s.Name is not ("How to fill this in" or "Words"))
                        .Select(s => new CsvFile($"{s.Name}.csv", Encoding.UTF8.GetBytes(Csv(s.RangeUsed()!)))),
                ],
                "cord"
            )
        );
    }

    /// <param name="old">What stands in the JSON once.</param>
    /// <param name="typed">What is written in its place.</param>
    public static FitCord InJson(string old, string typed)
    {
        Assert.Equal(2, Text.Split(old).Length);
        return new(JsonRecordReader.Read(Encoding.UTF8.GetBytes(Text.Replace(old, typed, StringComparison.Ordinal)), "cord.json"));
    }

    private static XLWorkbook Book() => new(new MemoryStream(Written.Value));

    private static byte[] Write()
    {
        var record = JsonRecordReader.Read(Encoding.UTF8.GetBytes(Text), "cord.json").Record!;
        using var written = new MemoryStream();
        CaptureWorkbook.Write(written, [Catalogue.Find("friction-cord")!], record, forNextVisit: false);
        return written.ToArray();
    }

    /// <summary>Of a sheet with one row, or on the sheet of the visit.</summary>
    private static IXLCell Cell(IXLWorksheet sheet, string heading) =>
        sheet.Name == "Visit"
            ? sheet.Column(1).CellsUsed().Single(c => IsHeading(c, heading)).CellRight()
            : sheet.Row(1).CellsUsed().Single(c => IsHeading(c, heading)).CellBelow();

    /// <summary>The star of a heading counts for nothing.</summary>
    public static bool IsHeading(IXLCell cell, string heading) =>
        string.Equals(cell.GetString().TrimEnd(' ', '*'), heading, StringComparison.Ordinal);

    private static string Csv(IXLRange range) =>
        string.Concat(
            range
                .Rows()
                .Select(row =>
                    string.Join(',', row.Cells().Select(c => $"\"{c.GetString().Replace("\"", "\"\"", StringComparison.Ordinal)}\"")) + "\n"
                )
        );

    private static readonly string Text = $$"""
        {
          "format": "examdocs/1",
          "visit": {
            "reference": "V-2026-044", "regime": "gb-loler",
            "employer": { "name": "Tarnfold Tree Care", "address": "9 Sawpit Lane, Tarnfold" },
            "premises": { "name": "Tarnfold yard", "address": "9 Sawpit Lane, Tarnfold" },
            "examinedOn": "2026-06-03", "reportedOn": "2026-06-03"
          },
          "people": [
            { "id": "ex1", "name": "Maren Oakhollow", "address": "3 Mill Steps, Hathering",
              "qualifications": "Examiner of climbing kit; 14 years' practice", "selfEmployed": true }
          ],
          "items": [
            { "id": "COR-11", "category": "friction-cord", "description": "Hitch cord 10 mm, sewn eyes, 80 cm",
              "maker": "Skarnhope Ropes", "model": "Hitch cord 10", "serial": "HC-9950", "manufactured": "2025-01",
              "purchased": "2025-04-08", "firstUsed": "2025-05-06",
              "safeWorkingLoad": { "value": 1, "unit": "persons", "basis": "maker's instructions" },
              "lastExamined": "2025-12-04", "purpose": "lifts-persons", "status": "in-use" }
          ],
          "limits": [
            { "maker": "Skarnhope Ropes", "model": "Hitch cord 10",
              "source": { "title": "Instructions for use, Hitch cord 10", "revision": "2", "page": "3" }, "maxUseYears": 4,
              "maxStorageYears": 3, "intervalMonths": 6 }
          ],
          "examinations": [
            { "item": "COR-11", "examiner": "ex1", "basis": "six-month",
              "observations": [ {{string.Join(", ", Criteria.Select(Observed))}} ], "conclusion": "fit" }
          ]
        }
        """;

    private static string Observed(string criterion) =>
        criterion is "severe-load"
            ? """{ "criterion": "severe-load", "state": "no-sign" }"""
            : $$"""{ "criterion": "{{criterion}}", "state": "clear" }""";
}
