using ExamDocs.Register.Storage;
using Microsoft.Data.Sqlite;

namespace ExamDocs.Register.Tests;

public sealed class OpeningTests : Workplace
{
    [Fact]
    public void Two_runs_work_side_by_side_and_neither_takes_what_the_other_has_begun()
    {
        using var first = Open();
        var begun = Take(first, "a");
        var link = Path.Combine(Root, "link.db");
        File.CreateSymbolicLink(link, Database);
        using var second = DocumentRegister.Open(link);
        Assert.Empty(second.Recover());
        Assert.Contains("Another run is issuing the same report", Assert.Throws<DocumentInProgressException>(() => Take(second, "a")).Message, StringComparison.Ordinal);
        Assert.Equal("R-2026-000002", Issue(second, "b").Number);
        first.Publish(begun, Pdf("a"), 1, "{}");
        Assert.NotNull(second.FindIssued("a"));
        AssertFolderEqualsRegister(second, Out);
    }

    [Fact]
    public void A_register_from_the_future_is_refused()
    {
        Open().Dispose();
        Statement("PRAGMA user_version = 99");
        var before = File.ReadAllBytes(Database);
        var refused = Assert.Throws<RegisterRefusedException>(Open);
        Assert.Contains("later version (layout 99; this one knows 2)", refused.Message, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(Database));
    }

    [Theory]
    [InlineData("CREATE TABLE theirs (x)")]
    [InlineData("PRAGMA application_id = 7")]
    [InlineData("PRAGMA user_version = 1")]
    public void Another_program_s_database_is_refused_and_left_alone(string statement)
    {
        Statement(statement);
        var before = File.ReadAllBytes(Database);
        Assert.Contains("not a register", Assert.Throws<RegisterRefusedException>(Open).Message, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(Database));
    }

    [Fact]
    public void A_file_that_is_no_database_is_refused_and_left_alone()
    {
        var text = string.Concat(Enumerable.Repeat("This is a shopping list, not a database. ", 100));
        File.WriteAllText(Database, text);
        Assert.Contains("not a register", Assert.Throws<RegisterRefusedException>(Open).Message, StringComparison.Ordinal);
        Assert.Equal(text, File.ReadAllText(Database));
        // The lock is free again.
        File.Delete(Database);
        Open().Dispose();
    }

    [Fact]
    public void A_folder_that_is_not_there_is_an_error_of_the_disk() =>
        Assert.ThrowsAny<IOException>(() => DocumentRegister.Open(Path.Combine(Root, "nowhere", "kit.db")));

    [Theory]
    [InlineData("DELETE FROM document", "stays listed")]
    [InlineData("UPDATE document SET sha256 = 'x'", "never changed")]
    [InlineData("UPDATE content SET bytes = x'00'", "never changed")]
    [InlineData("DELETE FROM content", "are kept")]
    public void What_is_issued_cannot_be_changed_even_by_hand(string statement, string message)
    {
        using (var register = Open())
            Issue(register, "a");
        var refused = Assert.Throws<SqliteException>(() => Statement(statement));
        Assert.Contains(message, refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_check_names_a_gap_and_altered_bytes()
    {
        using (var register = Open())
        {
            Issue(register, "a");
            Assert.Empty(register.Check());
        }
        Statement("UPDATE counter SET last = 5; DROP TRIGGER issued_bytes_stay; UPDATE content SET bytes = x'00'");
        using var altered = Open();
        Assert.Collection(
            altered.Check(),
            gap => Assert.Equal("Sequence R-2026 has a gap: the last number is 5, 1 are listed.", gap),
            bytes => Assert.Equal("The register no longer holds R-2026-000001 as it was issued.", bytes));
    }

    private void Statement(string text)
    {
        using var connection = new SqliteConnection($"Data Source={Database};Pooling=False");
        connection.Open();
        connection.Execute(text);
    }
}
