using ExamDocs.Core;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Csv;
using ExamDocs.Intake.Json;
using ExamDocs.Intake.Photos;
using ExamDocs.Intake.Workbook;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Tests.Hostile;

/// <summary>Each hostile input is refused with one sentence, reported with a finding, or read whole, at a bounded cost.</summary>
public sealed class HostileCorpusTests
{
    /// <summary>Generous: it only keeps a reader that hangs from hanging the tests.</summary>
    private const int Watchdog = 300_000;

    public static TheoryData<int> Numbers => [.. Enumerable.Range(0, HostileCorpus.All.Count)];

    [Theory(Timeout = Watchdog)]
    [MemberData(nameof(Numbers))]
    public async Task It_is_refused_reported_or_read_whole(int number)
    {
        var input = HostileCorpus.All[number];
        var folder = Directory.CreateTempSubdirectory("examdocs-hostile-");
        try
        {
            var path = Path.Combine(folder.FullName, input.File);
            input.Make(path);
            await Task.Run(() => AssertAnswered(input, path), TestContext.Current.CancellationToken);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void There_are_more_than_a_hundred_and_no_two_alike()
    {
        Assert.InRange(HostileCorpus.All.Count, 100, 1_000);
        Assert.Equal(HostileCorpus.All.Count, HostileCorpus.All.DistinctBy(i => i.Name).Count());
    }

    private static void AssertAnswered(HostileInput input, string path)
    {
        var budget = new ReadingBudget();
        var read = Read(input, path, budget);
        Assert.NotEqual(read.Record is null, read.Unreadable is null);
        var said =
            $"{input.Name}: {read.Unreadable ?? string.Join(", ", read.Findings.Take(5).Select(f => $"{f.Code} {f.Path} {f.Message}"))}";
        if (input.IsCode)
            Assert.True(read.Findings.Any(f => f.Code == input.Says), said);
        else if (input.Says is HostileInput.Read)
            Assert.True(read.Record is not null && !read.Findings.Any(f => f.Code is "INT007" or "INT009"), said);
        else
            Assert.True(read.Unreadable?.Contains(input.Says, StringComparison.Ordinal) == true, said);
        Assert.True(
            read.Unreadable is null || read.Unreadable.Length < 400 && !read.Unreadable.Contains("Exception", StringComparison.Ordinal),
            said
        );
        AssertCheap(input, budget);
    }

    /// <summary>What was done, not how long it took: the limits of a workbook, with the step on which each is noticed.</summary>
    private static void AssertCheap(HostileInput input, ReadingBudget spent)
    {
        var cost =
            $"{input.Name}: {spent.Inflated} bytes unpacked, {spent.Cells} cells, {spent.FilledCells} filled, {spent.Rows} "
            + $"rows, {spent.Characters} characters";
        Assert.True(
            spent.Inflated <= 385L << 20
                && spent.Cells <= 2_000_001
                && spent.FilledCells <= 300_001
                && spent.Rows <= 1_100_001
                && spent.Characters <= 12_100_000,
            cost
        );
    }

    private static ReadResult Read(HostileInput input, string path, ReadingBudget budget) =>
        Path.GetExtension(input.File) switch
        {
            ".xlsx" => Bound(path, budget),
            ".json" => WithPhotos(JsonRecordReader.Read(File.ReadAllBytes(path), input.File), path),
            _ => CsvRecordReader.Read([new CsvFile(input.File, File.ReadAllBytes(path))], "", KnownRules.BuiltIn, budget),
        };

    private static ReadResult Bound(string path, ReadingBudget budget)
    {
        using var stream = File.OpenRead(path);
        var content = WorkbookReader.Read(stream, "kit.xlsx", KnownRules.BuiltIn, budget);
        var map = SourceMap.ForWorkbook("kit.xlsx", content.Cells);
        if (content.Root is null)
            return new ReadResult(null, content.Findings, map, content.Unreadable);
        var (record, findings) = RecordBinder.Bind(content.Root);
        return new ReadResult(record, [.. content.Findings, .. findings], map, null);
    }

    private static ReadResult WithPhotos(ReadResult read, string path) =>
        read.Record is { } record
            ? read with
            {
                Findings = [.. read.Findings, .. RecordPhotos.Check(record, Path.GetDirectoryName(path)!)],
            }
            : read;
}
