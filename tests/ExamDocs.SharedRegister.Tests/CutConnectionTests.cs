using System.Data.Common;
using ExamDocs.Register.Files;
using ExamDocs.Register.Opening;
using ExamDocs.Register.Storage;
using ExamDocs.Register.Tests;
using NodaTime;

namespace ExamDocs.SharedRegister.Tests;

/// <summary>The server ends the session of a run, as it does where it is restarted or a cable is pulled.</summary>
public sealed class CutConnectionTests : Workplace
{
    [Fact]
    public void Cut_once_the_number_was_taken_it_is_an_error_and_the_next_run_voids_it()
    {
        using var cut = Open();
        var pending = Take(cut, "a");
        Cut();
        Assert.ThrowsAny<DbException>(() => cut.Publish(pending, Pdf("a"), 1, "{}"));
        Assert.Equal(
            "The connection to the register was lost.",
            Assert.Throws<IOException>(() => cut.Publish(pending, Pdf("a"), 1, "{}")).Message
        );
        Assert.Throws<IOException>(() => Take(cut, "b"));
        Assert.Empty(Directory.GetFiles(Out));
        using var next = Open();
        Assert.Equal("R-2026-000001 is void: the run was interrupted before it was printed.", Assert.Single(next.Recover()));
        AssertNoNumberLostOrReused(next, 1);
        Assert.Equal("R-2026-000002", Issue(next, "a").Number);
        AssertFolderEqualsRegister(next, Out);
    }

    [Fact]
    public void Cut_once_its_bytes_were_kept_the_next_run_issues_it()
    {
        using var cut = Open();
        var pending = Take(cut, "a");
        cut.Rows.Changes.Prepare((pending.Number, Pdf("a"), 2, "{}"));
        DurableFile.Publish(Out, pending.FileName, Pdf("a"));
        Cut();
        Assert.ThrowsAny<DbException>(() => cut.Rows.Changes.MarkIssued((pending.Number, null)));
        using var next = Open();
        Assert.Contains("now issued", Assert.Single(next.Recover()), StringComparison.Ordinal);
        AssertNoNumberLostOrReused(next, 1);
        AssertFolderEqualsRegister(next, Out);
    }

    [Fact]
    public void Cut_in_the_middle_of_a_change_nothing_of_it_is_left_and_nobody_waits()
    {
        using var other = Open();
        Issue(other, "a");
        using (var cut = PostgresOpening.Open(Database, new LocalDate(2026, 5, 12)))
        {
            using var transaction = cut.BeginWriting();
            cut.Connection.Execute("UPDATE counter SET last = 41");
            Cut();
            Assert.ThrowsAny<DbException>(() => cut.Connection.Execute("UPDATE counter SET last = 42"));
        }
        using var next = Open();
        Assert.Equal("R-2026-000002", Issue(next, "b").Number);
        Assert.Empty(next.Check());
    }

    [Fact]
    public void A_change_that_fails_leaves_the_run_able_to_go_on()
    {
        using var register = Open();
        Assert.ThrowsAny<DbException>(() => register.Take(new('R', 2026, "report", "a", ["HB-014"], Out) { CopyOf = "R-2025-000009" }));
        Assert.Equal("R-2026-000001", Issue(register, "a").Number);
        Assert.Empty(register.Check());
    }

    [Fact]
    public void The_server_lets_go_of_a_machine_that_is_gone_or_asleep()
    {
        using var register = PostgresOpening.Open(Database, new LocalDate(2026, 5, 12));
        string[] settings =
        [
            "tcp_keepalives_idle",
            "tcp_keepalives_interval",
            "tcp_keepalives_count",
            "idle_in_transaction_session_timeout",
        ];
        Assert.Equal(
            ["30", "10", "6", "100s"],
            settings.Select(s => register.Connection.Rows(row => row.GetString(0), $"SHOW {s}").Single())
        );
    }

    /// <summary>Ends every session of a run and waits until it has ended.</summary>
    private void Cut() =>
        ByHand(
            "SELECT pg_terminate_backend(pid, 30000) FROM pg_stat_activity WHERE datname = current_database() AND "
                + "application_name = 'examdocs'"
        );
}
