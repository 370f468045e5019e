using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Tests;

/// <summary>A register of the layout before documents could be kept elsewhere: it is brought up to date, and its documents stay in it.</summary>
public sealed class LayoutThreeTests : Workplace
{
    [Fact]
    public void It_is_brought_up_to_date_and_its_documents_are_where_they_were_and_the_hashes_of_its_log_are_kept()
    {
        IReadOnlyDictionary<long, byte[]> nodes;
        using (var register = Open())
        {
            Issue(register, "a");
            Take(register, "pending");
            register.Visits.Remember([.. Enumerable.Range(0, 70).Select(n => SampleVisit.Of($"V-{n}", "note", $"HB-{n}"))]);
            nodes = register.Rows.Log.Nodes();
        }
        Assert.NotEmpty(nodes);
        Make();
        using (var register = Open())
        {
            register.Recover();
            Assert.Equal("database", register.ContentPlace);
            Assert.Equal(Pdf("a"), register.Content(register.FindIssued("a")!));
            Assert.Empty(register.Check());
            Assert.Equal(nodes, register.Rows.Log.Nodes());
            register.MoveContent($"folder:{Path.Combine(Root, "kept")}");
            Assert.Equal("R-2026-000003", Issue(register, "c").Number);
            Assert.Empty(register.Check());
        }
        using (var connection = Connect())
            Assert.Equal(Layout.Version, connection.Number("SELECT layout FROM register"));
        Assert.ThrowsAny<System.Data.Common.DbException>(() => ByHand("DELETE FROM content_place"));
    }

    /// <summary>As the version before left it.</summary>
    private void Make()
    {
        TakeAwayGuard("the_register_stays_itself");
        ByHand("DROP TABLE visit_key");
        ByHand("DROP INDEX log_by_document");
        ByHand("DROP TABLE content_place");
        ByHand("DROP TABLE log_node");
        foreach (var index in new[] { "pending_document", "item_with_mark", "replacement_of" })
            ByHand($"DROP INDEX {index}");
        ByHand("UPDATE register SET layout = 3");
        SayLayout(3);
    }
}
