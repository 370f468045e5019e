using ExamDocs.Register.Model;

namespace ExamDocs.Register.Tests;

/// <summary>Several documents taken and published at once come out as they would one by one.</summary>
public sealed class SeveralAtOnceTests : Workplace
{
    [Fact]
    public void Numbers_follow_in_the_order_asked_for_each_letter_and_year_by_itself()
    {
        using var register = Open();
        var taken = register.TakeAll([Request("a"), Request("b", 'D'), Request("c"), Request("d", year: 2027), Request("e", 'D')]);
        Assert.Equal(["R-2026-000001", "D-2026-000001", "R-2026-000002", "R-2027-000001", "D-2026-000002"], taken.Select(t => t.Number));
        Assert.Equal(["a", "b", "c", "d", "e"], taken.Select(t => t.JobKey));
    }

    [Fact]
    public void They_are_issued_and_logged_as_one_by_one()
    {
        using var register = Open();
        var published = register.PublishAll([.. register.TakeAll([Request("a"), Request("b"), Request("c")]).Select(Finished)]);
        Assert.All(published, p => Assert.Null(p.Failure));
        Assert.Equal(["a", "b", "c"], published.Select(p => p.Document!.JobKey));
        Assert.All(published, p => Assert.Equal(Pdf(p.Document!.JobKey), register.Content(p.Document)));
        AssertNoNumberLostOrReused(register, 3);
        AssertFolderEqualsRegister(register, Out);
    }

    /// <summary>Whoever has the other document goes on; nobody is left with a number that nothing comes of.</summary>
    [Fact]
    public void Where_one_job_has_a_document_no_number_is_taken()
    {
        using var register = Open();
        Issue(register, "b");
        Assert.Throws<DocumentInProgressException>(() => register.TakeAll([Request("a"), Request("b"), Request("c")]));
        Assert.Empty(register.Rows.Documents.Pending());
        Assert.Throws<DocumentInProgressException>(() => register.TakeAll([Request("d"), Request("d")]));
        Assert.Equal("R-2026-000002", Issue(register, "a").Number);
    }

    [Fact]
    public void A_file_in_the_way_of_one_leaves_the_others_alone()
    {
        using var register = Open();
        var taken = register.TakeAll([Request("a"), Request("b"), Request("c")]);
        var path = Path.Combine(Out, taken[1].FileName);
        File.WriteAllText(path, "somebody else's");
        var published = register.PublishAll([.. taken.Select(Finished)]);
        Assert.Equal(path, Assert.IsType<DocumentFileConflictException>(published[1].Failure).Path);
        Assert.Null(published[1].Document);
        Assert.Equal(["a", "c"], register.Issued().Select(d => d.JobKey));
        Assert.Equal("R-2026-000002", Assert.Single(register.Voided()).Number);
        Assert.Equal("somebody else's", File.ReadAllText(path));
        File.Delete(path);
        AssertFolderEqualsRegister(register, Out);
    }

    /// <summary>What cannot be written stays pending until the next run; what could be is out.</summary>
    [Fact]
    public void A_file_that_cannot_be_written_leaves_the_others_alone()
    {
        using var register = Open();
        var taken = register.TakeAll([Request("a"), Request("b")]);
        Directory.CreateDirectory(Files.DurableFile.TemporaryPath(Out, taken[0].FileName));
        var published = register.PublishAll([.. taken.Select(Finished)]);
        Assert.NotNull(published[0].Failure);
        Assert.Equal("b", Assert.Single(register.Issued()).JobKey);
        Assert.Equal(DocumentState.Pending, register.Find(taken[0].Number)!.State);
        Directory.Delete(Files.DurableFile.TemporaryPath(Out, taken[0].FileName));
        Assert.Contains("is now issued", Assert.Single(register.Recover()), StringComparison.Ordinal);
        AssertNoNumberLostOrReused(register, 2);
        AssertFolderEqualsRegister(register, Out);
    }

    private static FinishedDocument Finished(PendingDocument pending) => new(pending, Pdf(pending.JobKey), 1, "{}");

    private DocumentRequest Request(string job, char letter = 'R', int year = 2026) => new(letter, year, "report", job, ["HB-014"], Out);
}
