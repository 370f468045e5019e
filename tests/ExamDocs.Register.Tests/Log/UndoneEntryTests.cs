using Microsoft.Data.Sqlite;

namespace ExamDocs.Register.Tests.Log;

/// <summary>A transaction that fails takes its log entry back with it; the same run goes on, and the log must as well.</summary>
public sealed class UndoneEntryTests : Workplace
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void An_entry_undone_leaves_no_trace_in_those_that_follow(bool anotherRunCameBetween)
    {
        using (var register = Open())
        {
            Issue(register, "a");
            var pending = Take(register, "b");
            Statement("CREATE TRIGGER refused BEFORE UPDATE ON register BEGIN SELECT RAISE(ABORT, 'refused'); END");
            Assert.Throws<SqliteException>(() => register.Publish(pending, Pdf("b"), 1, "{}"));
            Statement("DROP TRIGGER refused");
            if (anotherRunCameBetween)
            {
                using var other = Open();
                Issue(other, "c");
            }
            Assert.Contains("now issued", Assert.Single(register.Recover()), StringComparison.Ordinal);
            Issue(register, "d");
        }
        using var next = Open();
        Assert.Empty(next.Check());
        Assert.Equal(anotherRunCameBetween ? 5 : 4, next.Checkpoint()!.Size);
    }

    private void Statement(string text)
    {
        using var connection = new SqliteConnection($"Data Source={Database};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = text;
        command.ExecuteNonQuery();
    }
}
