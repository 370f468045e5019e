namespace ExamDocs.UseCases.Tests.Architecture;

/// <summary>The rooms refer to each other in one direction only, and the top of the repository stays as it is laid out.</summary>
public sealed class ReferenceArrowTests
{
    [Fact]
    public void No_project_refers_to_a_room_that_it_may_not()
    {
        Assert.True(ReferenceArrows.Projects(RepositoryRoot.Path).Count() >= 7);
        Assert.Empty(ReferenceArrows.Faults(RepositoryRoot.Path));
    }

    [Fact]
    public void A_planted_arrow_is_named() =>
        WithPlanted(
            "src",
            "ExamDocs.Core",
            """
            <ProjectReference Include="../ExamDocs.Register/ExamDocs.Register.csproj" />
            """,
            "ExamDocs.Core -> ExamDocs.Register"
        );

    [Fact]
    public void A_planted_arrow_with_backslashes_is_named() =>
        WithPlanted(
            "src",
            "ExamDocs.Cli",
            """
            <ProjectReference Include="..\ExamDocs.Core\ExamDocs.Core.csproj" />
            """,
            "ExamDocs.Cli -> ExamDocs.Core"
        );

    [Fact]
    public void A_planted_reference_to_a_built_assembly_is_named() =>
        WithPlanted(
            "templates",
            "ExamDocs.Templates",
            """
            <Reference Include="ExamDocs.Register" />
            """,
            "ExamDocs.Templates -> ExamDocs.Register"
        );

    [Fact]
    public void A_planted_project_of_no_room_is_named() =>
        WithPlanted("src", "ExamDocs.Misc", "", "ExamDocs.Misc is no room of this house");

    [Fact]
    public void A_planted_project_with_allowed_arrows_is_not_named() =>
        WithPlanted(
            "src",
            "ExamDocs.Documents",
            """
            <ProjectReference Include="../ExamDocs.Core/ExamDocs.Core.csproj" />
            <ProjectReference Include="../../templates/ExamDocs.Templates/ExamDocs.Templates.csproj" />
            """
        );

    [Fact]
    public void The_top_of_the_repository_holds_the_fixed_layout_and_no_more() =>
        Assert.Empty(
            TopLevel.Strangers(
                Directory.EnumerateFileSystemEntries(RepositoryRoot.Path).Select(e => Path.GetFileName(e)),
                File.ReadAllLines(Path.Combine(RepositoryRoot.Path, ".gitignore"))
            )
        );

    [Fact]
    public void A_planted_stranger_at_the_top_is_named() =>
        Assert.Equal(
            ["notes.txt", "results"],
            TopLevel.Strangers(
                ["src", ".editorconfig", "notes.txt", "README.md", "TestResults", "results", "kit.db"],
                ["TestResults/", "*.db"]
            )
        );

    private static void WithPlanted(string folder, string project, string references, params string[] named)
    {
        var root = Directory.CreateTempSubdirectory("examdocs-arrows-").FullName;
        try
        {
            var room = Directory.CreateDirectory(Path.Combine(root, folder, project)).FullName;
            File.WriteAllText(
                Path.Combine(room, $"{project}.csproj"),
                $"<Project Sdk=\"Microsoft.NET.Sdk\"><ItemGroup>{references}</ItemGroup></Project>"
            );
            Assert.Equal(named, ReferenceArrows.Faults(root));
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    }
}
