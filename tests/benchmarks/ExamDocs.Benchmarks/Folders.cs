namespace ExamDocs.Benchmarks;

internal static class Folders
{
    /// <summary>Of the repository that the benchmarks were built in.</summary>
    public static string Root { get; } = Above();

    public static string Examples { get; } = Path.Combine(Root, "examples");

    private static string Above()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "ExamDocs.sln")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("no ExamDocs.sln above the benchmarks");
    }
}
