using System.Text.Json.Nodes;
using ExamDocs.Core.Findings;
using ExamDocs.Intake.Tests.Workbook;
using ExamDocs.Intake.Workbook;

namespace ExamDocs.Intake.Tests.Annotating;

/// <summary>Workbooks that openpyxl wrote are annotated like others, and it reads what comes out.</summary>
public sealed class OpenpyxlTests
{
    private const string Sheet = "Rope bridges";

    private static readonly Annotated Found = new Annotated()
        .At(Sheet, "A2")
        .At(Sheet, "D2", Severity.Warning)
        .At(Sheet, "C3", Severity.Note)
        .At("Bob's list", "A2")
        .Nowhere("no place");

    [Fact]
    public void What_it_wrote_comes_back_with_marks_and_nothing_else()
    {
        Openpyxl.SkipWhereMissing();
        var before = Openpyxl.Make();
        var after = Found.Copy(before);
        Assert.Empty(CopyDifference.Of(before, after, Found.Cells));
        Assert.Empty(OpenXmlErrors.Of(after).Except(OpenXmlErrors.Of(before), StringComparer.Ordinal));
        var (was, now) = (
            WorkbookReader.Read(new MemoryStream(before), "kit.xlsx"),
            WorkbookReader.Read(new MemoryStream(after), "kit.xlsx")
        );
        Assert.Equal(TreeText.Of(was.Root!), TreeText.Of(now.Root!));
        Assert.Equal(Annotated.WithoutFormulas(was.Findings), now.Findings);
    }

    [Fact]
    public void It_sees_all_it_saw_before_and_the_marks()
    {
        Openpyxl.SkipWhereMissing();
        foreach (var before in new[] { Openpyxl.Make(), OfficeWorkbook.Make() })
            SeesAll(Openpyxl.Look(before), Openpyxl.Look(Found.Copy(before)));
    }

    private static void SeesAll(JsonNode before, JsonNode after)
    {
        Assert.Equal([Sheet, "Bob's list", "Findings"], after["sheets"]!.AsArray().Select(s => (string)s!));
        Assert.Equal(before[Sheet]!.ToJsonString(), after[Sheet]!.ToJsonString());
        Assert.Equal(before["Bob's list"]!.ToJsonString(), after["Bob's list"]!.ToJsonString());
        var marked = Found.Cells.Select(c => $"{c.Sheet}!{c.Cell}").ToList();
        foreach (var (place, cell) in before["cells"]!.AsObject())
        {
            var now = after["cells"]![place]!;
            if (cell!["value"]?.ToString().StartsWith('=') == true)
            {
                Assert.False(now["value"]?.ToString().StartsWith('='), place);
                cell["value"] = now["value"]?.DeepClone();
            }
            Assert.All(new[] { "value", "format", "bold" }, m => Assert.Equal(cell[m]!.ToJsonString(), now[m]!.ToJsonString()));
            Assert.StartsWith((string?)cell["note"] ?? "", (string?)now["note"] ?? "", StringComparison.Ordinal);
            if (!marked.Contains(place, StringComparer.Ordinal))
                Assert.Equal(cell.ToJsonString(), now.ToJsonString());
        }
        foreach (var place in marked)
        {
            Assert.Contains("TST001", (string)after["cells"]![place]!["note"]!, StringComparison.Ordinal);
            Assert.Matches("^FF[0-9A-F]{6}$", (string)after["cells"]![place]!["fill"]!);
        }
        SeesList(after);
    }

    private static void SeesList(JsonNode after)
    {
        JsonNode Cell(string at) => after["cells"]!["Findings!" + at]!;
        Assert.Equal("A3", (string)after["Findings"]!["freeze"]!);
        Assert.True((bool)Cell("A2")["bold"]!);
        Assert.Equal("Rope bridges!A2", (string)Cell("C3")["value"]!);
        Assert.Equal("'Rope bridges'!A2", (string)Cell("C3")["link"]!);
        Assert.Equal("'Bob''s list'!A2", (string)Cell("C6")["link"]!);
        Assert.Equal("no place", (string)Cell("E7")["value"]!);
    }
}
