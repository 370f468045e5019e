using ExamDocs.Register.Log;
using ExamDocs.Register.Opening;
using NodaTime;

namespace ExamDocs.Register.Tests;

/// <summary>A register as the first version made it, before there were visits, a log or runs side by side.</summary>
public sealed class LayoutOneTests : Workplace
{
    private const string Tables = """
        CREATE TABLE counter (
          letter TEXT NOT NULL CHECK (letter GLOB '[A-Z]'),
          year INTEGER NOT NULL,
          last INTEGER NOT NULL CHECK (last >= 1),
          PRIMARY KEY (letter, year)
        ) STRICT, WITHOUT ROWID;

        CREATE TABLE document (
          number TEXT NOT NULL PRIMARY KEY,
          letter TEXT NOT NULL,
          year INTEGER NOT NULL,
          sequence INTEGER NOT NULL CHECK (sequence >= 1),
          kind TEXT NOT NULL,
          job_key TEXT NOT NULL,
          folder TEXT NOT NULL,
          state TEXT NOT NULL DEFAULT 'pending' CHECK (state IN ('pending', 'issued', 'void')),
          sha256 TEXT,
          pages INTEGER CHECK (pages >= 1),
          outcomes TEXT,
          void_reason TEXT,
          UNIQUE (letter, year, sequence),
          CHECK (state <> 'issued' OR (sha256 IS NOT NULL AND pages IS NOT NULL AND outcomes IS NOT NULL)),
          CHECK ((state = 'void') = (void_reason IS NOT NULL))
        ) STRICT;

        CREATE UNIQUE INDEX one_live_document_per_job ON document (job_key) WHERE state <> 'void';

        CREATE TABLE document_item (
          number TEXT NOT NULL REFERENCES document (number),
          position INTEGER NOT NULL,
          item TEXT NOT NULL,
          PRIMARY KEY (number, position)
        ) STRICT, WITHOUT ROWID;

        CREATE INDEX document_by_item ON document_item (item);

        CREATE TABLE content (
          number TEXT NOT NULL PRIMARY KEY REFERENCES document (number),
          bytes BLOB NOT NULL
        ) STRICT;

        CREATE TRIGGER numbers_are_never_taken_back BEFORE DELETE ON document
        BEGIN SELECT RAISE(ABORT, 'a number that was taken stays listed'); END;

        CREATE TRIGGER what_is_issued_or_void_stays_so BEFORE UPDATE ON document WHEN OLD.state <> 'pending'
        BEGIN SELECT RAISE(ABORT, 'an issued or void document is never changed'); END;

        CREATE TRIGGER issued_bytes_stay BEFORE UPDATE ON content
        BEGIN SELECT RAISE(ABORT, 'the bytes of a document are never changed'); END;

        CREATE TRIGGER issued_bytes_are_kept BEFORE DELETE ON content
        WHEN (SELECT state FROM document WHERE number = OLD.number) = 'issued'
        BEGIN SELECT RAISE(ABORT, 'the bytes of an issued document are kept'); END;
        """;

    [Fact]
    public void It_keeps_everything_and_gets_a_log_that_holds()
    {
        Make();
        using var register = DocumentRegister.Open(Database, new LocalDate(2026, 5, 12));
        Assert.Empty(register.Check());
        Assert.Equal(["Q-2025-000001", "R-2026-000001"], register.Issued().Select(d => d.Number));
        var kept = register.FindIssued("a")!;
        Assert.Equal(Pdf("a"), register.Content(kept));
        Assert.Equal(
            ("report", "HB-014 HB-014-B", Out, 2, """{"HB-014":"fit"}"""),
            (kept.Kind, string.Join(' ', kept.Items), kept.Folder, kept.Pages, kept.OutcomesJson)
        );
        Assert.True(register.Find("R-2026-000001")!.IsCurrent);
        Assert.Equal("the page could not be printed", Assert.Single(register.Voided()).Reason);
        // Which register it is, and two entries of each of three that had come to their end; the fourth is pending.
        Assert.Equal(7, register.Checkpoint()!.Size);
    }

    [Fact]
    public void What_it_had_begun_is_settled_and_its_numbers_go_on()
    {
        Make();
        using var register = Open();
        Assert.Equal("R-2026-000003 is void: the run was interrupted before it was printed.", Assert.Single(register.Recover()));
        Assert.Equal("R-2026-000004", Issue(register, "b").Number);
        Assert.True(register.Withdraw("R-2026-000001", "sent to the wrong yard"));
        Assert.Equal("R-2026-000005", Issue(register, "a").Number);
        Assert.Empty(register.Check());
        Assert.ThrowsAny<System.Data.Common.DbException>(() => ByHand("DELETE FROM log"));
    }

    [Fact]
    public void It_is_brought_up_to_date_once()
    {
        Make();
        using (var first = Open())
            Assert.Equal(7, first.Checkpoint()!.Size);
        using var second = Open();
        Assert.Equal(7, second.Checkpoint()!.Size);
        Assert.Empty(second.Check());
    }

    private void Make()
    {
        Directory.CreateDirectory(Out);
        ByHand(Tables);
        ByHand(FormattableString.Invariant($"PRAGMA application_id = {SqliteTables.ApplicationId}"));
        ByHand("PRAGMA user_version = 1");
        ByHand("INSERT INTO counter VALUES ('Q', 2025, 1), ('R', 2026, 3)");
        Issued("Q-2025-000001", 'Q', 2025, "q");
        Issued("R-2026-000001", 'R', 2026, "a");
        Insert("R-2026-000002", 2, "void", "the page could not be printed");
        Insert("R-2026-000003", 3, "pending", null);
    }

    private void Issued(string number, char letter, int year, string job)
    {
        ByHand(
            "INSERT INTO document VALUES ($1, $2, $3, 1, 'report', $4, $5, 'issued', $6, 2, $7, NULL)",
            number,
            letter.ToString(),
            year,
            job,
            Out,
            Sha256Hex.Of(Pdf(job)),
            """{"HB-014":"fit"}"""
        );
        ByHand("INSERT INTO document_item VALUES ($1, 0, 'HB-014'), ($1, 1, 'HB-014-B')", number);
        ByHand("INSERT INTO content VALUES ($1, $2)", number, Pdf(job));
    }

    private void Insert(string number, int sequence, string state, string? reason) =>
        ByHand(
            "INSERT INTO document VALUES ($1, 'R', 2026, $2, 'report', $1, $3, $4, NULL, NULL, NULL, $5)",
            number,
            sequence,
            Out,
            state,
            reason
        );
}
