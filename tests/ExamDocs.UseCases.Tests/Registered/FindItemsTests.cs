using ExamDocs.Core.Regimes;
using ExamDocs.Register;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using ExamDocs.UseCases.Tests.Issuing;
using NodaTime;
using static ExamDocs.UseCases.Tests.BetweenRecords.Stories.Story;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>
/// What a register says of an item that somebody holds in the hand. Records are imported, so nothing is issued: the best that an item
/// can be is not issued. The journey through the workbench shows one in service.
/// </summary>
public sealed partial class FindItemsTests : IDisposable
{
    private const string Spring = "2026-05-11";
    private const string Summer = "2026-07-01";
    private const string Autumn = "2026-11-02";
    private static readonly LocalDate Today = new(2026, 11, 9);

    private readonly Workspace _workspace = new();
    private int _files;

    public void Dispose() => _workspace.Dispose();

    private static readonly (string Name, StoryVisit[] Visits, string Asked, string Must)[] Cases =
    [
        ("clear", [Bridge(Spring)], "RB-1", "RB-1 NotIssued"),
        ("cut", [Bridge(Spring, i => i.Cut())], "RB-1", "RB-1 Withdrawn"),
        ("in small letters", [Bridge(Spring, i => i.Cut())], "rb 01", "RB-1 Withdrawn"),
        ("by serial, respelt", [Bridge(Spring, i => i.Cut())], "q 100", "RB-1 Withdrawn"),
        ("by owner's mark", [Bridge(Spring, i => i.Mark("M 7").Cut())], "m7", "RB-1 Withdrawn"),
        (
            "an owner's mark is another's id",
            [Bridge(Spring, i => i.Mark("M 7").Cut()), Visit("V-9", Autumn).Bridge("M7", "Q200")],
            "m7",
            "RB-1 Withdrawn|M7 NotIssued"
        ),
        (
            "an owner's mark is another's serial",
            [Bridge(Spring, i => i.Mark("Q200").Cut()), Visit("V-9", Autumn).Bridge("RB-8", "q-200")],
            "Q 200",
            "RB-1 Withdrawn|RB-8 NotIssued"
        ),
        ("in doubt", [Bridge(Spring, i => i.Doubt())], "RB-1", "RB-1 Withdrawn"),
        ("a question not answered", [Bridge(Spring, i => i.Forgotten())], "RB-1", "RB-1 Held"),
        ("clear, then cut", [Bridge(Spring), Bridge(Autumn, i => i.Cut())], "RB-1", "RB-1 Withdrawn"),
        ("clear, then cut, stored in the other order", [Bridge(Autumn, i => i.Cut()), Bridge(Spring)], "RB-1", "RB-1 Withdrawn"),
        ("cut, then clear", [Bridge(Spring, i => i.Cut()), Bridge(Autumn)], "RB-1", "RB-1 Withdrawn"),
        ("old paper of a cut comes in late", [Bridge(Autumn), Bridge(Spring, i => i.Cut())], "RB-1", "RB-1 Held"),
        (
            "cut under another spelling",
            [Bridge(Spring), Visit("V-9", Autumn).Bridge("rb 001", "q-100", i => i.Cut())],
            "RB-1",
            "rb 001 Withdrawn"
        ),
        (
            "cut under another tag of its serial",
            [Bridge(Spring), Visit("V-9", Autumn).Bridge("RB-9", "Q100", i => i.Cut())],
            "RB-1",
            "RB-9 Withdrawn|RB-1 Held"
        ),
        ("lost since", [Bridge(Spring), Visit("V-9", Autumn).Bridge("RB-1", "Q100", i => i.NotLookedAt("lost"))], "RB-1", "RB-1 Withdrawn"),
        ("destroyed", [Bridge(Spring), Visit("V-9", Autumn).Bridge("RB-1", "Q100", i => i.Destroyed())], "RB-1", "RB-1 Withdrawn"),
        (
            "not looked at since, and still in date",
            [Bridge(Summer), Visit("V-9", Autumn).Bridge("RB-1", "Q100", i => i.NotLookedAt())],
            "RB-1",
            "RB-1 NotIssued"
        ),
        ("overdue", [Bridge("2026-05-01")], "RB-1", "RB-1 Overdue"),
        ("due on this very day", [Bridge("2026-05-09")], "RB-1", "RB-1 NotIssued"),
        ("due the day before", [Bridge("2026-05-08")], "RB-1", "RB-1 Overdue"),
        ("a defect that becomes dangerous today", [Bridge(Summer, i => i.LaterDefect("2026-11-09"))], "RB-1", "RB-1 Withdrawn"),
        ("a defect that becomes dangerous tomorrow", [Bridge(Summer, i => i.LaterDefect("2026-11-10"))], "RB-1", "RB-1 NotIssued"),
        ("the part on it is cut", [OnHarness(i => i.Cut())], "H-1", "H-1 Withdrawn"),
        (
            "the part on it is cut at a later visit",
            [OnHarness(), Visit("V-9", Autumn).Bridge("RB-1", "Q100", i => i.On("H-1").Cut())],
            "H-1",
            "H-1 Withdrawn"
        ),
        (
            "the cut part was renewed",
            [
                OnHarness(i => i.Cut()),
                Visit("V-9", Autumn).Harness("H-1", "H100").Bridge("RB-2", "Q200", i => i.On("H-1")).Renewed("H-1", "RB-1", "RB-2"),
            ],
            "H-1",
            "H-1 NotIssued"
        ),
        (
            "the part was cut once it was off",
            [
                OnHarness(),
                Visit("V-8", "2026-08-01").Harness("H-1", "H100").Bridge("RB-2", "Q200", i => i.On("H-1")).Renewed("H-1", "RB-1", "RB-2"),
                Bridge(Autumn, i => i.Cut()),
            ],
            "H-1",
            "H-1 NotIssued"
        ),
        (
            "the new part is cut",
            [
                OnHarness(),
                Visit("V-8", "2026-08-01").Harness("H-1", "H100").Bridge("RB-2", "Q200", i => i.On("H-1")).Renewed("H-1", "RB-1", "RB-2"),
                Visit("V-9", Autumn).Bridge("RB-2", "Q200", i => i.Cut()),
            ],
            "H-1",
            "H-1 Withdrawn"
        ),
        (
            "the part on it is overdue",
            [
                Visit("V-0", "2026-05-01").Harness("H-1", "H100", i => i.NotLookedAt()).Bridge("RB-1", "Q100", i => i.On("H-1")),
                Visit("V-1", Summer).Harness("H-1", "H100"),
            ],
            "H-1",
            "H-1 Overdue"
        ),
        (
            "the part's serial number is on another tag, cut",
            [OnHarness(), Visit("V-9", Autumn).Bridge("RB-9", "Q100", i => i.Cut())],
            "H-1",
            "H-1 Held"
        ),
        (
            "its serial number left out since, and cut under another tag",
            [
                Bridge(Spring),
                Visit("V-2", Summer).Bridge("RB-1", null, i => i.Mark("M7")),
                Visit("V-9", Autumn).Bridge("RB-9", "Q100", i => i.Cut()),
            ],
            "RB-1",
            "RB-9 Withdrawn|RB-1 Held"
        ),
        (
            "cut under its new tag",
            [Bridge(Spring), Visit("V-9", Autumn).Bridge("RB-9", "Q777", i => i.Formerly("RB-1").Cut())],
            "RB-1",
            "RB-9 Withdrawn"
        ),
        (
            "two firms, one tag",
            [Bridge(Spring, i => i.Cut()), Visit("V-9", Autumn, "Other Firm").Bridge("RB-1", "Z9")],
            "RB-1",
            "RB-1 Withdrawn|RB-1 NotIssued"
        ),
        (
            "a batch number drags no other in",
            [Visit("V-1", Summer).Bridge("RB-1", "B5").Bridge("RB-2", "B5", i => i.Cut())],
            "RB-1",
            "RB-1 NotIssued"
        ),
        ("nobody knows it", [Bridge(Spring)], "RB-7", ""),
    ];

    public static TheoryData<string> Names => [.. Cases.Concat(Histories).Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void An_item_stands_as_badly_as_anything_known_of_it(string name)
    {
        var (_, visits, asked, must) = Cases.Concat(Histories).Single(c => c.Name == name);
        foreach (var visit in visits)
            Import(visit);
        var found = FindItems.ByMarking(_workspace.Register, asked, Today);
        Assert.True(
            must == string.Join('|', found.Select(f => $"{f.Id} {f.Standing}")),
            string.Join("\n", found.Select(f => $"{f.Id} {f.Standing}: {f.Why}"))
        );
        Assert.All(found, f => Assert.NotEmpty(f.Why.Text));
        Assert.All(found, f => Assert.Null(f.UsableThrough));
    }

    [Fact]
    public void What_a_report_says_holds_no_longer_than_what_is_fitted_to_it()
    {
        Import(Visit("V-1", Autumn).Harness("H-1", "H100"));
        using (var register = DocumentRegister.Open(_workspace.Register, Today))
        {
            var number = register.Take(new('R', 2026, "report", "V-1", ["H-1"], Folder: null) { Visit = 1 });
            register.Publish(number, "%PDF-1.7"u8.ToArray(), 1, "{}");
        }
        var alone = Assert.Single(FindItems.ByMarking(_workspace.Register, "H-1", Today));
        Assert.Equal((Standing.InService, new LocalDate(2027, 5, 2)), (alone.Standing, alone.UsableThrough));
        Import(Visit("V-9", Autumn).Bridge("RB-1", "Q100", i => i.On("H-1").LaterDefect("2026-11-20")));
        var found = Assert.Single(FindItems.ByMarking(_workspace.Register, "H-1", Today));
        Assert.Equal((Standing.InService, new LocalDate(2026, 11, 19)), (found.Standing, found.UsableThrough));
        Assert.EndsWith("until 19 Nov 2026 (by RB-1, which is fitted to it)", found.Why.Text, StringComparison.Ordinal);
        Assert.Equal(Standing.Held, FindItems.ByMarking(_workspace.Register, "H-1", new(2026, 11, 20))[0].Standing);
    }

    [Fact]
    public void What_was_cut_without_a_row_of_its_own_is_withdrawn_and_keeps_its_serial_number()
    {
        Import(Bridge(Spring));
        var unlisted = System.Text.Json.Nodes.JsonNode.Parse(Bridge(Autumn, i => i.Cut()).Json)!;
        unlisted["items"]!.AsArray().Clear();
        Import(unlisted.ToJsonString());
        var found = Assert.Single(FindItems.ByMarking(_workspace.Register, "RB-1", Today));
        Assert.Equal((Standing.Withdrawn, "Q100"), (found.Standing, found.Item.Serial));
    }

    [Theory]
    [InlineData("Q-2020-000007 RB-1\nDo not use\nserial Q100")]
    [InlineData("EXAMDOCS:Q-2020-000007:RB-1")]
    [InlineData("  rb-1  \nsomething else")]
    public void The_code_of_a_label_says_which_item_it_hangs_on(string scanned)
    {
        Import(Bridge(Spring, i => i.Cut()));
        var found = Assert.Single(FindItems.ByMarking(_workspace.Register, scanned, Today));
        Assert.Equal(Standing.Withdrawn, found.Standing);
    }

    [Fact]
    public void The_code_of_another_registers_label_shows_no_item_that_has_its_number_here()
    {
        Import(Visit("V-1", Autumn).Harness("H-1", "H100"));
        using (var register = DocumentRegister.Open(_workspace.Register, Today))
        {
            var number = register.Take(new('D', 2026, "due-label", "V-1 H-1", ["H-1"], Folder: null) { Visit = 1 });
            register.Publish(number, "%PDF-1.7"u8.ToArray(), 1, "{}");
        }
        Assert.Empty(FindItems.ByMarking(_workspace.Register, "D-2026-000001 H-9", Today));
        Assert.Empty(FindItems.ByMarking(_workspace.Register, "D-2026-000001 H-12\nExamine by 2 May 2027", Today));
        Assert.Equal("H-1", Assert.Single(FindItems.ByMarking(_workspace.Register, "D-2026-000001", Today)).Id);
        Assert.Equal("H-1", Assert.Single(FindItems.ByMarking(_workspace.Register, "D-2026-000001 H-1Examine by 2 May 2027", Today)).Id);
    }

    [Fact]
    public void An_id_that_reads_like_a_number_of_a_document_is_found()
    {
        Import(Visit("V-1", Autumn).Harness("A-2024-000123", "H100", i => i.Cut()));
        var found = Assert.Single(FindItems.ByMarking(_workspace.Register, "A-2024-000123", Today));
        Assert.Equal(Standing.Withdrawn, found.Standing);
    }

    [Fact]
    public void What_no_item_is_marked_with_is_not_passed_off_as_another()
    {
        Import(Visit("V-1", Autumn).Harness("RB-10", "H100"));
        var found = FindItems.Of(_workspace.Register, "RB-1", Today);
        Assert.Equal((false, "RB-10"), (found.IsMarked, Assert.Single(found.Items).Id));
        Assert.True(FindItems.Of(_workspace.Register, "rb 10", Today).IsMarked);
    }

    [Fact]
    public void A_letter_that_looks_like_a_Latin_one_is_that_one()
    {
        Import(Visit("V-1", Autumn).Bridge("RB-15", "Q100", i => i.Cut()));
        Assert.Equal(Standing.Withdrawn, Assert.Single(FindItems.ByMarking(_workspace.Register, "R\u0412-15", Today)).Standing);
    }

    [Theory]
    [InlineData("BR-15", true)]
    [InlineData("RB-1S", true)]
    [InlineData("RB-16", false)]
    [InlineData("H-15", false)]
    public void A_slip_in_the_marking_still_shows_what_was_withdrawn(string typed, bool isShown)
    {
        Import(Visit("V-1", Autumn).Bridge("RB-15", "Q100", i => i.Cut()));
        Assert.Empty(FindItems.ByMarking(_workspace.Register, typed, Today));
        var like = FindItems.SpeltLike(_workspace.Register, typed, Today);
        Assert.Equal(isShown ? ["RB-15 Withdrawn"] : [], like.Select(i => $"{i.Id} {i.Standing}"));
    }

    [Fact]
    public void Words_find_what_has_them_all_and_show_the_worst_first()
    {
        Import(Bridge(Spring));
        Import(Visit("V-2", Autumn).Bridge("RB-2", "Q200", i => i.Cut()).Harness("H-1", "H100"));
        var (items, inAll) = FindItems.ByWords(_workspace.Register, "fennick BRIDGE", Today);
        Assert.Equal(["RB-2", "RB-1"], items.Select(i => i.Id));
        Assert.Equal(2, inAll);
        Assert.Empty(FindItems.ByWords(_workspace.Register, "fennick helmet", Today).Items);
    }

    [Fact]
    public void The_history_has_every_visit_the_latest_first()
    {
        Import(Bridge(Spring));
        Import(Bridge(Autumn, i => i.Cut()));
        var history = Assert.Single(FindItems.ByMarking(_workspace.Register, "RB-1", Today)).History;
        Assert.Equal(["withdraw", "fit"], history.Select(v => v.Outcome));
        Assert.Equal([new LocalDate(2026, 11, 2), new LocalDate(2026, 5, 11)], history.Select(v => v.Day!.Value));
    }

    private static StoryVisit Bridge(string day, Func<StoryItem, StoryItem>? more = null) =>
        Visit($"V-{day}", day).Bridge("RB-1", "Q100", more);

    private static StoryVisit OnHarness(Func<StoryItem, StoryItem>? more = null) =>
        Visit("V-1", Summer).Harness("H-1", "H100").Bridge("RB-1", "Q100", i => (more ?? (j => j))(i.On("H-1")));

    /// <summary>A list that grows: what is known already is looked up again once the register, or the day, is another.</summary>
    [Fact]
    public void What_was_found_before_holds_until_the_register_or_the_day_changes()
    {
        var memory = new FoundMemory();
        Import(Bridge(Spring));
        var first = Found();
        Assert.Same(first, Found());
        Assert.NotSame(first, FindItems.ByMarkings(_workspace.Register, ["RB-1"], Today.PlusDays(1), memory)[0]);
        Assert.Equal(Standing.NotIssued, Assert.Single(Found()).Standing);

        using (var register = DocumentRegister.Open(_workspace.Register, Today))
            register.Void(register.Take(new('R', 2026, "report", "a", ["RB-1"], null)), "tried");
        var before = Found();
        Import(Bridge(Autumn, i => i.Cut()));
        Assert.NotSame(before, Found());
        Assert.Equal(Standing.Withdrawn, Assert.Single(Found()).Standing);

        IReadOnlyList<FoundItem> Found() => FindItems.ByMarkings(_workspace.Register, ["RB-1"], Today, memory)[0];
    }

    private void Import(StoryVisit visit) => Import(visit.Json);

    private void Import(string json)
    {
        var path = Path.Combine(_workspace.Folder, FormattableString.Invariant($"visit-{++_files}.json"));
        File.WriteAllText(path, json);
        ImportVisits.Run([path], _workspace.Register, Today, KnownRules.BuiltIn);
    }
}
