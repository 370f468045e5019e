using ExamDocs.Register.Log;
using ExamDocs.Register.Model;

namespace ExamDocs.Register.Tests;

public sealed class IssuingTests : Workplace
{
    [Fact]
    public void Each_letter_and_year_has_a_gapless_sequence_of_its_own()
    {
        using var register = Open();
        Assert.Equal("R-2026-000001", Issue(register, "a").Number);
        Assert.Equal("R-2026-000002", Issue(register, "b").Number);
        Assert.Equal("Q-2026-000001", Issue(register, "c", 'Q').Number);
        Assert.Equal("R-2027-000001", Issue(register, "d", 'R', 2027).Number);
        Assert.Equal("R-2026-000003", Issue(register, "e").Number);
        AssertFolderEqualsRegister(register, Out);
    }

    [Fact]
    public void The_sequence_goes_on_when_the_register_is_opened_again()
    {
        using (var first = Open())
            Issue(first, "a");
        using var second = Open();
        Assert.Equal("R-2026-000002", Issue(second, "b").Number);
    }

    [Fact]
    public void An_issued_document_is_found_by_its_job_and_its_number()
    {
        using (var first = Open())
            Issue(first, "a");
        using var register = Open();
        var found = register.FindIssued("a");
        Assert.NotNull(found);
        Assert.Equal("report", found.Kind);
        Assert.Equal("HB-014 HB-014-B", string.Join(' ', found.Items));
        Assert.Equal(Out, found.Folder);
        Assert.Equal(2, found.Pages);
        Assert.Equal("""{"HB-014":"fit"}""", found.OutcomesJson);
        Assert.Equal(Sha256Hex.Of(Pdf("a")), found.Sha256);
        Assert.Equal(found.Sha256, register.FindByNumber("R-2026-000001")?.Sha256);
        Assert.Null(register.FindIssued("b"));
        Assert.Null(register.FindByNumber("R-2026-000002"));
    }

    [Fact]
    public void A_pending_or_void_document_is_not_found_as_issued()
    {
        using var register = Open();
        var pending = Take(register, "a");
        Assert.Null(register.FindIssued("a"));
        Assert.Null(register.FindByNumber(pending.Number));
        register.Void(pending, "the page could not be printed");
        Assert.Null(register.FindByNumber(pending.Number));
        Assert.Equal("the page could not be printed", Assert.Single(register.Voided()).Reason);
    }

    [Fact]
    public void A_void_number_is_passed_over_and_its_job_may_try_again()
    {
        using var register = Open();
        register.Void(Take(register, "a"), "the page could not be printed");
        Assert.Equal("R-2026-000002", Issue(register, "a").Number);
        AssertNoNumberLostOrReused(register, 2);
        Assert.Empty(register.Check());
    }

    [Fact]
    public void One_job_never_has_two_documents()
    {
        using var register = Open();
        Take(register, "a");
        Assert.Throws<DocumentInProgressException>(() => Take(register, "a"));
        Issue(register, "b");
        Assert.Throws<DocumentInProgressException>(() => Take(register, "b"));
        Assert.Equal("R-2026-000003", Take(register, "c").Number);
    }

    [Fact]
    public void A_number_is_published_once()
    {
        using var register = Open();
        var pending = Take(register, "a");
        register.Publish(pending, Pdf("a"), 1, "{}");
        Assert.Throws<InvalidOperationException>(() => register.Publish(pending, Pdf("other"), 1, "{}"));
        Assert.Throws<InvalidOperationException>(() => register.Void(pending, "a change of mind"));
        AssertFolderEqualsRegister(register, Out);
    }

    [Fact]
    public void A_different_file_in_the_way_is_named_and_left_alone()
    {
        using var register = Open();
        var pending = Take(register, "a");
        var path = Path.Combine(Out, pending.FileName);
        File.WriteAllText(path, "somebody else's");
        var conflict = Assert.Throws<DocumentFileConflictException>(() => register.Publish(pending, Pdf("a"), 1, "{}"));
        Assert.Equal(path, conflict.Path);
        Assert.Equal("somebody else's", File.ReadAllText(path));
        Assert.Contains(path, Assert.Single(register.Voided()).Reason, StringComparison.Ordinal);
        Assert.Equal([path], Directory.GetFiles(Out), StringComparer.Ordinal);
        Assert.Equal("R-2026-000002", Issue(register, "a").Number);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_link_in_the_way_is_not_followed(bool toTheSameBytes)
    {
        using var register = Open();
        var pending = Take(register, "a");
        var elsewhere = Path.Combine(Root, "elsewhere.pdf");
        if (toTheSameBytes)
            File.WriteAllBytes(elsewhere, Pdf("a"));
        File.CreateSymbolicLink(Path.Combine(Out, pending.FileName), elsewhere);
        Assert.Throws<DocumentFileConflictException>(() => register.Publish(pending, Pdf("a"), 1, "{}"));
        Assert.Equal(toTheSameBytes, File.Exists(elsewhere));
    }

    [Fact]
    public void The_same_file_in_place_already_is_fine()
    {
        using var register = Open();
        var pending = Take(register, "a");
        File.WriteAllBytes(Path.Combine(Out, pending.FileName), Pdf("a"));
        register.Publish(pending, Pdf("a"), 1, "{}");
        AssertFolderEqualsRegister(register, Out);
    }

    /// <summary>A label of a sheet: the sheet is the file that was asked for.</summary>
    [Fact]
    public void What_goes_into_no_folder_is_kept_in_the_register_alone()
    {
        using var register = Open();
        var document = register.Publish(TakeWithoutFolder(register, "a"), Pdf("a"), 1, "{}");
        Assert.Equal("", document.Folder);
        Assert.Equal(Pdf("a"), register.Content(document));
        Assert.False(Directory.Exists(Out));
        Assert.Empty(register.Check());
    }

    [Fact]
    public void What_was_to_go_into_no_folder_is_settled_like_the_rest()
    {
        using var register = Open();
        register.Rows.Changes.Prepare((TakeWithoutFolder(register, "printed").Number, Pdf("printed"), 1, "{}"));
        TakeWithoutFolder(register, "not printed");
        Assert.Equal(
            [
                "R-2026-000001 was left unfinished by an interrupted run and is now issued; run its command again to have it.",
                "R-2026-000002 is void: the run was interrupted before it was printed.",
            ],
            register.Recover()
        );
        Assert.Equal(Pdf("printed"), register.Content(register.FindIssued("printed")!));
        Assert.False(Directory.Exists(Out));
        Assert.Empty(register.Check());
    }

    private static PendingDocument TakeWithoutFolder(DocumentRegister register, string job) =>
        register.Take(new DocumentRequest('R', 2026, "report", job, ["HB-014"], Folder: null));

    [Fact]
    public void A_missing_file_is_restored_byte_for_byte_and_a_different_one_left_alone()
    {
        using var register = Open();
        var document = Issue(register, "a");
        var other = Path.Combine(Root, "other");
        Assert.True(register.Restore(document, other));
        Assert.False(register.Restore(document, other));
        var path = Path.Combine(other, document.FileName);
        Assert.Equal(Pdf("a"), File.ReadAllBytes(path));
        File.AppendAllText(path, "x");
        Assert.Throws<DocumentFileConflictException>(() => register.Restore(document, other));
        Assert.Equal([.. Pdf("a"), (byte)'x'], File.ReadAllBytes(path));
    }
}
