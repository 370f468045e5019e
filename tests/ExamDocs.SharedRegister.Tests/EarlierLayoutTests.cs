using System.Text;
using ExamDocs.Register;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Opening;
using ExamDocs.Register.Tests;
using NodaTime;

namespace ExamDocs.SharedRegister.Tests;

/// <summary>
/// A shared register of the layout before is brought up to date by its owner, and examiners go on with what they were granted.
/// </summary>
public sealed class EarlierLayoutTests : Workplace
{
    private const string Record = """{"visit":{"reference":"V-1"},"items":[{"id":"HB-014","serial":"0007"}]}""";

    private string Anna => Server.AddressOf(DatabaseName, $"anna_{DatabaseName}");

    [Fact]
    public void Its_owner_brings_it_up_to_date_and_examiners_go_on()
    {
        Make();
        OnTheServer($"CREATE ROLE anna_{DatabaseName} LOGIN PASSWORD '{Server.Password}'");
        ByHand($"GRANT USAGE ON SCHEMA examdocs TO anna_{DatabaseName}");
        ByHand($"GRANT SELECT, INSERT ON ALL TABLES IN SCHEMA examdocs TO anna_{DatabaseName}");
        ByHand($"GRANT UPDATE ON examdocs.register, examdocs.counter, examdocs.document TO anna_{DatabaseName}");
        Assert.Contains(
            "is of an earlier version",
            Assert.Throws<RegisterRefusedException>(() => DocumentRegister.Open(Anna)).Message,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "is of an earlier version",
            Assert.Throws<RegisterRefusedException>(() => DocumentRegister.OpenToRead(Database)).Message,
            StringComparison.Ordinal
        );
        using (var owner = DocumentRegister.Open(Database, new LocalDate(2026, 9, 1)))
        {
            Assert.Empty(owner.Check());
            Assert.Equal(new LocalDate(2026, 5, 12), owner.KeptSince);
        }
        using var register = DocumentRegister.Open(Anna);
        Assert.Single(register.Visits.Touching(new() { Items = [new() { Id = "hb 14" }] }));
        Assert.Equal(
            2,
            register.Visits.Remember(SampleVisit.Of("V-2") with { Ends = [new(1, "HB-014", new(2026, 9, 3), "was withdrawn")] }).Visit
        );
        Assert.Single(register.Visits.EndsOf(1));
        Assert.Equal("database", register.ContentPlace);
        Issue(register, "a");
        Assert.Empty(register.Check());
        Assert.ThrowsAny<System.Data.Common.DbException>(() => ByHand("DELETE FROM item_key"));
    }

    private void Make()
    {
        ByHand("CREATE SCHEMA examdocs");
        ByHand(Written(FirstLayout.Statements));
        ByHand(Written(SecondLayout.Statements));
        ByHand("INSERT INTO register VALUES (1, '0123456789abcdef0123456789abcdef', 2, 0)");
        ByHand(
            "CREATE FUNCTION refuse() RETURNS trigger LANGUAGE plpgsql SET search_path FROM CURRENT AS $$ BEGIN RAISE "
                + "EXCEPTION '%', TG_ARGV[0]; END $$"
        );
        ByHand(
            "CREATE TRIGGER visits_stay BEFORE UPDATE ON visit FOR EACH ROW WHEN (TRUE) EXECUTE FUNCTION refuse('a recorded "
                + "visit is never changed')"
        );
        ByHand(
            "CREATE TRIGGER what_is_issued_or_void_stays_so BEFORE UPDATE ON document FOR EACH ROW WHEN (OLD.state <> "
                + "'pending' AND NOT (OLD.ended IS NULL AND NEW.ended IS NOT NULL)) EXECUTE FUNCTION refuse('never changed')"
        );
        ByHand(
            "CREATE TRIGGER document_is_never_emptied BEFORE TRUNCATE ON document EXECUTE FUNCTION refuse('a register is never emptied')"
        );
        var json = Encoding.UTF8.GetBytes(Record);
        ByHand("INSERT INTO visit VALUES (1, $1, 'V-1', 'gb-loler', NULL, NULL, '2026-05-11', '2026-05-12', $2)", Sha256Hex.Of(json), json);
        ByHand("INSERT INTO outcome VALUES (1, 0, 'HB-014', '2026-05-11', 'fit', NULL, NULL, '[]', '[]', 0)");
    }

    private static string Written(string layout) =>
        layout
            .Replace("{strict}", "", StringComparison.Ordinal)
            .Replace("{blob}", "BYTEA", StringComparison.Ordinal)
            .Replace("{equal}", "USING hash ", StringComparison.Ordinal);
}
