using ExamDocs.Register.Storage;
using NodaTime;

namespace ExamDocs.Register.Tests;

public sealed class VisitTests : Workplace
{
    private static readonly string[] Tables =
    [
        "visit",
        "person",
        "item",
        "makers_limits",
        "examination",
        "observation",
        "renewal",
        "outcome",
    ];

    [Fact]
    public void Every_row_of_a_visit_is_there()
    {
        using var register = Open();
        Assert.Equal((1, true), register.Visits.Remember(SampleVisit.Of("V-2026-031")));
        Assert.Equal([1, 1, 2, 1, 1, 2, 1, 2], Counts());
        Assert.Equal(
            ["V-2026-031|gb-loler|Larkfield Tree Care|The yard|2026-05-11"],
            Texts("SELECT reference, regime, employer, premises, examined_on FROM visit")
        );
        Assert.Equal(["ex1|A. Examiner|1 Long Lane|none invented"], Texts("SELECT id, name, address, qualifications FROM person"));
        Assert.Equal(
            [
                "HB-014|harness|climbing harness|Invented Works|H1|-|0007|-|2024-02|-|in-use",
                "HB-014-B|rope-bridge|-|-|-|SP-11|-|blue|-|HB-014|-",
            ],
            Texts(
                "SELECT id, category, description, maker, model, part_number, serial, owners_mark, manufactured, fitted_to, "
                    + "status FROM item ORDER BY position"
            )
        );
        Assert.Equal(
            ["Invented Works|H1|SP-11|Booklet|3|12"],
            Texts("SELECT maker, model, part_number, title, revision, page FROM makers_limits")
        );
        Assert.Equal(
            ["HB-014-B|ex1|six-month|2026-05-11|withdraw"],
            Texts("SELECT item, examiner, basis, examined_on, conclusion FROM examination")
        );
        Assert.Equal(
            ["cover-cut|defect|pulled thread|photos/1.jpg", "stiffness|clear|-|-"],
            Texts("SELECT criterion, state, note, photo FROM observation ORDER BY position")
        );
        Assert.Equal(["HB-014|HB-014-A|HB-014-B|2026-05-10"], Texts("SELECT item, removed_part, fitted_part, done_on FROM renewal"));
    }

    [Fact]
    public void What_was_decided_comes_back_by_item_and_by_serial_number()
    {
        using var register = DocumentRegister.Open(Database, new LocalDate(2026, 5, 12));
        register.Visits.Remember(SampleVisit.Of("V-2026-031"));
        var part = Assert.Single(register.Visits.OutcomesOf("HB-014-B"));
        Assert.Equal(
            ("withdraw", "W1 W6", true),
            (part.Outcome.Outcome, string.Join(' ', part.Outcome.Codes), part.Outcome.NeverReleasable)
        );
        Assert.Equal(new LocalDate(2026, 5, 12), part.Visit.StoredOn);
        var whole = Assert.Single(register.Visits.OutcomesOfSerial("0007"));
        Assert.Equal(
            ("HB-014", "HB-014-B", false),
            (whole.Outcome.Item, Assert.Single(whole.Outcome.Parts), whole.Outcome.NeverReleasable)
        );
        Assert.Equal(2, register.Visits.Outcomes().Count);
        Assert.Empty(register.Visits.OutcomesOf("HB-015"));
    }

    [Theory]
    [InlineData("V-2026-031")]
    [InlineData(null)]
    public void The_same_visit_twice_changes_nothing(string? reference)
    {
        using (var register = Open())
            register.Visits.Remember(SampleVisit.Of(reference));
        var before = Counts();
        using var again = Open();
        Assert.Equal((1, false), again.Visits.Remember(SampleVisit.Of(reference)));
        Assert.Equal(before, Counts());
        Assert.Empty(again.Check());
    }

    [Fact]
    public void An_older_version_read_again_is_the_latest_again()
    {
        using var register = Open();
        var (first, second) = (SampleVisit.Of("V-2026-031", "as recorded"), SampleVisit.Of("V-2026-031", "corrected"));
        Assert.Equal(
            [(1, true), (2, true), (3, true), (3, false)],
            [
                register.Visits.Remember(first),
                register.Visits.Remember(second),
                register.Visits.Remember(first),
                register.Visits.Remember(first),
            ]
        );
        var all = register.Visits.All();
        Assert.Equal(all[0].Sha256, all[2].Sha256);
        Assert.NotEqual(all[0].Sha256, all[1].Sha256);
        Assert.Equal(first.Json, register.Visits.Record(3));
        // Another reference with the same words is another visit.
        Assert.Equal((4, true), register.Visits.Remember(SampleVisit.Of("V-2026-032", "as recorded")));
    }

    [Fact]
    public void Current_documents_are_found_by_their_visit()
    {
        using var register = Open();
        var (visit, _) = register.Visits.Remember(SampleVisit.Of("V-2026-031"));
        var pending = register.Take(new('R', 2026, "report", "a", ["HB-014"], Out) { Visit = visit, Language = "de" });
        register.Publish(pending, Pdf("a"), 1, "{}");
        var current = Assert.Single(register.CurrentOf(visit));
        Assert.Equal((pending.Number, visit, "de"), (current.Number, current.Visit, current.Language));
        Assert.Equal(pending.Number, Assert.Single(register.About("HB-014", visit)).Number);
        Assert.Empty(register.About("HB-014-B", visit));
        register.Withdraw(pending.Number, "sent to the wrong yard");
        Assert.Empty(register.CurrentOf(visit));
        Assert.Single(register.About("HB-014", visit));
    }

    private List<long> Counts()
    {
        using var connection = Connect();
        return Tables.Select(table => connection.Number($"SELECT count(*) FROM {table}")).ToList();
    }

    private List<string> Texts(string statement)
    {
        using var connection = Connect();
        return connection.Rows(row => string.Join('|', Enumerable.Range(0, row.FieldCount).Select(i => row.Text(i) ?? "-")), statement);
    }
}
