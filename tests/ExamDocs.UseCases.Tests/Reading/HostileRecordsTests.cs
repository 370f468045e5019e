using ExamDocs.Intake.Tests.Hostile;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Tests.Issuing;

namespace ExamDocs.UseCases.Tests.Reading;

/// <summary>Records that can be read, but whose rows are so many about the same that deciding would never end; and folders.</summary>
public sealed class HostileRecordsTests : IDisposable
{
    /// <summary>Generous: it only keeps a check that hangs from hanging the tests.</summary>
    private const int Watchdog = 300_000;

    private static readonly IReadOnlyList<HostileInput> Inputs = [.. HostileJson.Tangles, .. HostileFolders.All];

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("examdocs-hostile-");

    public static TheoryData<int> Numbers => [.. Enumerable.Range(0, Inputs.Count)];

    public void Dispose() => _folder.Delete(recursive: true);

    [Theory(Timeout = Watchdog)]
    [MemberData(nameof(Numbers))]
    public async Task It_is_decided_or_refused_with_a_sentence(int number)
    {
        var input = Inputs[number];
        var path = Path.Combine(_folder.FullName, input.File);
        input.Make(path);

        var read = await Task.Run(() => CheckRecord.Of(path, Workspace.Today), TestContext.Current.CancellationToken);

        var said = $"{input.Name}: {read.Unreadable}";
        Assert.NotEqual(read.Visit is null, read.Unreadable is null);
        if (input.IsCode)
            Assert.Contains(read.Visit!.Findings, f => f.Code == input.Says);
        else if ((input.Undecided ?? (input.Says is HostileInput.Read ? null : input.Says)) is { } sentence)
            Assert.True(read.Unreadable?.Contains(sentence, StringComparison.Ordinal) == true, said);
        else
            Assert.True(read.Visit is { Items.Count: > 0 }, said);
    }
}
