using System.Text;
using ExamDocs.Core.Records;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Opening;
using ExamDocs.Register.Rows;
using NodaTime;

namespace ExamDocs.Register.Tests;

/// <summary>A register of the layout before visits were logged: it is brought up to date with all that is in it, once.</summary>
public sealed class LayoutTwoTests : Workplace
{
    private const string Record = """
        {"visit":{"reference":"V-1"},"items":[{"id":"HB-014","serial":"0007","formerly":"HB-9"},{"id":"HB-014-B","fittedTo":"HB-014"}],
         "examinations":[{"item":"HB-014-B"}],"renewals":[{"item":"HB-014","removedPart":"HB-014-A","fittedPart":"HB-014-B"}]}
        """;

    [Fact]
    public void Its_visits_are_logged_and_its_items_found_by_their_keys()
    {
        Make();
        using var register = DocumentRegister.Open(Database, new LocalDate(2026, 9, 1));
        Assert.Empty(register.Check());
        Assert.Equal(new LocalDate(2026, 5, 12), register.KeptSince);
        Assert.Equal(
            (DocumentEnd.Replaced, "an address was wrong"),
            (register.Find("R-2026-000001")!.Ended, register.Find("R-2026-000001")!.EndedReason)
        );
        Assert.True(register.Find("R-2026-000002")!.IsCurrent);
        var visit = Assert.Single(register.Visits.All());
        Assert.Equal((null, null, null), (visit.Seen, visit.Version, visit.AsOf));
        foreach (var (id, isFound) in new[] { ("hb 14", true), ("HB9", true), ("HB-014-A", true), ("HB-015", false) })
            Assert.Equal(isFound, register.Visits.Touching(new() { Items = [new() { Id = id }] }).Count == 1);
        Assert.Equal("withdraw", Assert.Single(register.Visits.OutcomesOf("HB-014-B")).Outcome.Outcome);
    }

    [Fact]
    public void It_is_brought_up_to_date_once_and_goes_on()
    {
        Make();
        long size;
        using (var first = Open())
            size = first.Checkpoint()!.Size;
        using var register = Open();
        Assert.Equal(size, register.Checkpoint()!.Size);
        Assert.Equal("R-2026-000003", Issue(register, "c").Number);
        register.Visits.Remember(SampleVisit.Of("V-2") with { Ends = [new(1, "HB-014", new(2026, 9, 3), "was withdrawn")] });
        Assert.Equal("HB-014", Assert.Single(register.EndedLines("R-2026-000002")).Item);
        Assert.Empty(register.Check());
        Assert.ThrowsAny<System.Data.Common.DbException>(() => ByHand("DELETE FROM outcome"));
    }

    [Fact]
    public void Read_only_it_is_brought_up_to_date_in_a_copy_and_left_as_it_is()
    {
        Make();
        var before = File.ReadAllBytes(Database);
        using (var register = DocumentRegister.OpenToRead(Database))
        {
            Assert.Empty(register.Check());
            Assert.Single(register.Visits.Touching(new() { Items = [new() { Id = "hb 14" }] }));
        }
        Assert.Equal(before, File.ReadAllBytes(Database));
        Assert.Equal([Database], Directory.GetFiles(Root));
    }

    [Fact]
    public void One_of_this_layout_is_not_written_when_it_is_read()
    {
        using (var register = Open())
            register.Visits.Remember(SampleVisit.Of("V-1"));
        var before = File.ReadAllBytes(Database);
        using (var register = DocumentRegister.OpenToRead(Database))
        {
            Assert.Empty(register.Check());
            Assert.ThrowsAny<System.Data.Common.DbException>(() => register.Visits.Remember(SampleVisit.Of("V-2")));
        }
        Assert.Equal(before, File.ReadAllBytes(Database));
        Assert.Equal([Database], Directory.GetFiles(Root));
        Assert.Throws<FileNotFoundException>(() => DocumentRegister.OpenToRead(Path.Combine(Root, "none.db")));
        Assert.False(File.Exists(Path.Combine(Root, "none.db")));
    }

    /// <summary>As the version before wrote it: two reports of one visit, the second in the place of the first.</summary>
    private void Make()
    {
        ByHand(Written(FirstLayout.Statements));
        ByHand(Written(SecondLayout.Statements));
        ByHand(FormattableString.Invariant($"PRAGMA application_id = {SqliteTables.ApplicationId}"));
        ByHand("PRAGMA user_version = 2");
        ByHand("INSERT INTO register VALUES (1, '0123456789abcdef0123456789abcdef', 2, 0)");
        ByHand(
            "INSERT INTO visit VALUES (1, $1, 'V-1', 'gb-loler', 'Larkfield Tree Care', NULL, '2026-05-11', '2026-05-12', $2)",
            Sha256Hex.Of(Encoding.UTF8.GetBytes(Record)),
            Encoding.UTF8.GetBytes(Record)
        );
        ByHand("INSERT INTO outcome VALUES (1, 0, 'HB-014-B', '2026-05-11', 'withdraw', NULL, NULL, '[\"W6\"]', '[]', 0)");
        ByHand("INSERT INTO counter VALUES ('R', 2026, 2)");
        foreach (var (number, sequence, job) in new[] { ("R-2026-000001", 1, "a"), ("R-2026-000002", 2, "b") })
        {
            ByHand(
                """
                INSERT INTO document (number, letter, year, sequence, kind, job_key, folder, state, sha256, pages, outcomes, run, issued_on, language, visit)
                VALUES ($1, 'R', 2026, $2, 'report', $3, '/out', 'issued', $4, 1, '{"HB-014":"fit"}', 'a run', '2026-05-12', 'en', 1)
                """,
                number,
                sequence,
                job,
                Sha256Hex.Of(Pdf(job))
            );
            ByHand("INSERT INTO document_item VALUES ($1, 0, 'HB-014'), ($1, 1, 'HB-014-B')", number);
            ByHand("INSERT INTO content VALUES ($1, $2)", number, Pdf(job));
        }
        ByHand("INSERT INTO replacement VALUES ('R-2026-000002', 'R-2026-000001', 'an address was wrong')");
        ByHand(
            "UPDATE document SET ended = 'replaced', ended_on = '2026-05-12', ended_reason = 'an address was wrong' WHERE "
                + "number = 'R-2026-000001'"
        );
        ByHand(
            "CREATE TRIGGER what_is_issued_or_void_stays_so BEFORE UPDATE ON document WHEN OLD.state <> 'pending' BEGIN "
                + "SELECT RAISE(ABORT, 'an issued or void document is never changed'); END"
        );
        // What enters something in the log keeps its hashes too, which this layout had no place for.
        ByHand(Written(FourthLayout.Statements));
        using var connection = Connect();
        var log = new LogRows(connection);
        foreach (var (number, job) in new[] { ("R-2026-000001", "a"), ("R-2026-000002", "b") })
            log.Append(at =>
                Register.Log.LogEntry.Issued(at, new(number, "report", ["HB-014", "HB-014-B"]), Sha256Hex.Of(Pdf(job)), new(2026, 5, 12))
            );
        log.Append(at =>
            Register.Log.LogEntry.Replaced(
                at,
                new("R-2026-000001", "report", ["HB-014", "HB-014-B"]),
                "R-2026-000002",
                "an address was wrong",
                new(2026, 5, 12)
            )
        );
        ByHand("DROP TABLE log_node; DROP TABLE content_place");
    }

    private static string Written(string layout) =>
        layout
            .Replace("{strict}", " STRICT", StringComparison.Ordinal)
            .Replace("{blob}", "BLOB", StringComparison.Ordinal)
            .Replace("{equal}", "", StringComparison.Ordinal);
}
