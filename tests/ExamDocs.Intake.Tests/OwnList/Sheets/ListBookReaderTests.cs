using ExamDocs.Core.Regimes;
using ExamDocs.Intake.OwnList.Mapping;
using ExamDocs.Intake.OwnList.Sheets;
using ExamDocs.Intake.OwnList.Taking;
using ExamDocs.Intake.Tests.Hostile;

namespace ExamDocs.Intake.Tests.OwnList.Sheets;

/// <summary>A hostile list gets a sentence or is read whole; it never stops the program.</summary>
public sealed class ListBookReaderTests
{
    private const int Watchdog = 300_000;

    private static readonly HostileInput[] Inputs =
    [
        .. HostileCorpus.All.Where(i => Path.GetExtension(i.File).ToLowerInvariant() is ".xlsx" or ".csv" or ".tsv"),
    ];

    private static bool IsFull => Environment.GetEnvironmentVariable("EXAMDOCS_PROOF") is "full";

    /// <summary>One in three; all with EXAMDOCS_PROOF=full. The readers of records are always tried with all.</summary>
    public static TheoryData<int> Numbers => [.. Enumerable.Range(0, Inputs.Length).Where(n => IsFull || n % 3 == 1)];

    [Fact]
    public void There_are_many() => Assert.InRange(Inputs.Length, 60, 1_000);

    [Theory(Timeout = Watchdog)]
    [MemberData(nameof(Numbers))]
    public async Task It_is_refused_with_a_sentence_or_read_whole(int number)
    {
        var input = Inputs[number];
        var folder = Directory.CreateTempSubdirectory("examdocs-hostile-list-");
        try
        {
            var path = Path.Combine(folder.FullName, input.File);
            input.Make(path);
            if (File.Exists(path) && new FileInfo(path).Length is > 0 and < 33_000_000)
                await Task.Run(() => AssertAnswered(input, File.ReadAllBytes(path)), TestContext.Current.CancellationToken);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static void AssertAnswered(HostileInput input, byte[] bytes)
    {
        var book = ListBookReader.Read(bytes, input.File);
        if (book.Unreadable is { } why)
        {
            Assert.True(why.Length < 400 && !why.Contains("Exception", StringComparison.Ordinal), $"{input.Name}: {why}");
            return;
        }
        // The program refuses longer ones before it looks at them.
        if (book.FilledRows > 10_000)
            return;
        var taken = TakeList.Of(new ListMapping(book, KnownRules.BuiltIn, null), Lists.AsOf);
        Assert.True(book.FilledRows == taken.Record.Items.Count + taken.LeftOut.Count, input.Name);
    }
}
