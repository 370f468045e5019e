using System.Globalization;
using ExamDocs.Core.Records;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;
using NodaTime;

namespace ExamDocs.Interchange.Tests;

/// <summary>The example workbook, saved by LibreOffice as files of separated values in three encodings, comes out the same.</summary>
public sealed class SeparatedValuesTests : IDisposable
{
    private static readonly LocalDate AsOf = new(2026, 5, 12);

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("examdocs-csv");

    /// <summary>
    /// Numbers of LibreOffice's filter: 76 UTF-8, 65535 UTF-16, 1 Windows-1252 (the example has plain letters only, which are UTF-8 too);
    /// 59 a semicolon, 44 a comma, 9 a tab. Commas only with EXAMDOCS_PROOF=full.
    /// </summary>
    public static TheoryData<string, string, string> Filters
    {
        get
        {
            TheoryData<string, string, string> filters = new()
            {
                { "59,34,76", "UTF-8", "semicolons" },
                { "9,34,65535", "UTF-16", "tabs" },
            };
            if (Programs.IsAllTried)
                filters.Add("44,34,1", "UTF-8", "commas");
            return filters;
        }
    }

    [Theory]
    [MemberData(nameof(Filters))]
    public void The_outcomes_are_those_of_the_workbook(string filter, string encoding, string separated)
    {
        var workbook = Path.Combine(Programs.Root(), "examples", "visit.xlsx");
        Programs.Convert(
            $"csv:Text - txt - csv (StarCalc):{filter},1,,0,false,true,false,false,false,-1",
            Path.Combine(_folder.FullName, "csv"),
            workbook
        );
        var sheets = Path.Combine(_folder.FullName, "csv");
        Assert.Single(Directory.GetFiles(sheets, "*How to fill this in.csv"));

        var read = CheckRecord.Of(sheets, AsOf);

        Assert.Null(read.Unreadable);
        Assert.Equal(Lines(CheckRecord.Of(workbook, AsOf)), Lines(read));
        Assert.Contains(read.Visit!.Findings, f =>
            f.Code == "INT040"
            && f.Message.Text.EndsWith($"read as {encoding}, its values separated by {separated}", StringComparison.Ordinal)
        );
    }

    /// <summary>The guide is written to be looked at; what was typed into it is found there too.</summary>
    [Fact]
    public void A_line_typed_into_the_guide_is_an_error_at_its_cell()
    {
        File.WriteAllText(
            Path.Combine(_folder.FullName, "visit-How to fill this in.csv"),
            "How to fill this in,\n1,RB-1 is cut: withdraw\n"
        );
        File.WriteAllText(Path.Combine(_folder.FullName, "People.csv"), "id,name\nex1,Elm\n");

        var finding = Assert.Single(ReadInput.From(_folder.FullName).Findings, f => f.Severity is Core.Findings.Severity.Error);

        Assert.Equal("INT067", finding.Code);
        Assert.Equal("/visit-How to fill this in.csv/B2", finding.Path);
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private static IEnumerable<string> Lines(CheckedInput input) =>
        input
            .Visit!.Items.Select(i =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{i.Item.Id} {i.Outcome.Word()} {i.Until} {i.NextExaminationBy} {string.Join(' ', i.Reasons.Select(r => r.Code))}"
                )
            )
            .Order(StringComparer.Ordinal);
}
