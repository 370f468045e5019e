using ExamDocs.Register.Opening;
using ExamDocs.Register.Storage;
using ExamDocs.Register.Tests;

namespace ExamDocs.SharedRegister.Tests;

/// <summary>A run on another machine wrote into folders of that machine, which nobody here can see.</summary>
public sealed class OtherMachineTests : Workplace
{
    [Fact]
    public void What_may_be_out_over_there_is_issued_and_its_file_had_from_the_register()
    {
        Left(isPrepared: true);
        using var register = Open();
        Assert.Contains("on another machine and is now issued", Assert.Single(register.Recover()), StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(Root, "there")));
        Assert.True(register.Restore(register.FindIssued("a")!, Out));
        AssertFolderEqualsRegister(register, Out);
    }

    [Fact]
    public void What_was_not_printed_is_void()
    {
        Left(isPrepared: false);
        using var register = Open();
        Assert.Contains("R-2026-000001 is void", Assert.Single(register.Recover()), StringComparison.Ordinal);
        Assert.Empty(register.Check());
    }

    [Fact]
    public void Whoever_settles_it_and_is_stopped_too_leaves_it_known_as_the_other_machine_s()
    {
        Left(isPrepared: true);
        using (var stopped = Open())
        {
            var (document, _, run) = Assert.Single(stopped.Rows.Documents.Pending());
            using var database = PostgresOpening.Open(Database, new(2026, 5, 12));
            using var hold = database.Hold();
            Assert.True(stopped.Rows.Changes.Claim(document.Number, run, database.Settling(hold.Run, run)));
            Assert.Empty(stopped.Recover());
        }
        using var register = Open();
        Assert.Contains("on another machine and is now issued", Assert.Single(register.Recover()), StringComparison.Ordinal);
    }

    private void Left(bool isPrepared)
    {
        using var register = Open();
        var number = register.Rows.Changes.Add([new('R', 2026, "report", "a", ["HB-014"], Path.Combine(Root, "there"))], "4711@elsewhere")[
            0
        ];
        if (isPrepared)
            register.Rows.Changes.Prepare((number, Pdf("a"), 1, "{}"));
    }
}
