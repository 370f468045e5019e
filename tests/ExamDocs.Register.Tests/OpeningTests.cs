using ExamDocs.Register.Model;

namespace ExamDocs.Register.Tests;

public sealed class OpeningTests : Workplace
{
    [Fact]
    public void Two_names_of_one_register_are_one_register()
    {
        using var first = Open();
        Take(first, "a");
        var link = Path.Combine(Root, "link.db");
        File.CreateSymbolicLink(link, Database);
        using var second = DocumentRegister.Open(link);
        Assert.Empty(second.Recover());
        Assert.Equal("R-2026-000002", Issue(second, "b").Number);
    }

    [Fact]
    public void A_register_from_the_future_is_refused()
    {
        Open().Dispose();
        ByHand("PRAGMA user_version = 99");
        var before = File.ReadAllBytes(Database);
        var refused = Assert.Throws<RegisterRefusedException>(Open);
        Assert.Contains("later version (layout 99; this one knows 7)", refused.Message, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(Database));
    }

    [Theory]
    [InlineData("CREATE TABLE theirs (x)")]
    [InlineData("PRAGMA application_id = 7")]
    [InlineData("PRAGMA user_version = 1")]
    public void Another_program_s_database_is_refused_and_left_alone(string statement)
    {
        ByHand(statement);
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
}
