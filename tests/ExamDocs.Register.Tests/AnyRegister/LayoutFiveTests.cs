using System.Text;
using ExamDocs.Core.Records;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Tests;

/// <summary>A register of the layout whose keys kept the marks on letters: its visits and items are found without them.</summary>
public sealed class LayoutFiveTests : Workplace
{
    private const string Json = """{"visit":{"reference":"Prüfung 44"},"items":[{"id":"CORDÉE-1"}]}""";

    private static readonly ExaminationRecord Record = new()
    {
        Visit = new() { Reference = "Prüfung 44" },
        Items = [new() { Id = "CORDÉE-1" }],
    };

    [Fact]
    public void Its_visits_and_items_are_found_without_the_marks_on_letters()
    {
        using (var register = Open())
            register.Visits.Remember(new VisitToRemember(Record, Encoding.UTF8.GetBytes(Json), [new("CORDÉE-1", "withdraw", ["W4"])]));
        TakeAwayGuard("the_register_stays_itself");
        TakeAwayGuard("item_key_is_never_changed");
        TakeAwayGuard("visit_key_is_never_changed");
        ByHand("UPDATE item_key SET key = replace(key, 'CORDEE', 'CORDÉE')");
        ByHand("UPDATE visit_key SET key = replace(key, 'PRUFUNG', 'PRÜFUNG')");
        ByHand("UPDATE register SET layout = 5");
        SayLayout(5);
        using (var register = Open())
        {
            Assert.Single(register.Visits.OfReference("PRUFUNG 44"));
            Assert.Single(register.Visits.Touching(new ExaminationRecord { Items = [new() { Id = "cordee 1" }] }));
            Assert.Empty(register.Check());
        }
        using var connection = Connect();
        Assert.Equal(Layout.Version, connection.Number("SELECT layout FROM register"));
    }
}
