namespace ExamDocs.Proof.Tests.Histories;

/// <summary>The programme and the second evaluator say the same of every item of every generated history.</summary>
public sealed class HistoriesAgreeTests
{
    [Fact]
    public void In_memory() => Agreement.Check(Effort.Of(300, 100_000), prints: true, (_, _) => Programme.InMemory(), shown: 12);

    [Fact]
    public void Over_a_register_in_a_file()
    {
        var folder = Directory.CreateTempSubdirectory("examdocs-histories-").FullName;
        try
        {
            Agreement.Check(Effort.Of(10, 1_000), prints: false, (seed, attempt) =>
            {
                var own = Directory.CreateDirectory(Path.Combine(folder, FormattableString.Invariant($"{seed}-{attempt}"))).FullName;
                return new Imported(Path.Combine(own, "register.db"), own);
            });
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
