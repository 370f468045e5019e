using ExamDocs.Register.Files;
using ExamDocs.Register.Model;

namespace ExamDocs.Register.Tests;

/// <summary>A run is stopped after each step in turn; the next run brings the number to an end.</summary>
public sealed class RecoveryTests : Workplace
{
    private const string Outcomes = """{"HB-014":"fit"}""";

    [Fact]
    public void Stopped_once_the_number_was_taken_it_is_void()
    {
        using (var register = Open())
            Take(register, "a");
        using var next = Open();
        Assert.Equal("R-2026-000001 is void: the run was interrupted before it was printed.", Assert.Single(next.Recover()));
        AssertSettled(next, issued: 0);
    }

    [Fact]
    public void Stopped_before_the_file_was_written_it_is_issued_from_the_bytes_kept()
    {
        using (var register = Open())
            Prepared(register);
        using var next = Open();
        Assert.Contains("now issued", Assert.Single(next.Recover()), StringComparison.Ordinal);
        AssertSettled(next, issued: 1);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Stopped_with_a_temporary_file_whole_or_broken_it_is_issued_and_the_file_gone(bool broken)
    {
        using (var register = Open())
        {
            var pending = Prepared(register);
            DurableFile.WriteTemporary(Out, pending.FileName, broken ? Pdf("a")[..5] : Pdf("a"));
        }
        using var next = Open();
        next.Recover();
        AssertSettled(next, issued: 1);
    }

    [Fact]
    public void Stopped_between_the_rename_and_the_mark_it_is_issued()
    {
        using (var register = Open())
        {
            var pending = Prepared(register);
            DurableFile.WriteTemporary(Out, pending.FileName, Pdf("a"));
            DurableFile.MoveIntoPlace(Out, pending.FileName);
        }
        using var next = Open();
        next.Recover();
        AssertSettled(next, issued: 1);
    }

    [Fact]
    public void Stopped_half_way_through_the_rename_it_is_issued_and_the_second_name_gone()
    {
        using (var register = Open())
        {
            var pending = Prepared(register);
            File.WriteAllBytes(Path.Combine(Out, pending.FileName), Pdf("a"));
            DurableFile.WriteTemporary(Out, pending.FileName, Pdf("a"));
        }
        using var next = Open();
        next.Recover();
        AssertSettled(next, issued: 1);
    }

    [Fact]
    public void A_different_file_in_its_place_is_left_alone_and_the_number_void()
    {
        using (var register = Open())
            File.WriteAllText(Path.Combine(Out, Prepared(register).FileName), "cut sho");
        using var next = Open();
        Assert.Contains("R-2026-000001 is void", Assert.Single(next.Recover()), StringComparison.Ordinal);
        Assert.Equal("cut sho", File.ReadAllText(Path.Combine(Out, "R-2026-000001.pdf")));
        AssertNoNumberLostOrReused(next, 1);
    }

    [Fact]
    public void A_folder_that_is_gone_does_not_hold_up_the_next_run()
    {
        using (var register = Open())
            Prepared(register);
        Directory.Delete(Out, recursive: true);
        using var next = Open();
        Assert.Contains("cannot be written", Assert.Single(next.Recover()), StringComparison.Ordinal);
        Assert.Equal("R-2026-000002", Issue(next, "a").Number);
        AssertNoNumberLostOrReused(next, 2);
        AssertFolderEqualsRegister(next, Out);
    }

    [Fact]
    public void Recovering_twice_changes_nothing_more()
    {
        using (var register = Open())
        {
            Prepared(register);
            Take(register, "b");
        }
        using var next = Open();
        Assert.Equal(2, next.Recover().Count);
        Assert.Empty(next.Recover());
        AssertNoNumberLostOrReused(next, 2);
    }

    private PendingDocument Prepared(DocumentRegister register)
    {
        var pending = Take(register, "a");
        register.Rows.Changes.Prepare((pending.Number, Pdf("a"), 2, Outcomes));
        return pending;
    }

    private void AssertSettled(DocumentRegister register, int issued)
    {
        Assert.Equal(issued, register.Issued().Count);
        Assert.Equal(issued == 1, register.FindIssued("a") is not null);
        AssertNoNumberLostOrReused(register, 1);
        AssertFolderEqualsRegister(register, Out);
        Assert.Equal("R-2026-000002", Issue(register, "next").Number);
    }
}
