using ExamDocs.UseCases.Tests.Architecture.Planted.Low;

namespace ExamDocs.UseCases.Tests.Architecture;

/// <summary>That the tests of arrows between types and folders find what they are for.</summary>
public sealed class PlantedArrowTests
{
    private const string Root = "ExamDocs.UseCases.Tests.Architecture.Planted";

    [Fact]
    public void Every_way_to_know_a_higher_floor_is_named()
    {
        var told = OfThisAssembly()
            .Up([
                ["Low"],
                ["High"],
            ]);
        var planted = typeof(Innocent)
            .Assembly.GetTypes()
            .Where(t => t is { IsNested: false, Namespace: Root + ".Low", Name: ['B', 'y', ..] })
            .ToList();
        Assert.True(planted.Count >= 17);
        Assert.All(planted, type =>
            Assert.Contains(told, line => line.StartsWith($"Low/{type.Name} (1) -> High/", StringComparison.Ordinal))
        );
        Assert.DoesNotContain(told, line => line.Contains(nameof(Innocent), StringComparison.Ordinal));
    }

    [Fact]
    public void An_arrow_down_is_none_to_be_named() =>
        Assert.Empty(
            OfThisAssembly()
                .Up([
                    ["High"],
                    ["Low"],
                ])
        );

    [Fact]
    public void A_folder_without_a_floor_is_named() =>
        Assert.Equal(
            ["High has no floor"],
            OfThisAssembly()
                .Up([
                    ["Low"],
                ])
        );

    [Fact]
    public void A_circle_is_named_once_with_all_its_folders()
    {
        var folders = Folders("A.X>B.X", "B.X>C.X", "C.Y>A.Y", "C.X>D.X", "D.X>E.X", "E.Y>D.Y", "X>A.X");
        Assert.Equal(["A <> B <> C", "D <> E"], folders.Circles());
        Assert.Equal(["D/X -> E/X", "E/Y -> D/Y"], folders.Within("D <> E"));
    }

    [Fact]
    public void The_top_of_a_project_is_a_folder_too() => Assert.Equal(["(top) <> A"], Folders("X>A.X", "A.Y>Y").Circles());

    [Fact]
    public void Arrows_one_way_are_no_circle() =>
        Assert.Empty(Folders("A.X>B.X", "A.X>C.X", "B.X>C.X", "X>A.X", "A.X>A.Y", "A.Y>A.X").Circles());

    [Fact]
    public void A_folder_of_another_project_is_none_of_this_one() =>
        Assert.Equal(
            0,
            new FolderArrows(
                "P",
                [new(new("P", "P.A", "X"), new("Q", "P.B", "X")), new(new("P", "Compilers.Own", "X"), new("P", "P.A", "X"))]
            ).Count
        );

    private static FolderArrows OfThisAssembly() => new(Root, TypeArrows.In(typeof(Innocent).Assembly.Location));

    /// <summary>Each arrow as folder and type it leads from, and to.</summary>
    private static FolderArrows Folders(params string[] arrows) =>
        new("P", [.. arrows.Select(a => a.Split('>')).Select(a => new TypeArrow(Named(a[0]), Named(a[1])))]);

    private static NamedType Named(string type) =>
        type.Split('.') is [var folder, var name] ? new("P", $"P.{folder}", name) : new("P", "P", type);
}
