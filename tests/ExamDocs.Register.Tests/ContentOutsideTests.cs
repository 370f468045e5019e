using ExamDocs.Register.Contents;
using ExamDocs.Register.Model;

namespace ExamDocs.Register.Tests;

/// <summary>Documents in a folder: a full disk, runs that are killed, a copy of the register, two registers that are joined.</summary>
public sealed class ContentOutsideTests : Workplace
{
    private string Kept => Path.Combine(Root, "kept");

    [Fact]
    public void A_folder_that_is_full_leaves_no_part_of_a_document_and_no_number_is_lost()
    {
        using var disk = new SmallDisk(Kept, 512);
        using (var register = Open())
        {
            register.MoveContent($"folder:{Kept}");
            Issue(register, "a");
            var pending = Take(register, "big");
            var full = Assert.Throws<ContentStoreException>(() => register.Publish(pending, new byte[700_000], 1, "{}"));
            Assert.Contains("where the documents are kept, cannot be written", full.Message, StringComparison.Ordinal);
            Assert.Equal(2, Directory.GetFiles(Kept, "*", SearchOption.AllDirectories).Length);
        }
        using var next = Open();
        Assert.StartsWith("R-2026-000002 is void", Assert.Single(next.Recover()), StringComparison.Ordinal);
        Assert.Equal("R-2026-000003", Issue(next, "b").Number);
        AssertNoNumberLostOrReused(next, 3);
        AssertFolderEqualsRegister(next, Out);
    }

    [Fact]
    public void A_folder_that_is_too_small_for_a_move_leaves_all_in_the_register()
    {
        using var disk = new SmallDisk(Kept, 512);
        using var register = Open();
        foreach (var n in Enumerable.Range(0, 4))
            register.Publish(Take(register, $"{n}"), [.. new byte[200_000], (byte)n], 1, "{}");
        Assert.Throws<ContentStoreException>(() => register.MoveContent($"folder:{Kept}"));
        Assert.Equal("database", register.ContentPlace);
        Assert.Empty(register.Check());
        disk.GrowTo(2048);
        Assert.Equal(0, register.MoveContent($"folder:{Kept}").Faults.Count);
        Assert.Empty(register.Check());
    }

    [Fact]
    public async Task Killed_at_any_moment_the_next_run_sets_things_right()
    {
        using (var register = Open())
            register.MoveContent($"folder:{Kept}");
        var told = new List<string>();
        for (var run = 0; run < 2; run++)
        {
            using var process = KilledRun.Start(Database, Out, run);
            while (told.Count < 3 * (run + 1))
                told.Add(await process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken) ?? "");
            process.Kill();
            var rest = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
            await process.WaitForExitAsync(TestContext.Current.CancellationToken);
            told.AddRange(rest.Split('\n')[..^1]);
        }
        using var next = Open();
        Settle(next);
        var issued = next.Issued().Select(d => d.Number).ToHashSet(StringComparer.Ordinal);
        Assert.All(told, number => Assert.Contains(number, issued));
        AssertNoNumberLostOrReused(next, issued.Count + next.Voided().Count);
        AssertFolderEqualsRegister(next, Out);
        Assert.Empty(next.MoveContent("database").Faults);
        AssertFolderEqualsRegister(next, Out);
    }

    [Fact]
    public void A_copy_of_the_register_says_where_its_documents_are_and_has_none_of_them()
    {
        var copy = Path.Combine(Root, "copy.db");
        using var register = Open();
        register.MoveContent($"folder:{Kept}");
        var document = Issue(register, "a");
        register.BackUp(copy);
        using (var copied = DocumentRegister.Open(copy))
        {
            Assert.Empty(copied.Check());
            Assert.Equal(Pdf("a"), copied.Content(document));
        }
        Directory.Move(Kept, $"{Kept}-away");
        using (var alone = DocumentRegister.OpenToRead(copy))
        {
            Assert.Throws<ContentStoreException>(() => alone.Content(document));
            Assert.Contains("were not all looked at", Assert.Single(alone.Check()), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_register_takes_documents_in_wherever_either_of_them_keeps_its_own()
    {
        using var other = DocumentRegister.Open(Path.Combine(Root, "other.db"));
        Issue(other, "theirs");
        other.MoveContent($"folder:{Path.Combine(Root, "theirs")}");
        using var register = Open();
        Issue(register, "ours", 'Q');
        register.MoveContent($"folder:{Kept}");
        Assert.Empty(register.Merge(other, static _ => null).Refused);
        Assert.Equal(Pdf("theirs"), register.Content(register.FindByNumber("R-2026-000001")!));
        Directory.Delete(Path.Combine(Root, "theirs"), recursive: true);
        Assert.Empty(register.Check());
    }
}
