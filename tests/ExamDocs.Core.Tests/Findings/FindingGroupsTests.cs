using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Tests.Findings;

/// <summary>The same finding in many rows is one finding with its rows; what follows from another is left out.</summary>
public sealed class FindingGroupsTests
{
    private static readonly SourceMap Sheet = SourceMap.ForWorkbook(
        "visit.xlsx",
        Enumerable
            .Range(0, 30)
            .ToDictionary(n => $"/items/{n}/serial", n => n < 20 ? $"Harnesses!F{n + 2}" : $"Slings!F{n + 2}", StringComparer.Ordinal)
    );

    [Fact]
    public void The_same_words_in_many_rows_are_one_finding()
    {
        var group = Assert.Single(FindingGroups.Of([At(0), At(1), At(2), At(7)], Sheet));

        Assert.Equal("in column F, rows 2 to 4, 9", PlaceWords.Of(group).Text);
        Assert.Equal(["I-0", "I-1", "I-2", "I-7"], group.Items);
        Assert.Null(group.Item);
    }

    [Fact]
    public void Other_words_are_another_finding_unless_values_do_not_count()
    {
        Finding[] found = [At(0, "'3/4' is no date"), At(1, "'5/6' is no date"), At(2, "the date is missing")];

        Assert.Equal(3, FindingGroups.Of(found, Sheet).Count);
        var across = FindingGroups.Of(found, Sheet, acrossValues: true);
        Assert.Equal([1, 0], across.Select(g => g.OfOtherValues));
        Assert.Equal(["'3/4' is no date", "the date is missing"], across.Select(g => g.First.Message.Text));
    }

    [Fact]
    public void What_follows_from_another_is_left_out_and_no_other()
    {
        var cause = At(0) with { LostAt = "/items/0/serial" };
        var found = FindingCauses.Tie([cause, At(0, "it is missing") with { Code = "PAR900" }, At(1, "it is missing")]);

        Assert.Equal(["it is wrong", "it is missing"], FindingGroups.Of(found, Sheet).Select(g => g.First.Message.Text));
    }

    [Fact]
    public void The_gravest_comes_first_of_findings_of_sheets_and_of_items()
    {
        Finding[] found =
        [
            At(0, "a note") with
            {
                Severity = Severity.Note,
            },
            At(20, "a warning") with
            {
                Severity = Severity.Warning,
            },
            At(21, "an error"),
            At(1, "another error"),
            At(21, "a note there") with
            {
                Severity = Severity.Note,
            },
        ];

        var sections = FindingGroups.Sections(FindingGroups.Of(found, Sheet), Sheet);

        Assert.Equal(["Slings", "Harnesses"], sections.Select(s => s.Sheet));
        Assert.Equal(["I-21", "I-20"], sections[0].Items.Select(i => i.Item));
        Assert.Equal(["an error", "a note there"], sections[0].Items[0].Findings.Select(f => f.First.Message.Text));
    }

    /// <summary>Below the name of an item it would read as being about that one.</summary>
    [Fact]
    public void What_is_about_several_items_stands_before_the_first_item()
    {
        Finding[] found =
        [
            At(0, "an error"),
            At(1, "a warning") with
            {
                Severity = Severity.Warning,
            },
            At(2, "a warning") with
            {
                Severity = Severity.Warning,
            },
        ];

        var section = Assert.Single(FindingGroups.Sections(FindingGroups.Of(found, Sheet), Sheet));

        Assert.Equal([null, "I-0"], section.Items.Select(i => i.Item));
    }

    [Fact]
    public void What_is_on_several_sheets_stands_under_the_file()
    {
        var section = Assert.Single(FindingGroups.Sections(FindingGroups.Of([At(1), At(21), At(22)], Sheet), Sheet));

        Assert.Equal(("visit.xlsx", null), (section.File, section.Sheet));
        Assert.Equal(
            "on Harnesses column F, row 3; Slings column F, rows 23, 24",
            PlaceWords.Of(Assert.Single(Assert.Single(section.Items).Findings)).Text
        );
    }

    [Fact]
    public void A_finding_about_the_visit_stands_under_no_item()
    {
        var map = SourceMap.ForJson("visit.json");
        var groups = FindingGroups.Of([At(0) with { Path = "/visit/regime" }, At(1) with { Path = "/items/1/serial" }], map);
        var one = FindingGroups.Of([At(0) with { Path = "/visit/regime" }], map);

        Assert.Equal("of I-0, I-1", PlaceWords.Of(Assert.Single(groups)).Text);
        Assert.Null(Assert.Single(one).Item);
    }

    private static Finding At(int item, string message = "it is wrong") =>
        new("IDN900", Severity.Error, $"/items/{item}/serial", Message.AsIs(message), $"Type it.", "") { Item = $"I-{item}" };
}
