using Microsoft.Data.Sqlite;

namespace ExamDocs.Register.Tests;

/// <summary>A disk of 256 or 512 KB in memory; left out where this machine lets the tests mount none.</summary>
public sealed class FullDiskTests : Workplace
{
    private static readonly byte[] TooBig = new byte[400_000];

    [Fact]
    public void Documents_that_no_longer_fit_leave_no_part_behind()
    {
        using var disk = new SmallDisk(Out);
        using (var register = Open())
        {
            Issue(register, "a");
            var pending = Take(register, "big");
            Assert.ThrowsAny<IOException>(() => register.Publish(pending, TooBig, 1, "{}"));
            AssertFolderEqualsRegister(register, Out);
        }
        using var next = Open();
        Assert.Contains("R-2026-000002 is void", Assert.Single(next.Recover()), StringComparison.Ordinal);
        Assert.Equal("R-2026-000003", Issue(next, "b").Number);
        AssertNoNumberLostOrReused(next, 3);
        AssertFolderEqualsRegister(next, Out);
    }

    [Fact]
    public void A_register_that_no_longer_fits_keeps_everything_it_acknowledged()
    {
        var small = Directory.CreateDirectory(Path.Combine(Root, "small")).FullName;
        using var disk = new SmallDisk(small, 512);
        var database = Path.Combine(small, "kit.db");
        var acknowledged = new List<string>();
        using (var register = DocumentRegister.Open(database))
        {
            var full = Assert.Throws<SqliteException>(() => IssueForEver(register, acknowledged));
            Assert.Equal(13, full.SqliteErrorCode);
        }
        using var next = DocumentRegister.Open(database);
        Assert.NotEmpty(acknowledged);
        Assert.All(acknowledged, number => Assert.NotNull(next.FindByNumber(number)));
        Assert.Empty(next.Check());
    }

    private void IssueForEver(DocumentRegister register, List<string> acknowledged)
    {
        for (var count = 0; count < 10_000; count++)
        {
            var job = FormattableString.Invariant($"job {count}");
            acknowledged.Add(register.Publish(Take(register, job), new byte[20_000], 1, "{}").Number);
        }
    }
}
