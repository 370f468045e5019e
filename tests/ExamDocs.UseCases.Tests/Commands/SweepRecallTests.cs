using System.Text.Json.Nodes;
using ExamDocs.Core;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Json;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Recalling;
using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using ExamDocs.UseCases.Tests.Issuing;
using NodaTime;
using static ExamDocs.UseCases.Tests.BetweenRecords.Stories.Story;

namespace ExamDocs.UseCases.Tests.Commands;

/// <summary>A notice that names serial numbers Q100 to Q199: what it names goes out of use, and stays out.</summary>
public sealed class SweepRecallTests : IDisposable
{
    private const string Spring = "2026-05-11";
    private const string Later = "2026-11-16";
    private static readonly LocalDate Sweep = new(2026, 11, 9);
    private static readonly LocalDate Afterwards = new(2026, 11, 20);

    private readonly Workspace _workspace = new();
    private int _files;

    public void Dispose() => _workspace.Dispose();

    [Fact]
    public async Task What_is_named_gets_a_label_and_a_notice_and_what_is_open_a_hold_label()
    {
        Import(Visit("V-1", Spring).Bridge("RB-1", "Q150").Bridge("RB-2", null).Bridge("RB-3", "Q250"));
        var result = await SweepAsync();
        Assert.Null(result.Issued!.Failure);
        Assert.Equal(
            ["RB-1 notice", "RB-1 quarantine-label", "RB-2 quarantine-label"],
            result.Issued.Documents.Select(d => $"{d.Items[0]} {d.Kind}").Order(StringComparer.Ordinal)
        );
        Assert.Equal((Standing.Withdrawn, Standing.Held), (Stands("RB-1"), Stands("RB-2")));
        Assert.Equal(Standing.Overdue, Stands("RB-3"));
        var label = Pdf.Squeeze(Pdf.Text(_workspace.FileOf(result.Issued.Documents[0])));
        Assert.Contains(Pdf.Squeeze("safety notice FW-1 of Fennick Works"), label, StringComparison.OrdinalIgnoreCase);
        Assert.All(result.Issued.Documents, d => Assert.Null(Pdf.Objection(_workspace.FileOf(d))));
    }

    /// <summary>What was withdrawn by itself, with its part, or held: nobody looked at it, and no paper says so.</summary>
    [Theory]
    [InlineData("en", "Withdrawn on 9 Nov 2026 by the maker's safety notice FW-1", "maker's notice FW-1", "Examined")]
    [InlineData(
        "de",
        "Ausgesondert am 9. November 2026 durch die Sicherheitsmitteilung FW-1",
        "Mitteilung FW-1 des Herstellers",
        "Geprüft"
    )]
    [InlineData("fr", "Retiré le 9 novembre 2026 par l’avis de sécurité FW-1", "l’avis FW-1 du fabricant", "Vérifié")]
    public async Task No_paper_reads_as_if_somebody_had_looked_at_the_item(string language, string notice, string label, string never)
    {
        Import(
            Visit("V-1", Spring)
                .Harness("H-1", "H100", i => i.Maker("Tarnholm Gear"))
                .Bridge("RB-1", "Q150", i => i.On("H-1"))
                .Bridge("RB-2", null)
        );
        var issued = await SweepRecall.RunAsync(
            Request(Sweep, Notice()) with
            {
                Style = new() { Language = Language.All.Single(l => l.Tag == language) },
            },
            TestContext.Current.CancellationToken
        );
        Assert.Equal(5, issued.Issued!.Documents.Count);
        Assert.All(issued.Issued.Documents, d =>
        {
            var text = Pdf.Text(_workspace.FileOf(d));
            Assert.DoesNotContain(never, text.Replace("Nicht geprüft", "", StringComparison.Ordinal), StringComparison.Ordinal);
            Assert.Contains(Pdf.Squeeze(d.Kind is "notice" ? notice : label), Pdf.Squeeze(text), StringComparison.Ordinal);
        });
    }

    [Fact]
    public async Task The_record_of_the_sweep_says_of_each_item_what_was_done_and_why()
    {
        Import(Visit("V-1", Spring).Bridge("RB-1", "Q150").Bridge("RB-2", null).Bridge("RB-3", "Q250"));
        var result = await SweepAsync();
        var record = JsonNode.Parse(await File.ReadAllTextAsync(Path.Combine(_workspace.Out, result.File!)))!;
        Assert.Equal("examdocs-recall-sweep/1", (string?)record["format"]);
        Assert.Equal(("2026-11-09", "FW-1"), ((string?)record["on"], (string?)record["notice"]!["reference"]));
        Assert.Equal(64, ((string)record["noticeSha256"]!).Length);
        Assert.Equal(
            ["RB-1 affected withdraw 2", "RB-2 cannot-tell hold 1", "RB-3 not-affected none 0"],
            record["items"]!.AsArray().Select(i => $"{i!["id"]} {i["verdict"]} {i["action"]} {i["documents"]!.AsArray().Count}")
        );
        Assert.All(record["items"]!.AsArray(), i => Assert.NotEmpty(i!["reasons"]!.AsArray()));
    }

    [Fact]
    public async Task The_same_sweep_again_does_nothing_twice_on_that_day_and_on_another()
    {
        Import(Visit("V-1", Spring).Bridge("RB-1", "Q150").Bridge("RB-2", null));
        await SweepAsync();
        var before = Files();
        foreach (var day in new[] { Sweep, Afterwards })
        {
            var again = await SweepAsync(day);
            Assert.Equal((null, null), (again.Issued, again.File));
            Assert.Equal([SweepAction.IsWithdrawn, SweepAction.IsHeld], again.Items.Select(i => i.Action));
            Assert.Contains("the sweep of 9 Nov 2026", again.Items[0].Said!.Text, StringComparison.Ordinal);
            Assert.Equal(2, again.Items[0].Documents.Count);
            Assert.Equal(before, Files());
        }
    }

    [Fact]
    public async Task Kit_that_came_in_since_gets_papers_and_nothing_else_does()
    {
        Import(Visit("V-1", Spring).Bridge("RB-1", "Q150"));
        await SweepAsync();
        Import(Visit("V-2", Later).Bridge("RB-7", "Q151"));
        var again = await SweepAsync(Afterwards);
        Assert.Equal(["RB-7", "RB-7"], again.Issued!.Documents.Select(d => d.Items[0]));
        Assert.Equal(Standing.Withdrawn, Stands("RB-7"));
    }

    [Theory]
    [InlineData("RB-1")]
    [InlineData("rb 01")]
    public async Task Found_fit_afterwards_and_not_released_it_stays_withdrawn(string id)
    {
        Import(Visit("V-1", Spring).Bridge("RB-1", "Q150"));
        await SweepAsync();
        var later = Import(Visit("V-2", Later).Bridge(id, "Q150"));
        Assert.Equal(Outcome.Withdraw, later.Items[0].Outcome);
        Assert.Equal(Standing.Withdrawn, Stands("RB-1"));
    }

    [Fact]
    public async Task Examined_again_alone_does_not_bring_it_back_and_made_good_does()
    {
        Import(Visit("V-1", Spring).Bridge("RB-1", "Q150"));
        await SweepAsync();
        Assert.Equal(
            Outcome.Withdraw,
            Import(Visit("V-2", Later).Bridge("RB-1", "Q150").Released("RB-1", "2026-11-09", "examined-again")).Items[0].Outcome
        );
        var back = Visit("V-3", "2026-11-17").Bridge("RB-1", "Q150").Repaired("RB-1").Released("RB-1", "2026-11-09", "made-good");
        Assert.DoesNotContain(Import(back).Items[0].Reasons, r =>
            r.Code is "W10" && r.Text.Contains("9 November", StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task What_was_released_since_is_not_withdrawn_again_unless_the_notice_says_something_else()
    {
        Import(Visit("V-1", Spring).Bridge("RB-1", "Q150"));
        await SweepAsync();
        var back = Visit("V-2", Later).Bridge("RB-1", "Q150").Repaired("RB-1").Released("RB-1", "2026-11-09", "made-good");
        Assert.Equal(Outcome.Fit, Import(back).Items[0].Outcome);
        var again = await SweepAsync(Afterwards);
        Assert.Equal(SweepAction.IsReleased, again.Items[0].Action);
        Assert.Contains("released since", again.Items[0].Said!.Text, StringComparison.Ordinal);
        Assert.Null(again.Issued);
        var other = await SweepAsync(Afterwards, Notice() with { Demands = "Destroy it." });
        Assert.Equal(SweepAction.Withdraw, other.Items[0].Action);
        Assert.Contains("another text", other.Items[0].Said!.Text, StringComparison.Ordinal);
        Assert.Equal(Standing.Withdrawn, Stands("RB-1"));
    }

    [Fact]
    public async Task A_whole_goes_out_with_its_part_and_comes_back_with_another_one()
    {
        Import(Visit("V-1", Spring).Harness("H-1", "H100", i => i.Maker("Tarnholm Gear")).Bridge("RB-1", "Q150", i => i.On("H-1")));
        await SweepAsync();
        Assert.NotEqual(Standing.InService, Stands("H-1"));
        Assert.Equal(Standing.Withdrawn, Stands("RB-1"));
        var alone = Import(Visit("V-2", Later).Harness("H-1", "H100", i => i.Maker("Tarnholm Gear")));
        Assert.Equal(Outcome.Withdraw, alone.Items[0].Outcome);
        var renewed = Visit("V-3", "2026-11-17")
            .Harness("H-1", "H100", i => i.Maker("Tarnholm Gear"))
            .Bridge("RB-8", "Q250", i => i.On("H-1"))
            .Renewed("H-1", "RB-1", "RB-8");
        Assert.Equal([Outcome.Fit, Outcome.Fit], Import(renewed).Items.Select(i => i.Outcome));
        Assert.Equal(Standing.Withdrawn, Stands("RB-1"));
    }

    /// <summary>It was released with the part that it was withdrawn for; the new one takes it out again, and it gets papers of its own.</summary>
    [Fact]
    public async Task A_whole_that_came_back_with_another_affected_part_goes_out_again()
    {
        Import(Visit("V-1", Spring).Harness("H-1", "H100", i => i.Maker("Tarnholm Gear")).Bridge("RB-1", "Q150", i => i.On("H-1")));
        await SweepAsync();
        Import(
            Visit("V-2", Later)
                .Harness("H-1", "H100", i => i.Maker("Tarnholm Gear"))
                .Bridge("RB-2", "Q160", i => i.On("H-1"))
                .Renewed("H-1", "RB-1", "RB-2")
        );
        var again = await SweepAsync(Afterwards);
        var whole = again.Items.Single(i => i.Item.Item.Id == "H-1");
        Assert.Equal(SweepAction.Withdraw, whole.Action);
        Assert.Contains("a part that is fitted to it now", whole.Said!.Text, StringComparison.Ordinal);
        Assert.Equal(2, again.PapersOf(whole).Count);
        Assert.Equal(Standing.Withdrawn, Stands("H-1"));
        Assert.Null((await SweepAsync(Afterwards)).Issued);
    }

    /// <summary>What makes good the fault of one notice leaves that of the other, on whatever days they were swept.</summary>
    [Theory]
    [InlineData("2026-11-09", null)]
    [InlineData("2026-11-09", "2026-11-09")]
    [InlineData("2026-11-10", null)]
    [InlineData("2026-11-10", "2026-11-09")]
    public async Task A_release_from_one_notice_leaves_the_withdrawal_by_another(string second, string? releasedByDay)
    {
        Import(Visit("V-1", Spring).Bridge("RB-1", "Q150"));
        var first = await SweepAsync();
        var other = Notice() with { Reference = "FW-2" };
        await SweepAsync(NodaTime.Text.LocalDatePattern.Iso.Parse(second).Value, other);
        var named = releasedByDay is null ? first.Issued!.Documents.First(d => d.Kind is "notice").Number : null;
        var back = Visit("V-2", Later)
            .Bridge("RB-1", "Q150")
            .Repaired("RB-1")
            .Released("RB-1", releasedByDay, "made-good", document: named);
        Assert.Equal(Outcome.Withdraw, Import(back).Items[0].Outcome);
        Assert.Equal(SweepAction.IsWithdrawn, SweepRecall.Plan(_workspace.Register, other, Afterwards)[0].Action);
    }

    /// <summary>Each by its own document, both end.</summary>
    [Fact]
    public async Task Released_from_both_notices_it_comes_back()
    {
        Import(Visit("V-1", Spring).Bridge("RB-1", "Q150"));
        var back = Visit("V-2", Later).Bridge("RB-1", "Q150").Repaired("RB-1");
        foreach (var notice in new[] { Notice(), Notice() with { Reference = "FW-2" } })
            back.Released("RB-1", null, "made-good", document: (await SweepAsync(Sweep, notice)).Issued!.Documents[0].Number);
        Assert.Equal(Outcome.Fit, Import(back).Items[0].Outcome);
    }

    /// <summary>A hired bridge on the employer's own harness, and one that another firm's visit recorded last.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_whole_goes_out_with_a_part_of_another_owner(bool hired)
    {
        var whole = Visit("V-1", Spring).Harness("H-1", "H100", i => i.Maker("Tarnholm Gear"));
        if (!hired)
            whole.Bridge("RB-1", "Q150", i => i.On("H-1"));
        Import(whole);
        Import(
            hired
                ? Visit("V-2", Spring).HiredFrom("Larch Hire Ltd").Bridge("RB-1", "Q150", i => i.On("H-1"))
                : Visit("V-2", "2026-06-11", "Birch Ltd").Bridge("RB-1", "Q150")
        );
        await SweepAsync();
        Assert.All(Found("H100"), i => Assert.True(i.Standing is Standing.Withdrawn or Standing.Held, $"{i.Id} {i.Standing} {i.Why}"));
        Assert.Null((await SweepAsync(Afterwards)).Issued);
    }

    /// <summary>Two visits to one employer name the harness that a hired bridge is on; nobody knows a harness of the hire firm.</summary>
    [Fact]
    public void What_several_records_only_name_is_listed_once_for_each_employer()
    {
        Import(
            Visit("V-1", Spring).HiredFrom("Larch Hire Ltd").Bridge("RB-1", "Q150", i => i.On("H-1")),
            Visit("V-2", Later).HiredFrom("Larch Hire Ltd").Bridge("RB-1", "Q150", i => i.On("H-1"))
        );
        var listed = Assert.Single(SweepRecall.Plan(_workspace.Register, Notice(), Afterwards), i => i.Item.Item.Id == "H-1");
        Assert.Equal(("Larch Hire Ltd", "V-2"), (listed.Item.Owner, listed.Item.LatestVisit.Reference));
        Import(Visit("V-3", Later, "Birch Ltd").HiredFrom("Larch Hire Ltd").Bridge("RB-2", "Q160", i => i.On("H-1")));
        Assert.Equal(2, SweepRecall.Plan(_workspace.Register, Notice(), Afterwards).Count(i => i.Item.Item.Id == "H-1"));
    }

    [Fact]
    public async Task A_whole_is_held_with_a_part_that_may_be_named()
    {
        Import(Visit("V-1", Spring).Harness("H-1", "H100", i => i.Maker("Tarnholm Gear")).Bridge("RB-1", null, i => i.On("H-1")));
        await SweepAsync();
        Assert.Equal((Standing.Held, Standing.Held), (Stands("H-1"), Stands("RB-1")));
    }

    [Fact]
    public async Task Items_of_two_owners_under_one_id_get_papers_of_their_own()
    {
        Import(Visit("V-1", Spring).Bridge("RB-1", "Q150"), Visit("V-2", Spring, "Birch Ltd").Bridge("RB-1", "Q160"));
        var result = await SweepAsync();
        Assert.All(result.Items, i => Assert.Equal(2, result.PapersOf(i).Count));
        Assert.Equal(4, result.Items.SelectMany(result.PapersOf).Distinct().Count());
        Assert.All(Found("RB-1"), i => Assert.Equal(Standing.Withdrawn, i.Standing));
        Assert.Equal(["Alder Vale Ltd", "Birch Ltd"], result.Issued!.Inputs.Select(i => i.Visit!.Record.Visit.Employer!.Name).Order());
    }

    [Fact]
    public async Task Two_things_of_one_owner_under_one_id_are_both_out()
    {
        Import(Visit("V-1", Spring).Bridge("RB-1", "Q150"), Visit("V-2", Later).Bridge("RB-1", "Q160"));
        await SweepAsync(Afterwards);
        Assert.All(Found("RB-1"), i => Assert.Equal(Standing.Withdrawn, i.Standing));
        Assert.Null((await SweepAsync(Afterwards)).Issued);
    }

    [Fact]
    public async Task What_may_be_the_same_under_another_tag_is_held()
    {
        Import(
            Visit("V-1", Spring).Bridge("RB-1", "Q150", i => i.PartNumber("SP-12")),
            Visit("V-2", Later).Bridge("RB-5", "Q150", i => i.PartNumber("SP-99"))
        );
        await SweepAsync(Afterwards, Notice() with { Affected = [new NamedKit { PartNumbers = ["SP-12"] }] });
        Assert.Equal((Standing.Withdrawn, Standing.Held), (Stands("RB-1"), Stands("RB-5")));
    }

    [Theory]
    [InlineData("lost")]
    [InlineData("destroyed")]
    [InlineData("cut")]
    public async Task Lost_destroyed_and_withdrawn_kit_is_withdrawn_for_this_as_well(string how)
    {
        Import(
            how switch
            {
                "lost" => Visit("V-1", Spring).Bridge("RB-1", "Q150", i => i.NotLookedAt("lost")),
                "destroyed" => Visit("V-1", Spring).Bridge("RB-1", "Q150", i => i.Destroyed()),
                _ => Visit("V-1", Spring).Bridge("RB-1", "Q150", i => i.Cut()),
            }
        );
        await SweepAsync();
        var back = Import(
            Visit("V-2", Later).Bridge("RB-1", "Q150").Released("RB-1", Spring, "recorded-in-error", grounds: "the wrong item was typed")
        );
        Assert.Equal(Outcome.Withdraw, back.Items[0].Outcome);
        Assert.Equal(SweepAction.IsWithdrawn, (await SweepAsync(Afterwards)).Items[0].Action);
    }

    [Fact]
    public async Task The_owner_of_hired_kit_is_named_on_the_notice()
    {
        Import(Visit("V-1", Spring).HiredFrom("Larch Hire Ltd").Bridge("RB-1", "Q150"));
        var result = await SweepAsync();
        var notice = result.Issued!.Documents.Single(d => d.Kind == "notice");
        Assert.Contains("Larch Hire Ltd", Pdf.Text(_workspace.FileOf(notice)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_interrupted_sweep_is_finished_by_the_next_run()
    {
        Import(Visit("V-1", Spring).Bridge("RB-1", "Q150").Bridge("RB-2", "Q151"));
        using var stopped = new CancellationTokenSource();
        await stopped.CancelAsync();
        var first = await SweepRecall.RunAsync(Request(Sweep, Notice()), stopped.Token);
        Assert.Equal((RunFailure.ByUser, 0, null), (first.Issued!.Failure, first.Issued.Documents.Count, first.File));
        Assert.Equal(Standing.Withdrawn, Stands("RB-1"));
        var told = new List<RunProgress>();
        var result = await SweepRecall.RunAsync(
            Request(Afterwards, Notice()) with
            {
                Progress = told.Add,
            },
            TestContext.Current.CancellationToken
        );
        Assert.Equal(4, result.Issued!.Documents.Count);
        Assert.Contains(told, t => t is { Stage: RunStage.Printing, Done: 4, Of: 4 });
        Assert.All(told, t => Assert.Equal(0, t.Refused));
        Assert.NotNull(result.File);
        Assert.Null((await SweepAsync(Afterwards)).Issued);
    }

    [Fact]
    public async Task A_corrected_sweep_releases_nothing()
    {
        Import(Visit("V-1", Spring).Bridge("RB-1", "Q150"));
        var reference = (await SweepAsync()).Issued!.Inputs[0].Visit!.Record.Visit.Reference!;
        var corrected = Import(Visit(reference, "2026-11-09").Bridge("RB-1", "Q150"));
        Assert.Equal(Outcome.Withdraw, corrected.Items[0].Outcome);
        Assert.Equal(SweepAction.IsWithdrawn, (await SweepAsync(Afterwards)).Items[0].Action);
    }

    [Fact]
    public async Task Held_and_examined_without_an_answer_it_is_held_again_and_with_one_it_is_not()
    {
        Import(Visit("V-1", Spring).Bridge("RB-1", null).Bridge("RB-2", null));
        await SweepAsync();
        Import(Visit("V-2", Later).Bridge("RB-1", null).Bridge("RB-2", "Q250"));
        var again = await SweepAsync(Afterwards);
        Assert.Equal(["RB-1 Hold", "RB-2 None"], again.Items.Select(i => $"{i.Item.Item.Id} {i.Action}"));
        Assert.Contains("examined since", again.Items[0].Said!.Text, StringComparison.Ordinal);
        Assert.Equal(Standing.Held, Stands("RB-1"));
    }

    [Fact]
    public async Task Once_held_and_then_known_to_be_named_it_is_withdrawn()
    {
        Import(Visit("V-1", Spring).Bridge("RB-1", null));
        await SweepAsync();
        Import(Visit("V-2", Later).Bridge("RB-1", "Q150"));
        Assert.Equal(SweepAction.Withdraw, (await SweepAsync(Afterwards)).Items[0].Action);
        Assert.Equal(Standing.Withdrawn, Stands("RB-1"));
    }

    [Fact]
    public async Task A_label_for_use_that_was_issued_before_has_ended()
    {
        Import(Visit("V-1", Spring).Bridge("RB-1", "Q150"));
        var path = Write(Visit("V-2", "2026-11-08").Bridge("RB-1", "Q150"));
        var issued = await IssueDocuments.RunAsync(
            _workspace.Request(path) with
            {
                Today = new(2026, 11, 8),
            },
            TestContext.Current.CancellationToken
        );
        var label = issued.Documents.Single(d => d.Kind == "due-label").Number;
        await SweepAsync();
        Assert.Contains(Found("RB-1")[0].History.SelectMany(v => v.Documents), d => d.Number == label && !d.IsCurrent);
    }

    [Fact]
    public async Task A_row_without_an_id_gets_one_label()
    {
        Import(Visit("V-1", Spring).Bridge("", "Q150"));
        Assert.Equal("quarantine-label", Assert.Single((await SweepAsync()).Issued!.Documents).Kind);
        var again = await SweepAsync(Afterwards);
        Assert.Null(again.Issued);
        Assert.Equal(SweepAction.IsHeld, Assert.Single(again.Items).Action);
    }

    /// <summary>What a record of the register lacks or gets wrong keeps nothing that is named in use, and holds back no other item.</summary>
    [Theory]
    [InlineData("\"category\":\"rope-bridge\"", "\"category\":\"kite\"")]
    [InlineData("\"category\":\"rope-bridge\",", "")]
    [InlineData("\"regime\":\"gb-loler\"", "\"regime\":\"none-of-ours\"")]
    [InlineData("\"regime\":\"gb-loler\",", "")]
    [InlineData("\"name\":\"Alder Vale Ltd\",", "")]
    [InlineData("\"maker\":\"Fennick Works\",", "", Standing.Held)]
    [InlineData("\"manufactured\":\"2024-02\"", "\"manufactured\":\"2031-02\"")]
    [InlineData("\"examinedOn\":\"2026-05-11\"", "\"examinedOn\":\"11.5.\"")]
    public async Task Records_with_gaps_are_swept_as_well(string typed, string instead, Standing must = Standing.Withdrawn)
    {
        var json = Visit("V-1", Spring).Bridge("RB-1", "Q150").Bridge("RB-2", null).Json;
        Assert.Contains(typed, json, StringComparison.Ordinal);
        Import(json.Replace(typed, instead, StringComparison.Ordinal));
        Import(Visit("V-2", Spring, "Birch Ltd").Bridge("RB-7", "Q160"));
        var result = await SweepAsync();
        Assert.Null(result.Issued!.Failure);
        Assert.Equal((Standing.Withdrawn, must, Standing.Held), (Stands("RB-7"), Stands("RB-1"), Stands("RB-2")));
        Assert.Null((await SweepAsync(Afterwards)).Issued);
    }

    [Fact]
    public void Any_number_of_items_goes_into_records_that_can_be_decided()
    {
        var visit = new Visit
        {
            Employer = new Party { Name = "Alder Vale Ltd" },
            Regime = "gb-loler",
        };
        var items = Enumerable
            .Range(1, RecordSizeLimit.Rows + 1)
            .Select(n => new Item
            {
                Id = $"C-{n}",
                Category = "connector",
                Serial = "Q150",
                Maker = "Fennick Works",
            })
            .Select(i => new RecalledItem(i, null, [], RecallVerdict.Affected, [], null, null) { LatestVisit = visit })
            .Select(i => new PlannedItem(i, SweepAction.Withdraw, null, []))
            .ToList();
        var sweep = new SweepRecord(Notice(), new Person { Id = "ex1", Name = "Ada Fenn" }, Sweep, MessageLanguage.English);
        var visits = sweep.Of(items, _ => false);
        Assert.Equal(items, visits.SelectMany(v => v.Items));
        Assert.All(visits, v => Assert.Null(RecordSizeLimit.Of(v.Record, [])));
        Assert.NotNull(RecordSizeLimit.Of(visits[0].Record with { Items = [.. items.Select(i => i.Item.Item)] }, []));
        Assert.Equal(visits.Count, visits.Select(v => v.Record.Visit.Reference).Distinct().Count());
    }

    [Fact]
    public async Task A_part_that_only_a_renewal_names_is_held()
    {
        Import(Visit("V-1", Spring).Harness("H-1", "H100", i => i.Maker("Tarnholm Gear")).Renewed("H-1", "RB-1", null));
        await SweepAsync();
        Assert.Equal(Standing.Held, Stands("RB-1"));
        Assert.Null((await SweepAsync(Afterwards)).Issued);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Found_fit_on_the_day_of_the_sweep_it_is_out(bool before)
    {
        var fit = Visit("V-2", "2026-11-09").Bridge("RB-1", "Q150");
        Import(before ? fit : Visit("V-1", Spring).Bridge("RB-1", "Q150"));
        await SweepAsync();
        if (!before)
            Assert.Equal(Outcome.Withdraw, Import(fit).Items[0].Outcome);
        Assert.Equal(Standing.Withdrawn, Stands("RB-1"));
        Assert.Equal(Outcome.Withdraw, Import(Visit("V-3", Later).Bridge("RB-1", "Q150")).Items[0].Outcome);
    }

    /// <summary>The workbook of the next visit brings the sweep along as an earlier examination, and its notice is no event in service.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Held_and_examined_in_full_at_the_visit_prepared_from_the_register_it_may_be_used(bool eventEndsService)
    {
        var first = JsonNode.Parse(Visit("V-1", Spring).Harness("H-1", "H100").Bridge("RB-1", null, i => i.On("H-1")).Json)!;
        foreach (var limits in first["limits"]!.AsArray())
            limits!["eventEndsService"] = eventEndsService;
        Import(first.ToJsonString());
        await SweepAsync();
        var next = RegisterRecord.Of(_workspace.Register, null, null, Afterwards, out _)!;
        Assert.Equal(["H-1", "RB-1"], next.Items.Select(i => i.Id).Order());
        var examined = next with
        {
            Visit = next.Visit with { Reference = "V-2", ExaminedOn = new(2026, 11, 16), ReportedOn = new(2026, 11, 16) },
            Items = [.. next.Items.Select(i => i with { Serial = i.Serial ?? "Q250" })],
            Limits = [.. RegisteredModels.In(_workspace.Register, Afterwards).Models.Select(m => m.Limits)],
            Examinations = [.. next.Examinations, .. next.Items.Select(i => AllClear(i))],
        };
        Import(System.Text.Encoding.UTF8.GetString(JsonRecordWriter.Write(examined)));
        var said = string.Join('\n', Found("RB-1").Concat(Found("H-1")).Select(i => $"{i.Id} {i.Standing} {i.Why}"));
        Assert.True(Stands("RB-1") == Standing.NotIssued && Stands("H-1") == Standing.NotIssued, said);
        Assert.All((await SweepAsync(Afterwards)).Items, i => Assert.Equal(SweepAction.None, i.Action));
    }

    private static Examination AllClear(Item item) =>
        new()
        {
            Item = item.Id,
            Examiner = "ex1",
            Basis = Basis.SixMonth,
            Conclusion = Conclusion.Fit,
            Observations =
            [
                .. Core
                    .Criteria.Catalogue.Find(item.Category)!
                    .Criteria.Select(c => new Observation
                    {
                        Criterion = c.Id,
                        StateAsTyped = "clear",
                        State = ObservedState.Clear,
                    }),
            ],
        };

    /// <summary>What the maker of a swept harness permits is known after the sweep as before.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_part_that_is_not_permitted_on_what_was_held_is_withdrawn_as_before(bool swept)
    {
        Import(Visit("V-1", Spring).Harness("H-1", null));
        if (swept)
            Assert.Equal(SweepAction.Hold, (await SweepAsync()).Items.Single().Action);
        var part = Visit("V-2", Later).Bridge("RB-8", "Q250", i => i.PartNumber("SP-99").On("H-1"));
        Assert.Contains(Import(part).Items[0].Reasons, r => r.Code is "W8");
    }

    [Fact]
    public async Task A_notice_with_a_day_to_come_withdraws_all_the_same()
    {
        Import(Visit("V-1", Spring).Bridge("RB-1", "Q150"));
        await SweepAsync(Sweep, Notice() with { On = new(2027, 1, 1) });
        Assert.Equal(Standing.Withdrawn, Stands("RB-1"));
    }

    private static SafetyNotice Notice() =>
        new()
        {
            Maker = "Fennick Works",
            Reference = "FW-1",
            On = new(2026, 11, 1),
            Demands = "Take it out of use and send it to us.",
            ReadAt = "letter",
            Affected = [new NamedKit { SerialRanges = [new("Q100", "Q199")] }],
        };

    private SweepRequest Request(LocalDate day, SafetyNotice notice) =>
        new()
        {
            Notice = notice,
            RegisterPath = _workspace.Register,
            Today = day,
            OutFolder = _workspace.Out,
            Examiner = new Person { Name = "Ada Fenn" },
            Browser = OpenBrowser.Instance,
        };

    private Task<SweepResult> SweepAsync(LocalDate? day = null, SafetyNotice? notice = null) =>
        SweepRecall.RunAsync(Request(day ?? Sweep, notice ?? Notice()), TestContext.Current.CancellationToken);

    private IReadOnlyList<FoundItem> Found(string id) => FindItems.ByMarking(_workspace.Register, id, Afterwards);

    private Standing Stands(string id) => Found(id).Single(i => Folded.Same(i.Id, id)).Standing;

    private IReadOnlyList<string> Files() => [.. Directory.EnumerateFiles(_workspace.Out, "*.*").Order(StringComparer.Ordinal)];

    /// <returns>The last of them as decided.</returns>
    private Core.Determination.DeterminedVisit Import(params StoryVisit[] visits) =>
        Array.ConvertAll(visits, v => ImportVisits.Run([Write(v)], _workspace.Register, Afterwards, KnownRules.BuiltIn).Inputs[0].Visit!)[
            ^1
        ];

    private void Import(string json) => ImportVisits.Run([Write(json)], _workspace.Register, Afterwards, KnownRules.BuiltIn);

    private string Write(StoryVisit visit) => Write(visit.Json);

    private string Write(string json)
    {
        var path = Path.Combine(_workspace.Folder, FormattableString.Invariant($"visit-{++_files}.json"));
        File.WriteAllText(path, json);
        return path;
    }
}
