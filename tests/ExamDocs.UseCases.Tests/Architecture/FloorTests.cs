namespace ExamDocs.UseCases.Tests.Architecture;

/// <summary>Between the folders of a project arrows go one way, as between the projects; read from what was built.</summary>
public sealed class FloorTests
{
    public static TheoryData<string> Projects { get; } =
    [.. ReferenceArrows.Projects(RepositoryRoot.Path).Select(p => Path.GetFileNameWithoutExtension(p)).Order(StringComparer.Ordinal)];

    [Fact]
    public void No_folder_of_Core_knows_one_on_a_higher_floor()
    {
        var core = Folders("ExamDocs.Core");
        Assert.Contains("Rules", core.UsedBy(FolderArrows.Top));
        Assert.Empty(core.Up(Floors.OfCore));
    }

    [Fact]
    public void What_is_known_from_other_records_is_found_out_from_records_alone() =>
        Assert.Equal(["Identity", "Records"], Folders("ExamDocs.Core").UsedBy("Known"));

    [Fact]
    public void No_folder_of_Register_knows_one_on_a_higher_floor()
    {
        var register = Folders("ExamDocs.Register");
        Assert.Contains("Rows", register.UsedBy("Checking"));
        Assert.Empty(register.Up(Floors.OfRegister));
    }

    [Theory]
    [MemberData(nameof(Projects))]
    public void Folders_know_each_other_in_no_circle(string project)
    {
        var folders = Folders(project);
        Assert.True(folders.Count > 0);
        var found = folders.Circles();
        Assert.True(
            found.Count == 0,
            $"{project} has these circles: {string.Join("; ", found)}\n{string.Join('\n', found.SelectMany(folders.Within))}"
        );
    }

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_library_is_known_to_the_one_project_that_may(string project) =>
        Assert.Empty(
            from needed in TypeArrows.AssembliesOf(Assembly(project))
            from owned in Floors.Owned
            where
                needed.StartsWith(owned.Library, StringComparison.OrdinalIgnoreCase)
                && !string.Equals(owned.Project, project, StringComparison.Ordinal)
            select $"{project} -> {needed}"
        );

    [Fact]
    public void Each_library_with_one_owner_is_needed_there() =>
        Assert.All(Floors.Owned.Where(o => o.Library is not "SQLitePCLRaw"), owned =>
            Assert.Contains(TypeArrows.AssembliesOf(Assembly(owned.Project)), needed =>
                needed.StartsWith(owned.Library, StringComparison.OrdinalIgnoreCase)
            )
        );

    /// <summary>
    /// Records, findings and the rules known are plain types in which jobs take and give; to wrap them all would say the same twice.
    /// </summary>
    [Fact]
    public void The_command_line_knows_the_jobs_and_of_other_projects_plain_types_alone()
    {
        string[] known =
        [
            .. TypeArrows
                .In(Assembly("ExamDocs.Cli"))
                .Select(a => a.To)
                .Where(to =>
                    to.Assembly.StartsWith("ExamDocs.", StringComparison.Ordinal)
                    && to.Assembly is not ("ExamDocs.Cli" or "ExamDocs.UseCases" or "ExamDocs.Workbench")
                )
                .Select(to => $"{to.Namespace}.{to.Name}")
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal),
        ];
        Assert.Contains("ExamDocs.Core.Criteria.Catalogue", known);
        Assert.Empty(known.Where(k => !Floors.PlainOfCore.Any(p => k.StartsWith(p + ".", StringComparison.Ordinal))));
    }

    internal static FolderArrows Folders(string project) => new(project, TypeArrows.In(Assembly(project)));

    private static string Assembly(string project) => Path.Combine(AppContext.BaseDirectory, project + ".dll");
}
