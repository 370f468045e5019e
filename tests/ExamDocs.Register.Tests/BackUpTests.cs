using ExamDocs.Register.Model;

namespace ExamDocs.Register.Tests;

public sealed class BackUpTests : Workplace
{
    [Fact]
    public void A_copy_opens_and_holds_all_of_it()
    {
        var copy = Path.Combine(Root, "copy.db");
        using var register = Open();
        Issue(register, "a");
        register.Withdraw(Issue(register, "b").Number, "sent to the wrong yard");
        register.Visits.Remember(SampleVisit.Of("V-2026-031"));
        register.BackUp(copy);
        Issue(register, "later");
        using var copied = DocumentRegister.Open(copy);
        Assert.Empty(copied.Check());
        Assert.Equal(["R-2026-000001", "R-2026-000002"], copied.Issued().Select(d => d.Number));
        Assert.Equal(Pdf("a"), copied.Content(copied.FindIssued("a")!));
        Assert.Equal(DocumentEnd.Withdrawn, copied.Find("R-2026-000002")!.Ended);
        Assert.Equal(SampleVisit.Of("V-2026-031").Json, copied.Visits.Record(1));
        Assert.Empty(Directory.GetFiles(Root, "*.part*"));
    }

    [Fact]
    public void A_file_that_is_there_is_left_as_it_is()
    {
        var copy = Path.Combine(Root, "copy.db");
        File.WriteAllText(copy, "last month's");
        using var register = Open();
        Issue(register, "a");
        Assert.Contains("There is a file", Assert.Throws<IOException>(() => register.BackUp(copy)).Message, StringComparison.Ordinal);
        Assert.Throws<IOException>(() => register.BackUp(Database));
        Assert.Equal("last month's", File.ReadAllText(copy));
        Assert.Empty(register.Check());
    }

    [Fact]
    public void An_unsound_register_gives_no_copy_that_looks_sound()
    {
        var copy = Path.Combine(Root, "copy.db");
        using var register = Open();
        Issue(register, "a");
        TakeAwayGuard("issued_bytes_stay");
        ByHand("UPDATE content SET bytes = $1", new byte[] { 0 });
        Assert.Contains("The copy is not sound", Assert.Throws<IOException>(() => register.BackUp(copy)).Message, StringComparison.Ordinal);
        Assert.Equal(
            [Path.GetFileName(Database)],
            Directory.GetFiles(Root).Select(f => Path.GetFileName(f)).Where(f => !f.Contains(".run-", StringComparison.Ordinal))
        );
    }
}
