using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Tests;

/// <summary>A register of the layout before documents could be kept elsewhere: it is brought up to date, and its documents stay in it.</summary>
public sealed class LayoutThreeTests : Workplace
{
    [Fact]
    public void It_is_brought_up_to_date_and_its_documents_are_where_they_were()
    {
        using (var register = Open())
        {
            Issue(register, "a");
            Take(register, "pending");
        }
        Make();
        using (var register = Open())
        {
            register.Recover();
            Assert.Equal("database", register.ContentPlace);
            Assert.Equal(Pdf("a"), register.Content(register.FindIssued("a")!));
            Assert.Empty(register.Check());
            register.MoveContent($"folder:{Path.Combine(Root, "kept")}");
            Assert.Equal("R-2026-000003", Issue(register, "c").Number);
            Assert.Empty(register.Check());
        }
        using (var connection = Connect())
            Assert.Equal(4, connection.Number("SELECT layout FROM register"));
        Assert.ThrowsAny<System.Data.Common.DbException>(() => ByHand("DELETE FROM content_place"));
    }

    /// <summary>As the version before left it.</summary>
    private void Make()
    {
        TakeAwayGuard("the_register_stays_itself");
        ByHand("DROP TABLE content_place");
        ByHand("UPDATE register SET layout = 3");
        SayLayout(3);
    }
}
