using Microsoft.Data.Sqlite;

namespace ExamDocs.Register.Tests;

/// <summary>A register is told by its bytes, under any name, and nothing else is taken for one.</summary>
public sealed class RegisterFileTests : Workplace
{
    [Fact]
    public void A_register_and_a_copy_of_it_are_told_with_their_identity()
    {
        using (var register = Open())
            register.BackUp(At("copy #1?.txt"));
        using (var register = Open())
            Assert.Equal(register.Identity, RegisterFile.IdentityOf(At("copy #1?.txt")));
        Assert.True(RegisterFile.Is(Database));
        Assert.True(RegisterFile.Is(At("copy #1?.txt")));
    }

    [Fact]
    public void One_that_is_damaged_beyond_its_header_is_still_one()
    {
        Open().Dispose();
        File.WriteAllBytes(At("torn.db"), File.ReadAllBytes(Database)[..3000]);
        Assert.True(RegisterFile.Is(At("torn.db")));
        Assert.Null(RegisterFile.IdentityOf(At("torn.db")));
    }

    [Fact]
    public void Another_database_a_text_and_an_empty_file_are_none()
    {
        using (var other = new SqliteConnection($"Data Source={At("other.db")};Pooling=False"))
        {
            other.Open();
            using var command = other.CreateCommand();
            command.CommandText = "CREATE TABLE register (id TEXT)";
            command.ExecuteNonQuery();
        }
        File.WriteAllText(At("text"), new string('x', 200));
        File.WriteAllText(At("empty"), "");
        Assert.All(["other.db", "text", "empty"], name => Assert.False(RegisterFile.Is(At(name))));
    }

    [Fact]
    public void What_a_killed_run_left_beside_a_register_belongs_to_it()
    {
        Open().Dispose();
        Assert.True(RegisterFile.IsBeside($"{Database}-journal"));
        Assert.False(RegisterFile.IsBeside(At("text-journal")));
        Assert.False(RegisterFile.IsBeside(Database));
    }

    private string At(string name) => Path.Combine(Root, name);
}
