namespace ExamDocs.Intake.Tests.Hostile;

/// <summary>Every hostile input there is; the tests and the benchmarks go through the same list.</summary>
internal static class HostileCorpus
{
    /// <summary>Those that one reader reads; folders are looked through by the use cases.</summary>
    public static IReadOnlyList<HostileInput> All { get; } =
    [.. HostileWorkbooks.All, .. HostileJson.All, .. HostileValues.All, .. HostilePhotos.All];

    public static IReadOnlyList<HostileInput> WithFolders { get; } = [.. All, .. HostileFolders.All];
}
