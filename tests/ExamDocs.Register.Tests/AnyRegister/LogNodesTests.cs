using ExamDocs.Core.Records;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Tests;

/// <summary>
/// The next root of a log, and whether an entry is under its root, come from the nodes that are kept and the entries around, however
/// long the log is. What is kept wrongly is found and gives no wrong root.
/// </summary>
public sealed class LogNodesTests : Workplace
{
    private const int Many = 130;

    private static readonly VisitToRemember[] Known =
    [
        .. Enumerable.Range(0, Many).Select(n => Apart(SampleVisit.Of($"V-{n}", $"note {n}", $"HB-{n}"), n)),
    ];

    [Fact]
    public void The_next_root_is_that_of_all_entries_though_an_early_one_is_not_read()
    {
        Populated().Dispose();
        Assert.True(Changed($"UPDATE log SET entry = {Empty} WHERE position = 3", out var undo));
        using (undo)
        using (var register = Open())
        {
            // Whoever reads the third entry has another root than the one that is kept.
            register.Visits.Remember(SampleVisit.Of("V-next"));
            Assert.NotEmpty(register.Check());
        }
    }

    [Fact]
    public void Over_many_lengths_each_root_is_that_of_the_entries()
    {
        using (var register = Populated())
            register.Visits.Remember(SampleVisit.Of("V-one-more"));
        for (var n = 0; n < 3; n++)
        {
            using var another = Open();
            another.Visits.Remember([.. Enumerable.Range(0, 31 + n).Select(m => SampleVisit.Of($"W-{n}-{m}", "more"))]);
        }
        using var last = Open();
        Assert.Empty(last.Check());
        Assert.Equal(Roots(last), last.Rows.Log.StreamCheckpoints().Select(c => Convert.ToBase64String(c.Root.Span)));
        Assert.Equal(3 + 1, last.Rows.Log.Nodes().Count);
    }

    [Theory]
    [InlineData("UPDATE log_node SET hash = 'x'")]
    [InlineData("UPDATE log_node SET hash = (SELECT root FROM checkpoint WHERE size = 5) WHERE node = 1")]
    [InlineData("DELETE FROM log_node WHERE node = 1")]
    [InlineData("DELETE FROM log_node")]
    [InlineData("UPDATE log_node SET node = node + 1000 WHERE node = 1")]
    public void A_node_that_was_altered_or_is_gone_is_found_and_no_wrong_root_is_made_of_it(string statement)
    {
        Populated().Dispose();
        Assert.True(Changed(statement, out var undo));
        using (undo)
        using (var register = Open())
        {
            Assert.Contains("hashes kept of the log", Assert.Single(register.Check()), StringComparison.Ordinal);
            register.Visits.Remember(SampleVisit.Of("V-next"));
            Assert.Equal(Roots(register)[^1], Convert.ToBase64String(register.Rows.Log.Latest()!.Root.Span));
        }
    }

    [Theory]
    [InlineData(5)]
    [InlineData(100)]
    [InlineData(Many)]
    public void A_visit_whose_entry_was_altered_with_its_rows_is_not_given(int visit)
    {
        using var register = Populated();
        Assert.Equal([visit], Touching(register, visit));
        var entry = register.Rows.Log.Between(visit, visit + 1).Select(e => LogEntry.Parse(e)).Single();
        Assert.Equal(visit, entry.Visit!.Number);
        var fit = entry.Visit with { Outcomes = [.. entry.Visit.Outcomes!.Select(o => o with { Outcome = "fit" })] };
        var altered = Convert.ToHexString(LogEntry.Remembered(visit, fit, entry.Day).Bytes());
        var bytes = Empty.StartsWith('x') ? $"x'{altered}'" : $"'\\x{altered}'::bytea";
        TakeAwayGuard("log_is_never_changed");
        TakeAwayGuard("outcome_is_never_changed");
        ByHand($"UPDATE log SET entry = {bytes} WHERE position = {visit}");
        ByHand($"UPDATE outcome SET outcome = 'fit' WHERE visit = {visit}");
        Assert.Contains(
            "its log is no longer",
            Assert.Throws<RegisterAlteredException>(() => Touching(register, visit)).Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Nothing_is_decided_from_a_register_whose_nodes_were_taken_away()
    {
        Populated().Dispose();
        ByHand("DROP TABLE log_node");
        using var register = DocumentRegister.OpenToRead(Database);
        Assert.ThrowsAny<System.Data.Common.DbException>(() => Touching(register, 7));
    }

    [Fact]
    public void They_are_kept_of_a_log_that_was_made_before_there_was_a_place_for_them()
    {
        using var register = Populated();
        var before = register.Rows.Log.Nodes();
        Assert.Equal(2 + 1, before.Count);
        TakeAwayGuard("log_node_is_kept");
        ByHand("DELETE FROM log_node");
        register.Rows.Log.MakeNodes();
        Assert.Equal(before, register.Rows.Log.Nodes());
        Assert.Empty(register.Check());
    }

    private static VisitToRemember Apart(VisitToRemember visit, int n) =>
        visit with
        {
            Record = visit.Record with { Items = [.. visit.Record.Items.Select(i => i with { Serial = $"S{n}{i.Id}" })] },
        };

    private static List<string> Roots(DocumentRegister register)
    {
        var leaves = register.Rows.Log.Entries().Select(e => MerkleTree.LeafHash(e.Span)).ToList();
        return [.. Enumerable.Range(1, leaves.Count).Select(n => Convert.ToBase64String(MerkleTree.Root([.. leaves.Take(n)])))];
    }

    private static int[] Touching(DocumentRegister register, int visit) =>
        [
            .. register
                .Visits.AsLogged((_, bytes) => Array.Find(Known, v => v.Json.AsSpan().SequenceEqual(bytes))?.Record)
                .Touching(new() { Items = [new() { Id = $"HB-{visit - 1}" }] })
                .Select(v => v.Visit.Visit),
        ];

    /// <summary>Each visit stands alone: no two share a marking.</summary>
    private DocumentRegister Populated()
    {
        var register = DocumentRegister.Open(Database, new(2026, 5, 12));
        register.Visits.Remember(Known);
        return register;
    }
}
