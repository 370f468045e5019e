using System.Globalization;
using ExamDocs.UseCases.Tests.Pages;

namespace ExamDocs.UseCases.Tests.Architecture;

/// <summary>Code stays short enough to be read: no file over 200 lines and no line over 140 characters in src and templates.</summary>
public sealed class LayoutTests
{
    private const int MostLines = 200;
    private const int MostCharacters = 140;

    [Fact]
    public void No_file_is_too_long_to_be_read()
    {
        var found = new[] { "src", "templates" }
            .SelectMany(folder => Directory.EnumerateFiles(Path.Combine(RepositoryRoot.Path, folder), "*.cs", SearchOption.AllDirectories))
            .Select(file => (Name: Path.GetRelativePath(RepositoryRoot.Path, file).Replace('\\', '/'), Lines: File.ReadAllLines(file)))
            .Where(file => !file.Name.Contains("/obj/", StringComparison.Ordinal) && !file.Name.Contains("/bin/", StringComparison.Ordinal))
            .SelectMany(file => Faults(file.Lines).Select(fault => $"{file.Name}: {fault}"))
            .Order(StringComparer.Ordinal);
        Assert.Empty(found);
    }

    [Theory]
    [InlineData(200, 140, "")]
    [InlineData(201, 140, "over 200 lines")]
    [InlineData(1, 141, "line over 140")]
    public void A_planted_one_is_found(int lines, int characters, string expected) =>
        Assert.Equal(expected, string.Join("; ", Faults([.. Enumerable.Repeat(new string('x', characters), lines)])));

    private static IEnumerable<string> Faults(string[] lines)
    {
        if (lines.Length > MostLines)
            yield return string.Create(CultureInfo.InvariantCulture, $"over {MostLines} lines");
        if (lines.Any(l => l.Length > MostCharacters))
            yield return string.Create(CultureInfo.InvariantCulture, $"line over {MostCharacters}");
    }
}
