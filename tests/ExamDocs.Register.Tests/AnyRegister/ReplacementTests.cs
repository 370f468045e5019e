using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using NodaTime;

namespace ExamDocs.Register.Tests;

public sealed class ReplacementTests : Workplace
{
    private static readonly LocalDate Day = new(2026, 5, 12);

    [Fact]
    public void What_is_replaced_holds_until_the_other_is_out_and_both_name_each_other()
    {
        using var register = DocumentRegister.Open(Database, Day);
        Issue(register, "a");
        var pending = Correcting(register, "b", "a serial number was wrong");
        Assert.True(register.Find("R-2026-000001")!.IsCurrent);
        Assert.NotNull(register.FindIssued("a"));
        register.Publish(pending, Pdf("b"), 1, "{}");

        var old = register.Find("R-2026-000001")!;
        Assert.False(old.IsCurrent);
        Assert.Equal((DocumentEnd.Replaced, Day, "a serial number was wrong"), (old.Ended!.Value, old.EndedOn!.Value, old.EndedReason));
        Assert.Equal("R-2026-000002", Assert.Single(old.ReplacedBy));
        Assert.Equal(
            new Replacement("R-2026-000001", "a serial number was wrong"),
            Assert.Single(register.Find("R-2026-000002")!.Replaces)
        );
        Assert.Null(register.FindIssued("a"));
        Assert.Equal(Pdf("a"), register.Content(register.FindByNumber("R-2026-000001")!));
        Assert.Equal(["issued R-2026-000001 -", "issued R-2026-000002 -", "replaced R-2026-000001 R-2026-000002"], Logged());
        AssertFolderEqualsRegister(register, Out);
    }

    [Fact]
    public void It_is_out_and_the_old_one_ended_both_or_neither()
    {
        using var register = Open();
        Issue(register, "a");
        // A reason that the log takes no more than Take does: the second half of the change fails.
        register.Rows.Changes.Add([new('R', 2026, "report", "b", ["HB-014"], Out) { Replaces = [new("R-2026-000001", " ")] }], "");
        register.Rows.Changes.Prepare(("R-2026-000002", Pdf("b"), 1, "{}"));
        Assert.Throws<ArgumentException>(() => register.Rows.Changes.MarkIssued(("R-2026-000002", null)));
        Assert.Equal(DocumentState.Pending, register.Find("R-2026-000002")!.State);
        Assert.True(register.Find("R-2026-000001")!.IsCurrent);
        Assert.Equal(["issued R-2026-000001 -"], Logged());
        // What was undone is not in the roots of what comes after.
        Issue(register, "c");
        register.Rows.Changes.Void("R-2026-000002", "a reason was missing");
        Assert.Empty(register.Check());
    }

    [Fact]
    public void A_replacement_without_a_reason_takes_no_number()
    {
        using var register = Open();
        Issue(register, "a");
        Assert.Throws<ArgumentException>(() => Correcting(register, "b", " "));
        Assert.Null(register.Find("R-2026-000002"));
    }

    [Fact]
    public void A_replacement_that_never_came_out_replaces_nothing()
    {
        using var register = Open();
        Issue(register, "a");
        register.Void(Correcting(register, "b", "a correction"), "the page could not be printed");
        Assert.True(register.Find("R-2026-000001")!.IsCurrent);
        Assert.Empty(register.Find("R-2026-000001")!.ReplacedBy);
        Assert.Empty(register.Find("R-2026-000002")!.Replaces);
        Assert.Empty(register.Check());
    }

    [Fact]
    public void What_is_withdrawn_is_kept_and_no_longer_current()
    {
        using var register = DocumentRegister.Open(Database, Day);
        Issue(register, "a");
        Assert.True(register.Withdraw("R-2026-000001", "sent to the wrong yard"));
        Assert.False(register.Withdraw("R-2026-000001", "once more"));
        Assert.False(register.Withdraw("R-2026-000009", "never taken"));
        var document = register.Find("R-2026-000001")!;
        Assert.Equal(
            (DocumentEnd.Withdrawn, Day, "sent to the wrong yard"),
            (document.Ended!.Value, document.EndedOn!.Value, document.EndedReason)
        );
        Assert.Equal(Pdf("a"), register.Content(register.FindByNumber("R-2026-000001")!));
        Assert.Equal("R-2026-000002", Issue(register, "a").Number);
        Assert.Equal(["issued R-2026-000001 -", "withdrawn R-2026-000001 -", "issued R-2026-000002 -"], Logged());
        AssertFolderEqualsRegister(register, Out);
    }

    [Fact]
    public void What_was_undone_is_not_in_the_next_root_of_the_log()
    {
        Open().Dispose();
        using var connection = Connect();
        var log = new LogRows(connection);
        using (connection.BeginTransaction())
            log.Append(at => Entry(at, "a"));
        using (var transaction = connection.BeginTransaction())
        {
            log.Append(at => Entry(at, "b"));
            transaction.Commit();
        }
        Assert.Equal(Entry(1, "b").Bytes(), Assert.Single(log.Entries().Skip(1)).ToArray());
        Assert.Empty(LogCheck.Run(log.Entries(), [.. log.StreamCheckpoints()]));
    }

    private PendingDocument Correcting(DocumentRegister register, string job, string reason) =>
        register.Take(new('R', 2026, "report", job, ["HB-014"], Out) { Replaces = [new("R-2026-000001", reason)] });

    private static LogEntry Entry(long at, string item) => LogEntry.Void(at, new("R-2026-000001", "report", [item]), "a reason", Day);

    private List<string> Logged()
    {
        using var connection = Connect();
        return
        [
            .. new LogRows(connection)
                .Entries()
                .Select(LogEntry.Parse)
                .Where(e => e.Document is not null)
                .Select(e => $"{e.What} {e.Document!.Number} {e.By ?? "-"}"),
        ];
    }
}
