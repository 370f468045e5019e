using System.IO.Compression;
using System.Text.RegularExpressions;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Tests.Issuing;

namespace ExamDocs.UseCases.Tests.Commands;

/// <summary>The workbook for the next visit shows what was seen last time, and takes nothing from it.</summary>
public sealed class LastTimeColumnTests : IDisposable
{
    private readonly Workspace _workspace = new();

    [Fact]
    public void What_was_seen_last_time_stands_beside_the_answer_to_give()
    {
        var texts = Texts(Next(Workspace.ExampleJson, answers: false));
        Assert.Contains("cover-cut last time", texts);
        Assert.Contains(
            "2026-05-11 doubt: Two threads of the left leg-loop pattern look dull and may be worn through; cannot be told "
                + "without opening it",
            texts
        );
    }

    [Fact]
    public void A_workbook_with_this_visits_answers_or_none_has_no_such_column()
    {
        Assert.DoesNotContain(Texts(Next(Workspace.ExampleJson, answers: true)), t => t.EndsWith("last time", StringComparison.Ordinal));
        Assert.DoesNotContain(Texts(Next(null, answers: false)), t => t.EndsWith("last time", StringComparison.Ordinal));
    }

    /// <summary>Whatever is typed there answers nothing: the item is as undetermined as without it.</summary>
    [Fact]
    public void Nothing_is_read_from_it()
    {
        var read = ReadInput.From(Next(Workspace.ExampleJson, answers: false));
        Assert.Empty(read.Findings);
        Assert.DoesNotContain(read.Record!.Examinations, e => e.ExaminedOn is null);
    }

    /// <summary>
    /// Headings are locked where no column is folded away, which a locked sheet could not unfold; no password keeps anybody out.
    /// </summary>
    [Fact]
    public void Headings_are_locked_without_a_password()
    {
        using var zip = ZipFile.OpenRead(Next(Workspace.ExampleJson, answers: false));
        var sheets = zip
            .Entries.Where(e => e.FullName.StartsWith("xl/worksheets/sheet", StringComparison.Ordinal))
            .Select(Text)
            .Where(x => x.Contains("sheetProtection", StringComparison.Ordinal))
            .ToList();
        Assert.True(sheets.Count > 10, "every sheet to fill in but those of items is protected");
        Assert.All(sheets, sheet =>
        {
            var protection = Regex.Match(sheet, "<[a-z:]*sheetProtection[^>]*>", RegexOptions.None, TimeSpan.FromSeconds(5)).Value;
            Assert.Contains("sheet=\"1\"", protection, StringComparison.Ordinal);
            Assert.DoesNotContain("password", protection, StringComparison.Ordinal);
            Assert.DoesNotContain("hashValue", protection, StringComparison.Ordinal);
        });
        Assert.Contains("locked=\"0\"", Text(zip.GetEntry("xl/styles.xml")!), StringComparison.Ordinal);
    }

    public void Dispose() => _workspace.Dispose();

    private string Next(string? from, bool answers)
    {
        var workbook = Path.Combine(_workspace.Folder, $"{Guid.NewGuid():N}.xlsx");
        Assert.Null(WriteCaptureWorkbook.Run(new CaptureRequest(workbook, [], from, answers)));
        return workbook;
    }

    private static List<string> Texts(string workbook)
    {
        using var zip = ZipFile.OpenRead(workbook);
        return
        [
            .. Regex
                .Matches(
                    Text(zip.GetEntry("xl/sharedStrings.xml")!),
                    "<[a-z]*:?t(?: [^>]*)?>([^<]*)<",
                    RegexOptions.None,
                    TimeSpan.FromSeconds(20)
                )
                .Select(m => m.Groups[1].Value),
        ];
    }

    private static string Text(ZipArchiveEntry entry)
    {
        using var reader = new StreamReader(entry.Open());
        return reader.ReadToEnd();
    }
}
