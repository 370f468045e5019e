using ExamDocs.Core.Records;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;
using ExamDocs.Register.Tests;
using Npgsql;

namespace ExamDocs.SharedRegister.Tests;

/// <summary>
/// What issuing asks of a register is looked up, not searched for: the server itself says of every statement how it goes about it, once
/// its tables hold so much that it matters.
/// </summary>
public sealed class PlanTests : Workplace
{
    /// <summary>Rows in each of the tables that grow; the server reads a small table whole, and rightly.</summary>
    private const int Many = 20_000;

    private const string Fill = """
        SET session_replication_role = replica;
        INSERT INTO makers_limits (visit, position) SELECT n, 0 FROM generate_series(10, {0}) n;
        INSERT INTO renewal (visit, position) SELECT n, 0 FROM generate_series(10, {0}) n;
        INSERT INTO visit SELECT n, 'x' || n, 'V-' || n, 'gb-loler', 'Firm ' || n, 'Yard', '2026-05-11', '2026-05-12',
          '\x00', n, '1', '2026-05-12'
          FROM generate_series(2, {0}) n;
        INSERT INTO item (visit, position, id, serial) SELECT n, 0, 'K-' || n, 'S-' || n FROM generate_series(10, {0}) n;
        INSERT INTO item_key SELECT n, 0, 'K-' || n, 'i:k' || n FROM generate_series(10, {0}) n;
        INSERT INTO visit_key SELECT n, 0, 'V' || n FROM generate_series(10, {0}) n;
        INSERT INTO examination (visit, position, item) SELECT n, 0, 'K-' || n FROM generate_series(10, {0}) n;
        INSERT INTO observation (visit, examination, position) SELECT n, 0, 0 FROM generate_series(10, {0}) n;
        INSERT INTO outcome SELECT n, 0, 'K-' || n, NULL, 'fit', NULL, NULL, '[]', '[]', 0 FROM generate_series(10, {0}) n;
        INSERT INTO person (visit, position) SELECT n, 0 FROM generate_series(10, {0}) n;
        INSERT INTO document (number, letter, year, sequence, kind, job_key, folder, state, sha256, pages, outcomes, visit)
          SELECT 'D-2025-' || n, 'D', 2025, n, 'due-label', 'job ' || n, '', 'issued', 'x', 1, '{{}}', n FROM generate_series(10, {0}) n;
        INSERT INTO document_item SELECT 'D-2025-' || n, 0, 'K-' || n FROM generate_series(10, {0}) n;
        INSERT INTO content SELECT 'D-2025-' || n, '\x00' FROM generate_series(10, {0}) n;
        INSERT INTO replacement SELECT 'D-2025-' || n, 'D-2025-' || n + 1, 'x' FROM generate_series(10, {0}) n;
        INSERT INTO line_end SELECT n, 0, n, 'K-' || n, '2026-05-11', 'x' FROM generate_series(10, {0}) n;
        INSERT INTO ended_line SELECT 'D-2025-' || n, 0, 'K-' || n, '2026-05-11', 'x', n FROM generate_series(10, {0}) n;
        SET session_replication_role = DEFAULT
        """;

    [Fact]
    public void No_statement_of_issuing_goes_through_a_table_that_grows()
    {
        using var register = Open();
        register.Visits.Remember(SampleVisit.Of("V-2026-031"));
        Issue(register, "a");
        ByHand(string.Format(System.Globalization.CultureInfo.InvariantCulture, Fill, Many));
        ByHand("VACUUM ANALYZE");
        var plans = Watched((NpgsqlConnection)register.Rows.Database.Connection, () =>
        {
            register.Recover();
            Known(register);
            register.FindIssued("b");
            register.Publish(
                register.Take(new('R', 2026, "report", "b", ["HB-014"], Out) { Replaces = [new("R-2026-000001", "x")], Visit = 1 }),
                Pdf("b"),
                1,
                "{}"
            );
            register.Void(Take(register, "c"), "the page could not be printed");
            register.About("HB-014", 1);
            register.CurrentOf(1);
            register.Visits.OfReference("V-2026-031");
            register.Visits.Remember(SampleVisit.Of("V-2026-032"));
        });
        Assert.InRange(plans.Count, 40, 1_000);
        var whole = plans.Where(p => p.Contains("Seq Scan", StringComparison.Ordinal) && !IsOfASmallTable(p) && !CountsAll(p)).ToList();
        Assert.True(whole.Count == 0, string.Join("\n\n", whole));
    }

    /// <summary>That no visit is gone is known only by counting them: by the visits' index alone, where their records are long.</summary>
    private static bool CountsAll(string plan) =>
        plan.Contains("SELECT count(*) FROM visit WHERE visit BETWEEN 1 AND $1", StringComparison.Ordinal);

    /// <summary>The register, its counters and its places have a few rows for good; the log and its roots have a few in this test.</summary>
    private static bool IsOfASmallTable(string plan) =>
        plan.Split('\n')
            .Where(l => l.Contains("Seq Scan on ", StringComparison.Ordinal))
            .Select(l => l.Split("Seq Scan on ")[1].Split(' ')[0])
            .All(t => t is "register" or "counter" or "log" or "checkpoint" or "log_node" or "content_place");

    private static void Known(DocumentRegister register) =>
        register
            .Visits.AsLogged((_, _) => SampleVisit.Of("V-2026-031").Record)
            .Touching(new ExaminationRecord { Items = [new Item { Id = "HB-014", Serial = "0007" }] });

    /// <summary>Every statement with its plan, as the server tells whoever asks for them.</summary>
    private List<string> Watched(NpgsqlConnection connection, Action act)
    {
        var plans = new List<string>();
        connection.Execute("LOAD 'auto_explain'; SET auto_explain.log_min_duration = 0; SET client_min_messages = log");
        connection.Notice += (_, told) => plans.Add(told.Notice.MessageText);
        act();
        return [.. plans.Where(p => p.Contains("Query Text", StringComparison.Ordinal))];
    }
}
