using System.Data.Common;

namespace ExamDocs.Register.Tests;

/// <summary>
/// What a register holds against somebody with a tool of the database's own, and what its check finds of what got past that.
/// </summary>
public sealed class GuardTests : Workplace
{
    [Theory]
    [InlineData("DELETE FROM document", "stays listed")]
    [InlineData("UPDATE document SET sha256 = 'x'", "never changed")]
    [InlineData("UPDATE document SET ended = 'withdrawn', ended_on = '2026-05-11', ended_reason = 'x', outcomes = '{}'", "never changed")]
    [InlineData("UPDATE document SET state = 'pending'", "never changed")]
    [InlineData("UPDATE content SET bytes = (SELECT record FROM visit)", "never changed")]
    [InlineData("DELETE FROM content", "are kept")]
    [InlineData("UPDATE log SET position = 7", "never changed")]
    [InlineData("DELETE FROM log", "is kept")]
    [InlineData("UPDATE visit SET reference = 'another'", "never changed")]
    [InlineData("DELETE FROM visit", "is kept")]
    [InlineData("DELETE FROM register", "keeps its own row")]
    public void What_is_recorded_cannot_be_changed_even_by_hand(string statement, string message)
    {
        using var register = Open();
        Issue(register, "a");
        register.Visits.Remember(SampleVisit.Of("V-2026-031"));
        var refused = Assert.ThrowsAny<DbException>(() => ByHand(statement));
        Assert.Contains(message, refused.Message, StringComparison.Ordinal);
        Assert.Empty(register.Check());
    }

    [Fact]
    public void The_check_names_a_gap_and_altered_bytes()
    {
        using var register = Open();
        Issue(register, "a");
        Assert.Empty(register.Check());
        ByHand("UPDATE counter SET last = 5");
        TakeAwayGuard("issued_bytes_stay");
        ByHand("UPDATE content SET bytes = $1", new byte[] { 0 });
        Assert.Collection(
            register.Check(),
            gap => Assert.Equal("Sequence R-2026 has a gap: the last number is 5, 1 are listed.", gap),
            bytes => Assert.Equal("The register no longer holds R-2026-000001 as it was issued.", bytes)
        );
    }

    [Fact]
    public void The_check_names_an_altered_record_of_a_visit()
    {
        using var register = Open();
        var (visit, _) = register.Visits.Remember(SampleVisit.Of("V-2026-031"));
        Assert.Equal(SampleVisit.Of("V-2026-031").Json, register.Visits.Record(visit));
        TakeAwayGuard("visits_stay");
        ByHand("UPDATE visit SET record = $1", "{}"u8.ToArray());
        Assert.Equal("The record of visit 1 is not the one that was stored.", Assert.Single(register.Check()));
        Assert.Throws<InvalidDataException>(() => register.Visits.Record(visit));
    }

    [Fact]
    public void The_check_names_an_altered_entry_of_the_log()
    {
        using var register = Three();
        TakeAwayGuard("log_is_never_changed");
        using (var connection = Connect())
        {
            var entry = System.Text.Encoding.UTF8.GetString(
                Storage.Sql.Rows(connection, row => row.GetFieldValue<byte[]>(0), "SELECT entry FROM log WHERE position = 2").Single()
            );
            ByHand(
                "UPDATE log SET entry = $1 WHERE position = 2",
                System.Text.Encoding.UTF8.GetBytes(entry.Replace("HB-014-B", "HB-015-B", StringComparison.Ordinal))
            );
        }
        Assert.Contains(register.Check(), fault => fault.Contains("log entry 2 was altered", StringComparison.Ordinal));
        Assert.Contains("R-2026-000002: the log has other items.", register.Check(), StringComparer.Ordinal);
    }

    [Fact]
    public void The_check_names_a_log_that_was_cut_or_written_anew()
    {
        using var register = Three();
        var kept = register.Checkpoint()!;
        Assert.Equal(4, kept.Size);
        TakeAwayGuard("log_is_kept");
        ByHand("DELETE FROM log WHERE position = 3");
        Assert.Contains("The log should have 4 entries and has 3.", register.Check(), StringComparer.Ordinal);
        TakeAwayGuard("checkpoint_is_kept");
        ByHand("DELETE FROM checkpoint WHERE size = 4");
        TakeAwayGuard("the_register_stays_itself");
        ByHand("UPDATE register SET log_size = 3");
        Assert.Contains(register.Check(kept), fault => fault.StartsWith("The log was cut", StringComparison.Ordinal));
        Assert.Contains("R-2026-000003: the log does not say exactly once how it came out.", register.Check(), StringComparer.Ordinal);
    }

    [Fact]
    public void The_check_names_items_that_were_altered_beside_the_log()
    {
        using var register = Three();
        TakeAwayGuard("document_item_is_never_changed");
        ByHand("UPDATE document_item SET item = 'HB-099' WHERE number = 'R-2026-000002' AND position = 0");
        Assert.Equal("R-2026-000002: the log has other items.", Assert.Single(register.Check()));
    }

    private DocumentRegister Three()
    {
        var register = Open();
        foreach (var job in new[] { "a", "b", "c" })
            Issue(register, job);
        Assert.Empty(register.Check());
        return register;
    }
}
