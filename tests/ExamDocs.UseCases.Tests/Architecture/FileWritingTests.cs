using System.Text.RegularExpressions;

namespace ExamDocs.UseCases.Tests.Architecture;

/// <summary>
/// Files are written in few places, each of which overwrites nothing unasked: <c>OutputGuard</c> and <c>OwnFile</c> for what users see,
/// the register for its own. Whatever else writes a file goes past them.
/// </summary>
public sealed partial class FileWritingTests
{
    private static readonly string[] Writers =
    [
        // Into a folder of the workbench that is made for it.
        "src/ExamDocs.Intake/Yard/YardArchive.cs",
        "src/ExamDocs.Register/Backup.cs",
        "src/ExamDocs.Register/Files/DurableFile.cs",
        "src/ExamDocs.Register/Files/ExclusiveMove.cs",
        "src/ExamDocs.Register/Storage/RunFiles.cs",
        "src/ExamDocs.UseCases/Outputs/OutputFolder.cs",
        "src/ExamDocs.UseCases/Outputs/OutputGuard.cs",
        "src/ExamDocs.UseCases/Outputs/WholeFile.cs",
        // The workbench's own folder, where every round is a folder of its own.
        "src/ExamDocs.Workbench/Desk/DeskVisit.cs",
        "src/ExamDocs.Workbench/Desk/Drafts.cs",
        "src/ExamDocs.Workbench/Desk/Who.cs",
        "src/ExamDocs.Workbench/Endpoints/VisitEndpoints.cs",
    ];

    private static readonly string[] CallersOfWholeFile =
    [
        "OutputFolder.cs",
        "OutputGuard.cs",
        "OwnFile.cs",
        "TemporaryFolder.cs",
        "WholeFile.cs",
    ];

    [Fact]
    public void Files_are_written_in_these_places_and_no_others() =>
        Assert.Equal(Writers, Sources().Where(f => Writing().IsMatch(f.Text)).Select(f => f.Name), StringComparer.Ordinal);

    [Fact]
    public void What_is_written_whole_is_looked_at_first() =>
        Assert.Equal(
            CallersOfWholeFile,
            Sources()
                .Where(f =>
                    f.Text.Contains("WholeFile.", StringComparison.Ordinal) || f.Name.EndsWith("/WholeFile.cs", StringComparison.Ordinal)
                )
                .Select(f => Path.GetFileName(f.Name)),
            StringComparer.Ordinal
        );

    [Theory]
    [InlineData("File.WriteAllText(path, text);")]
    [InlineData("using var stream = File.Create(path);")]
    [InlineData("File.Move(one, other, overwrite: true);")]
    [InlineData("new FileStream(path, FileMode.Create)")]
    [InlineData("new StreamWriter(path)")]
    [InlineData("file.CopyTo(path, overwrite: true)")]
    [InlineData("entry.ExtractToFile(path)")]
    public void A_planted_one_is_found(string code) => Assert.Matches(Writing(), code);

    private static IEnumerable<(string Name, string Text)> Sources() =>
        new[] { "src", "templates" }
            .SelectMany(folder => Directory.EnumerateFiles(Path.Combine(RepositoryRoot.Path, folder), "*.cs", SearchOption.AllDirectories))
            .Select(file => (Name: Path.GetRelativePath(RepositoryRoot.Path, file).Replace('\\', '/'), Text: File.ReadAllText(file)))
            .Where(f => !f.Name.Contains("/obj/", StringComparison.Ordinal) && !f.Name.Contains("/bin/", StringComparison.Ordinal))
            .OrderBy(f => f.Name, StringComparer.Ordinal);

    [GeneratedRegex(
        @"\bFile\.(WriteAll|AppendAll|Create|Move|Copy|Replace|OpenWrite|Delete)\w*\(|\bFileMode\.(Create|Append|Truncate|OpenOrCreate)|new StreamWriter\(|\bExtractTo|overwrite: true",
        RegexOptions.CultureInvariant,
        5000
    )]
    private static partial Regex Writing();
}
