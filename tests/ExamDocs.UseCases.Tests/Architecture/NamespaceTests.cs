using System.Text.RegularExpressions;

namespace ExamDocs.UseCases.Tests.Architecture;

/// <summary>A namespace is the folder that a file lies in, so that what is said of folders can be read from what was built.</summary>
public sealed partial class NamespaceTests
{
    [Fact]
    public void Every_file_of_every_project_has_the_namespace_of_its_folder() =>
        Assert.Empty(ReferenceArrows.Projects(RepositoryRoot.Path).SelectMany(project => Faults(Path.GetDirectoryName(project)!)));

    [Fact]
    public void A_planted_file_in_another_folder_is_named()
    {
        var root = Directory.CreateTempSubdirectory("examdocs-namespaces-").FullName;
        try
        {
            var project = Directory.CreateDirectory(Path.Combine(root, "P")).FullName;
            Plant(project, "Sound.cs", "namespace P;");
            Plant(project, "A/B/Sound.cs", "namespace P.A.B;");
            Plant(project, "A/Moved.cs", "namespace P;");
            Plant(project, "A/Braced.cs", "namespace P.A { }");
            Plant(project, "Program.cs", "return 0;");
            Plant(project, "A/None.cs", "class None;");
            Plant(project, "A/Page.razor", "@namespace P");
            Plant(project, "obj/Made.cs", "namespace Other;");
            Assert.Equal(["A/Braced.cs", "A/Moved.cs", "A/None.cs", "A/Page.razor"], Faults(project));
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    }

    private static void Plant(string project, string file, string text)
    {
        var path = Path.Combine(project, file);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }

    /// <summary>A component has the namespace of its folder unless it says another; a program's own file needs none.</summary>
    private static IEnumerable<string> Faults(string project) =>
        from path in Directory.EnumerateFiles(project, "*.*", SearchOption.AllDirectories)
        let file = Path.GetRelativePath(project, path).Replace('\\', '/')
        where file.Split('/')[0] is not ("bin" or "obj")
        let folders = (string[])[Path.GetFileName(project), .. file.Split('/')[..^1]]
        where
            path.EndsWith(".razor", StringComparison.Ordinal)
                ? File.ReadAllText(path).Contains("@namespace", StringComparison.Ordinal)
                : path.EndsWith(".cs", StringComparison.Ordinal)
                    && file is not "Program.cs"
                    && !IsIn(string.Join('.', folders), File.ReadAllText(path))
        orderby file
        select file;

    private static bool IsIn(string expected, string text) =>
        Namespace().Matches(text) is [var one] && string.Equals(one.Groups["name"].Value, expected, StringComparison.Ordinal);

    [GeneratedRegex(
        @"^namespace\s+(?<name>[\w.]+)\s*;",
        RegexOptions.Multiline | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant,
        1000
    )]
    private static partial Regex Namespace();
}
