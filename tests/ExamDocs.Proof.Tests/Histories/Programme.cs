namespace ExamDocs.Proof.Tests.Histories;

/// <summary>The programme without a register.</summary>
internal static class Programme
{
    public static IHistoryRunner InMemory()
    {
        var own = Directory.CreateTempSubdirectory("examdocs-histories-").FullName;
        return new Imported(Path.Combine(own, "register.db"), own);
    }
}
