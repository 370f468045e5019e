using System.Text;
using ExamDocs.Core.Records;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Tests;

/// <summary>
/// A register of the layout before visits had keys: its visits are found by their references, and its items by the keys that they have now.
/// </summary>
public sealed class LayoutFourTests : Workplace
{
    private const string Json = """{"visit":{"reference":"V-2026-044"},"items":[{"id":"COR-1\u0967","serial":"HC 7"}]}""";

    private static readonly ExaminationRecord Record = new()
    {
        Visit = new() { Reference = "V-2026-044" },
        Items = [new() { Id = "COR-1\u0967", Serial = "HC 7" }],
    };

    [Fact]
    public void Its_visits_and_items_are_found_however_they_are_spelt()
    {
        using (var register = Open())
        {
            register.Visits.Remember(new VisitToRemember(Record, Encoding.UTF8.GetBytes(Json), [new("COR-1\u0967", "withdraw", ["W4"])]));
            register.Visits.Remember([.. Enumerable.Range(0, 70).Select(n => SampleVisit.Of($"V-{n}", "note", $"HB-{n}"))]);
        }
        Make();
        using (var register = Open())
        {
            Assert.Equal(1, Assert.Single(register.Visits.OfReference("v 2026/044")).Visit);
            Assert.Equal(2, Assert.Single(register.Visits.OfReference("V 00")).Visit);
            var found = register
                .Visits.AsLogged((visit, _) => visit == 1 ? Record : null)
                .Touching(new ExaminationRecord { Items = [new() { Id = "cor-11" }] });
            Assert.Equal(1, Assert.Single(found).Visit.Visit);
            Assert.Equal(70, register.Visits.Touching(new ExaminationRecord { Items = [new() { Id = "HB-69" }] }).Count);
            Assert.Empty(register.Check());
        }
        using (var connection = Connect())
            Assert.Equal(Layout.Version, connection.Number("SELECT layout FROM register"));
        Assert.ThrowsAny<System.Data.Common.DbException>(() => ByHand("DELETE FROM visit_key"));
    }

    /// <summary>As the version before left it: a digit of another script was itself.</summary>
    private void Make()
    {
        TakeAwayGuard("the_register_stays_itself");
        TakeAwayGuard("item_key_is_never_changed");
        ByHand("DROP TABLE visit_key");
        ByHand("DROP INDEX log_by_document");
        ByHand("UPDATE item_key SET key = replace(key, '11', '1\u0967') WHERE visit = 1");
        ByHand("UPDATE register SET layout = 4");
        SayLayout(4);
    }
}
