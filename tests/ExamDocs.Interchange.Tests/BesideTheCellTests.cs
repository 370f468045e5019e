using System.Text.Json.Nodes;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;
using NodaTime;

namespace ExamDocs.Interchange.Tests;

/// <summary>
/// A bridge of the example in a workbook of its own, marked by openpyxl beside its values, as it is and saved once more by
/// LibreOffice: it is fit without the mark, and never with it.
/// </summary>
public sealed class BesideTheCellTests(BesideTheCellTests.MarkedWorkbooks workbooks) : IClassFixture<BesideTheCellTests.MarkedWorkbooks>
{
    private static readonly LocalDate AsOf = new(2026, 5, 12);

    public static TheoryData<string, string> Marks =>
        new()
        {
            { "comment", "INT065" },
            { "comment-on-id", "INT065" },
            { "comment-on-date", "INT065" },
            { "strike", "INT064" },
            { "strike-row", "INT064" },
            { "strike-conclusion", "INT064" },
            { "words-without-headings", "INT067" },
            { "guide", "INT067" },
            { "beyond", "INT022" },
            { "below", "INT022" },
            { "hidden", "INT061" },
        };

    [Theory]
    [MemberData(nameof(Marks))]
    public void A_marked_item_is_never_fit(string how, string code)
    {
        foreach (var file in workbooks.Of(how))
        {
            var visit = CheckRecord.Of(file, AsOf).Visit!;
            Assert.Contains(visit.Findings, f => f.Code == code && f.Severity is Severity.Error);
            Assert.Equal(how is "hidden" ? Outcome.Withdraw : Outcome.Undetermined, visit.Items.Single(i => i.Item.Id is "BRG-01").Outcome);
        }
    }

    [Theory]
    [InlineData("comment-on-description", "INT066")]
    [InlineData("strike-condition", "INT074")]
    public void What_no_outcome_hangs_on_is_said(string how, string code)
    {
        foreach (var file in workbooks.Of(how))
        {
            var visit = CheckRecord.Of(file, AsOf).Visit!;
            Assert.Contains(visit.Findings, f => f.Code == code && f.Severity is Severity.Warning);
            Assert.Equal(Outcome.Fit, visit.Items.Single(i => i.Item.Id is "BRG-01").Outcome);
        }
    }

    /// <summary>LibreOffice keeps a cross only as the border of a cell it draws, so this one is looked at as openpyxl wrote it.</summary>
    [Fact]
    public void A_crossed_out_answer_is_struck_out() =>
        Assert.Contains(ReadInput.From(workbooks.Of("crossed")[0]).Findings, f => f.Code is "INT064");

    [Fact]
    public void The_rows_of_a_hidden_sheet_are_read()
    {
        foreach (var file in workbooks.Of("words"))
        {
            var visit = CheckRecord.Of(file, AsOf).Visit!;
            Assert.Equal(Outcome.Withdraw, visit.Items.Single(i => i.Item.Id is "HIDDEN-1").Outcome);
            Assert.Contains(visit.Findings, f =>
                f.Code is "INT034" && f.Message.Text.Contains("Words is hidden", StringComparison.Ordinal)
            );
        }
    }

    [Fact]
    public void Without_a_mark_the_item_is_fit() =>
        Assert.Equal(Outcome.Fit, CheckRecord.Of(workbooks.Unmarked, AsOf).Visit!.Items.Single(i => i.Item.Id is "BRG-01").Outcome);

    /// <summary>The bridge with each mark, as openpyxl wrote it and as LibreOffice saved it: each program is started once for all.</summary>
    public sealed class MarkedWorkbooks : IDisposable
    {
        private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("examdocs-beside");

        public MarkedWorkbooks()
        {
            Assert.Null(WriteCaptureWorkbook.Run(new CaptureRequest(Unmarked, [], Bridge(), WithAnswers: true)));
            string[] all = [.. Marks.Select(m => m.Data.Item1), "comment-on-description", "strike-condition", "crossed", "words"];
            Programs.Python(_folder.FullName, "beside.py", [Unmarked, _folder.FullName, .. all]);
            Programs.Convert("xlsx:Calc MS Excel 2007 XML", Saved, [.. all.Select(how => Path.Combine(_folder.FullName, how + ".xlsx"))]);
        }

        public string Unmarked => Path.Combine(_folder.FullName, "unmarked.xlsx");

        private string Saved => Path.Combine(_folder.FullName, "saved");

        public IReadOnlyList<string> Of(string how) => [Path.Combine(_folder.FullName, how + ".xlsx"), Path.Combine(Saved, how + ".xlsx")];

        /// <summary>The example with one bridge alone, which LibreOffice opens and saves in a moment.</summary>
        private string Bridge()
        {
            var record = JsonNode.Parse(File.ReadAllText(Path.Combine(Programs.Root(), "examples", "visit.json")))!.AsObject();
            foreach (var list in new[] { "renewals", "remedies", "releases", "disposals" })
                record.Remove(list);
            foreach (var (list, key) in new[] { ("items", "id"), ("examinations", "item") })
                record[list] = new JsonArray([
                    .. record[list]!.AsArray().Where(row => (string?)row![key] == "BRG-01").Select(row => row!.DeepClone()),
                ]);
            record["items"]![0]!.AsObject().Remove("fittedTo");
            var path = Path.Combine(_folder.FullName, "bridge.json");
            File.WriteAllText(path, record.ToJsonString());
            return path;
        }

        public void Dispose() => _folder.Delete(recursive: true);
    }
}
