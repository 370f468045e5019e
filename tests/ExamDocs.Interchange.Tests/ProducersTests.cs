using System.Globalization;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;
using NodaTime;

namespace ExamDocs.Interchange.Tests;

/// <summary>The same data written by openpyxl, by LibreOffice and by this program come to the same.</summary>
public sealed class ProducersTests : IDisposable
{
    private static readonly LocalDate AsOf = new(2026, 5, 12);

    /// <summary>
    /// Of each row: manufactured, serial, load, and the codes at them. Serials by ECMA-376 1st ed. Part 4, "Date
    /// Representation", and MS-XLS Date1904; 40729 and 39267 are 5 July 2011 by the help page of e_convert_Date_to_ExcelDate.
    /// </summary>
    private static readonly Dictionary<string, string> Expected = new(StringComparer.Ordinal)
    {
        ["day"] = "2011-07-05 - -",
        ["real-date"] = "2024-02-29 - -",
        ["locale"] = "2024-02-29 - -",
        ["before-60"] = "1900-02-28 - -",
        ["sixty"] = "- - - INT026",
        ["after-60"] = "1900-03-01 - -",
        ["time"] = "- - - INT025",
        ["duration"] = "- - - INT025",
        ["red"] = "- - - INT004",
        ["two-ways"] = "- - - INT004",
        ["noughts"] = "- 00123 -",
        ["number"] = "- 12345 - INT028",
        ["long"] = "- 1234567890123456 - INT029",
        ["digits"] = "- 1234567890123456 -",
        ["blanks"] = "- OT-77 -",
        ["error"] = "- - - INT023",
        ["dated-serial"] = "- - - INT027",
        ["comma"] = "- - 11.2 INT080",
        ["thousand"] = "- - - INT053",
        ["thin"] = "- - 1250",
        ["exponent"] = "- - - INT003",
        ["hidden"] = "- OT-78 - INT034",
        ["formula"] = "- - - INT024",
    };

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("examdocs-producers");

    private string Traps => Path.Combine(_folder.FullName, "traps.xlsx");

    [Fact]
    public void Each_trap_that_openpyxl_writes_is_read_as_it_must_be()
    {
        Programs.Python(_folder.FullName, "traps.py", Traps);
        Assert.Equal(Expected, Rows(Traps));
    }

    /// <summary>ISO 8601 dates spelt out in cells (t="d"), which few programs write.</summary>
    [Fact]
    public void Dates_spelt_out_are_read_as_the_days_they_are()
    {
        Programs.Python(_folder.FullName, "traps.py", Traps, "iso");
        Assert.Equal(Expected["real-date"], Rows(Traps)["real-date"]);
    }

    /// <summary>Serials 59 to 61 are plain days of 1904 in that system, and the hole is not there.</summary>
    [Fact]
    public void A_workbook_that_counts_from_1904_gives_the_same_days()
    {
        Programs.Python(_folder.FullName, "traps.py", Traps, "1904");
        var rows = Rows(Traps);
        Assert.Equal([Expected["day"], Expected["real-date"], Expected["locale"]], [rows["day"], rows["real-date"], rows["locale"]]);
        Assert.Equal(["1904-02-29 - -", "1904-03-01 - -", "1904-03-02 - -"], [rows["before-60"], rows["sixty"], rows["after-60"]]);
    }

    /// <summary>
    /// LibreOffice calculates what was never calculated and saves the result, makes a formula of an error, and has lost the
    /// sixteenth digit, which is an error before as after. All else comes back as it went.
    /// </summary>
    [Fact]
    public void LibreOffice_saves_the_traps_as_they_were()
    {
        Programs.Python(_folder.FullName, "traps.py", Traps);
        Programs.Convert("xlsx:Calc MS Excel 2007 XML", Path.Combine(_folder.FullName, "saved"), Traps);
        var saved = Rows(Path.Combine(_folder.FullName, "saved", "traps.xlsx"));
        var differing = Expected
            .Where(row => saved[row.Key] != row.Value)
            .Select(row => $"{row.Key}: {saved[row.Key]}")
            .Order(StringComparer.Ordinal);
        Assert.Equal(["error: - - - INT023 INT035", "formula: - 2 - INT028", "long: - 1234567890123460 - INT029"], differing);
    }

    /// <summary>By way of OpenDocument it is the same import and export and more: without that only with EXAMDOCS_PROOF=full.</summary>
    public static TheoryData<string> Savers =>
        ["openpyxl", "LibreOffice by way of OpenDocument", .. Programs.IsAllTried ? ["LibreOffice"] : (string[])[]];

    [Theory]
    [MemberData(nameof(Savers))]
    public void The_example_saved_by_another_program_has_the_same_outcomes(string program)
    {
        var ours = Path.Combine(Programs.Root(), "examples", "visit.xlsx");
        var saved = Path.Combine(_folder.FullName, "saved", "visit.xlsx");
        Directory.CreateDirectory(Path.GetDirectoryName(saved)!);
        if (program == "openpyxl")
        {
            Programs.Python(_folder.FullName, "resave.py", ours, saved);
        }
        else if (program == "LibreOffice")
        {
            Programs.Convert("xlsx:Calc MS Excel 2007 XML", Path.GetDirectoryName(saved)!, ours);
        }
        else
        {
            Programs.Convert("ods", Path.Combine(_folder.FullName, "ods"), ours);
            Programs.Convert(
                "xlsx:Calc MS Excel 2007 XML",
                Path.GetDirectoryName(saved)!,
                Path.Combine(_folder.FullName, "ods", "visit.ods")
            );
        }

        var json = Path.Combine(Programs.Root(), "examples", "visit.json");
        Assert.Equal(Outcomes(json), Outcomes(saved));
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private static Dictionary<string, string> Rows(string workbook)
    {
        var read = ReadInput.From(workbook);
        Assert.Null(read.Unreadable);
        var codes = read.Findings.Where(f => f.Code != "INT052").ToLookup(f => RowOf(read.Sources.Locate(f.Path)), f => f.Code);
        return read.Record!.Items.Select((item, n) => (Item: item, Row: n + 2))
            .ToDictionary(
                i => i.Item.Id!,
                i =>
                    string.Join(
                        ' ',
                        new[]
                        {
                            i.Item.Manufactured?.ToString() ?? "-",
                            i.Item.Serial ?? "-",
                            i.Item.SafeWorkingLoad?.Value?.ToString(CultureInfo.InvariantCulture) ?? "-",
                        }.Concat(codes[i.Row].Order(StringComparer.Ordinal))
                    ),
                StringComparer.Ordinal
            );
    }

    private static int RowOf(string location) => int.Parse(location[(location.LastIndexOf('!') + 2)..], CultureInfo.InvariantCulture);

    private static IEnumerable<string> Outcomes(string file)
    {
        var input = CheckRecord.Of(file, AsOf);
        Assert.Null(input.Unreadable);
        Assert.DoesNotContain(input.Visit!.Findings, f => f.Severity is Severity.Error);
        return input
            .Visit.Items.Select(i =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{i.Item.Id} {i.Outcome.Word()} {i.Until} {i.NextExaminationBy} "
                        + $"{string.Join(' ', i.Reasons.Select(r => $"{r.Code} {r.Text}"))}"
                )
            )
            .Order(StringComparer.Ordinal);
    }
}
