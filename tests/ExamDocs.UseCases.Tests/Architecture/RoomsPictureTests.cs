using System.Text;

namespace ExamDocs.UseCases.Tests.Architecture;

/// <summary>
/// The picture of the rooms in docs/rooms.md is the one that the built assemblies give; EXAMDOCS_UPDATE_PAGES=1 draws it anew.
/// </summary>
public sealed class RoomsPictureTests
{
    private const string Head = """
        # The rooms

        Drawn from the built assemblies; after a change to the rooms draw it anew with

        ```
        EXAMDOCS_UPDATE_PAGES=1 bash tests/run.sh --filter-class '*RoomsPictureTests'
        ```

        An arrow leads from a folder to one whose types it uses. An arrow is left out where two others lead the same way. Types in
        a project's own folder are left out too: they may use every folder. [DEVELOPERS.md](../DEVELOPERS.md) says what each room holds.
        """;

    [Fact]
    public void The_picture_is_of_these_assemblies()
    {
        var page = Path.Combine(RepositoryRoot.Path, "docs", "rooms.md");
        var drawn = Drawn();
        if (Environment.GetEnvironmentVariable("EXAMDOCS_UPDATE_PAGES") is "1")
            File.WriteAllText(page, drawn);
        Assert.Equal(drawn, File.ReadAllText(page));
    }

    [Fact]
    public void What_follows_from_two_arrows_is_left_out()
    {
        var planted = new Dictionary<string, string[]>(StringComparer.Ordinal)
        {
            ["a"] = ["b", "c"],
            ["b"] = ["c"],
            ["c"] = [],
        };
        Assert.Equal(["b"], Drawable(planted, "a"));
        Assert.Equal(["c"], Drawable(planted, "b"));
    }

    private static string Drawn()
    {
        var page = new StringBuilder(Head).Append('\n');
        foreach (var project in FloorTests.Projects.Select(p => p.Data))
        {
            var folders = FloorTests.Folders(project);
            var uses = folders
                .Names.Where(folder => folder is not FolderArrows.Top)
                .ToDictionary(f => f, f => folders.UsedBy(f).Where(to => to is not FolderArrows.Top).ToArray(), StringComparer.Ordinal);
            if (uses.Count == 0)
                continue;
            page.Append($"\n## {project}\n\n```mermaid\nflowchart TD\n");
            foreach (var folder in uses.Keys)
                page.Append($"  {folder}\n");
            foreach (var (folder, to) in uses.Keys.SelectMany(folder => Drawable(uses, folder).Select(to => (folder, to))))
                page.Append($"  {folder} --> {to}\n");
            page.Append("```\n");
        }
        return page.ToString();
    }

    /// <summary>The folders that a folder uses, without those that it reaches over another too.</summary>
    private static IEnumerable<string> Drawable(Dictionary<string, string[]> uses, string folder) =>
        uses[folder].Where(to => !uses[folder].Any(over => over != to && Reaches(uses, over, to, [])));

    /// <summary>A circle is drawn as it is: that there is none is the business of another test.</summary>
    private static bool Reaches(Dictionary<string, string[]> uses, string from, string to, HashSet<string> over) =>
        over.Add(from) && uses[from].Any(next => next == to || Reaches(uses, next, to, over));
}
