namespace ExamDocs.Core.Tests;

/// <summary>The folder that holds the solution.</summary>
internal static class RepositoryRoot
{
    public static string Path { get; } = Find();

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(System.IO.Path.Combine(folder.FullName, "ExamDocs.sln")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("no ExamDocs.sln above the tests");
    }
}
