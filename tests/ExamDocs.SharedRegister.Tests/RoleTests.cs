using System.Data.Common;
using ExamDocs.Cli.Tests;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;
using ExamDocs.Register.Tests;
using Npgsql;

namespace ExamDocs.SharedRegister.Tests;

/// <summary>Who may do what, set up word for word as docs/shared-register.md says.</summary>
public sealed partial class RoleTests : Workplace
{
    private const string NoPermission = "42501";

    [Fact]
    public void An_examiner_may_do_all_that_issuing_takes_and_change_nothing_that_is_recorded()
    {
        var owner = Role("owner", "");
        OnTheServer($"ALTER DATABASE {DatabaseName} OWNER TO {owner}");
        DocumentRegister.Open(Server.AddressOf(DatabaseName, owner)).Dispose();
        ByHand(GrantsOf("shared-register.md"));
        var anna = Role("anna", "IN ROLE examiner");
        using (var register = DocumentRegister.Open(Server.AddressOf(DatabaseName, anna)))
            DoEverything(register);
        DocumentsElsewhere(owner, anna);

        using var connection = Connect(DatabaseName, anna, Server.Password);
        string[] forbidden =
        [
            "DELETE FROM document",
            "DELETE FROM log",
            "UPDATE log SET position = 7",
            "DELETE FROM visit",
            "UPDATE visit SET reference = 'x'",
            "UPDATE content SET bytes = ''",
            "UPDATE document_item SET item = 'x'",
            "DELETE FROM checkpoint",
            "UPDATE checkpoint SET root = 'x'",
            "DELETE FROM counter",
            "DELETE FROM register",
            "UPDATE outcome SET outcome = 'fit'",
            "UPDATE observation SET state = 'clear'",
            "INSERT INTO content_place VALUES (99, 'kept-at', 'folder:/theirs', '2026-05-12')",
            "UPDATE content_place SET place = 'folder:/theirs'",
            "DELETE FROM content_place",
            "ALTER TABLE content DISABLE TRIGGER issued_bytes_are_kept",
            "TRUNCATE log",
            "DROP TRIGGER log_is_kept ON log",
            "ALTER TABLE log DISABLE TRIGGER ALL",
            "DROP TABLE log",
            "CREATE TABLE examdocs.mine (x int)",
        ];
        Assert.All(forbidden, statement =>
            Assert.Equal(NoPermission, Assert.Throws<PostgresException>(() => connection.Execute(statement)).SqlState)
        );
        Assert.Contains(
            "are kept",
            Assert.Throws<PostgresException>(() => connection.Execute("DELETE FROM content")).Message,
            StringComparison.Ordinal
        );
    }

    /// <summary>The owner moves the documents; an examiner may not, and goes on issuing, also while they are moved.</summary>
    private void DocumentsElsewhere(string owner, string anna)
    {
        var kept = $"folder:{Path.Combine(Root, "kept")}";
        using var examiner = DocumentRegister.Open(Server.AddressOf(DatabaseName, anna));
        Assert.Contains(
            "Only the owner of",
            Assert.Throws<RegisterRefusedException>(() => examiner.MoveContent(kept)).Message,
            StringComparison.Ordinal
        );
        var taken = Take(examiner, "taken");
        using (var register = DocumentRegister.Open(Server.AddressOf(DatabaseName, owner)))
            Assert.Empty(register.MoveContent(kept).Faults);
        examiner.Publish(taken, Pdf("taken"), 1, "{}");
        Assert.Equal(kept, examiner.ContentPlace);
        Assert.Equal(Pdf("a"), examiner.Content(examiner.FindByNumber("R-2026-000001")!));
        Assert.Empty(examiner.Check());
        using (var register = DocumentRegister.Open(Server.AddressOf(DatabaseName, owner)))
            Assert.Empty(register.MoveContent("database").Faults);
        Issue(examiner, "inside again");
        Assert.Empty(examiner.Check());
    }

    [Fact]
    public async Task A_reader_reads_checks_and_exports_all_and_writes_nothing()
    {
        using (var register = Open())
            DoEverything(register);
        ByHand(GrantsOf("shared-register.md", "CREATE ROLE reader"));
        var olga = Role("olga", "IN ROLE reader");
        var address = Server.AddressOf(DatabaseName, olga);
        using (var register = DocumentRegister.OpenToRead(address))
        {
            Assert.Empty(register.Check());
            Assert.Equal(Pdf("b"), register.Content(register.FindByNumber("R-2026-000002")!));
            Assert.NotEmpty(register.Proofs(new HashSet<string> { "R-2026-000001" }).Proofs);
        }
        using var examdocs = new Examdocs();
        var visit = Records.Small().Write(examdocs, "visit.json");
        Assert.Equal(0, (await examdocs.RunAsync("register", "export", "--out", "all", "--register", address)).ExitCode);
        Assert.True(File.Exists(examdocs.At("all/checkpoint.json")));
        Assert.NotEqual(3, (await examdocs.RunAsync("check", visit, "--register", address)).ExitCode);
        Assert.Equal(3, (await examdocs.RunAsync("register", "import", visit, "--register", address)).ExitCode);
        var file = Path.Combine(examdocs.Folder, "all", "documents", "R-2026-000002.pdf");
        Assert.NotEqual(3, (await examdocs.RunAsync("verify", file, "--register", address)).ExitCode);

        using (var writing = DocumentRegister.Open(address))
            Assert.Equal(NoPermission, Assert.Throws<PostgresException>(() => Take(writing, "d")).SqlState);
        using var connection = Connect(DatabaseName, olga, Server.Password);
        connection.Execute("SET default_transaction_read_only = off");
        foreach (var table in EveryTable())
        {
            foreach (var statement in (string[])[$"INSERT INTO {table} SELECT * FROM {table}", $"DELETE FROM {table}", $"TRUNCATE {table}"])
                Assert.Equal(NoPermission, Assert.Throws<PostgresException>(() => connection.Execute(statement)).SqlState);
        }
        Assert.Equal(NoPermission, Assert.Throws<PostgresException>(() => connection.Execute("UPDATE document SET run = NULL")).SqlState);
    }

    [Theory]
    [InlineData("TRUNCATE log")]
    [InlineData("TRUNCATE document CASCADE")]
    [InlineData("TRUNCATE visit CASCADE")]
    [InlineData("TRUNCATE register")]
    public void Not_even_the_owner_of_the_server_empties_a_table_with_the_guards_in_place(string statement)
    {
        using var register = Open();
        Issue(register, "a");
        Assert.Contains(
            "a register is never emptied",
            Assert.ThrowsAny<DbException>(() => ByHand(statement)).Message,
            StringComparison.Ordinal
        );
        Assert.Empty(register.Check());
    }

    [Fact]
    public void Whoever_may_make_no_register_is_told_so()
    {
        var refused = Assert.Throws<RegisterRefusedException>(() =>
            DocumentRegister.Open(Server.AddressOf(DatabaseName, Role("nobody", "")))
        );
        Assert.Contains("this user may not make one", refused.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', refused.Message);
    }

    [Fact]
    public void Whoever_may_not_see_a_register_is_refused_and_makes_no_other()
    {
        Open().Dispose();
        var stranger = Role("stranger", "");
        Assert.Contains(
            "this user may not use it",
            Assert.Throws<RegisterRefusedException>(() => DocumentRegister.Open(Server.AddressOf(DatabaseName, stranger))).Message,
            StringComparison.Ordinal
        );
        ByHand($"GRANT USAGE ON SCHEMA examdocs TO {stranger}");
        Assert.StartsWith(
            "42501: permission denied",
            Assert.Throws<PostgresException>(() => DocumentRegister.Open(Server.AddressOf(DatabaseName, stranger))).Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_schema_made_beforehand_is_enough()
    {
        var berta = Role("berta", "");
        ByHand($"CREATE SCHEMA examdocs AUTHORIZATION {berta}");
        using var register = DocumentRegister.Open(Server.AddressOf(DatabaseName, berta));
        Assert.Equal("R-2026-000001", Issue(register, "a").Number);
    }

    [Fact]
    public void A_dump_of_the_server_s_own_is_restored_with_guards_log_and_numbers()
    {
        using (var register = Open())
            DoEverything(register);
        var (dump, restored) = (Path.Combine(Server.Folder, $"{DatabaseName}.dump"), $"{DatabaseName}_restored");
        Server.Run("pg_dump", "--format=custom", "--schema=examdocs", $"--file={dump}", Database);
        OnTheServer($"CREATE DATABASE {restored} TEMPLATE template0 ENCODING 'UTF8'");
        try
        {
            Server.Run("pg_restore", "--no-owner", $"--role={Server.Owner}", $"--dbname={Server.AddressOf(restored)}", dump);
            using var again = DocumentRegister.Open(Server.AddressOf(restored));
            Assert.Empty(again.Check());
            Assert.Equal("R-2026-000004", Issue(again, "after").Number);
            using var connection = Connect(restored, Server.Owner, Server.Password);
            Assert.Contains(
                "are kept",
                Assert.Throws<PostgresException>(() => connection.Execute("DELETE FROM content")).Message,
                StringComparison.Ordinal
            );
        }
        finally
        {
            OnTheServer($"DROP DATABASE {restored} WITH (FORCE)");
        }
    }
}
