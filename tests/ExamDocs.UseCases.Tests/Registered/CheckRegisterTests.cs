using System.Text;
using System.Text.Json.Nodes;
using ExamDocs.Core.Regimes;
using ExamDocs.Register;
using ExamDocs.Register.Checking;
using ExamDocs.Register.Log;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Tests.Issuing;
using Microsoft.Data.Sqlite;
using static ExamDocs.UseCases.Tests.Registered.Visits;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>
/// A register is sound where its records give what is stored of them; who alters an outcome and makes all the rest agree is found by
/// deciding again.
/// </summary>
public sealed class CheckRegisterTests : IDisposable
{
    private readonly Visits _visits = new();

    public void Dispose() => _visits.Dispose();

    [Fact]
    public void Records_of_every_kind_are_decided_again_to_the_same()
    {
        _visits.Import(Workspace.Example());
        _visits.Import(Visit("V-1", "2026-11-02", withdraw: true));
        ImportVisits.Run(
            [_visits.File(Visit("V-2", "2027-01-04")), _visits.File(Visit("V-3", "2027-05-03"))],
            _visits.Register,
            Today,
            KnownRules.BuiltIn
        );
        _visits.Import(Released(Visit("V-4", "2027-06-07")));
        _visits.Import(Visit("V-1", "2026-11-02"));
        _visits.Import(Visit("V-2", "2027-01-04"));
        var found = Check();
        Assert.Empty(found.Faults);
        Assert.Empty(found.Notes);
        Assert.Equal(0, found.DecidedByOthers);
    }

    [Theory]
    [InlineData("outcome", "withdraw", "fit")]
    [InlineData("codes", "[\"W6\"]", "[\"W2\"]")]
    [InlineData("never_releasable", "0", "1")]
    public void An_outcome_altered_in_every_place_that_tells_of_it_is_found_by_deciding_again(string column, string from, string to)
    {
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        _visits.Import(Visit("V-2", "2026-11-02"));
        Rewrite(column, from, to);
        using (var register = DocumentRegister.OpenToRead(_visits.Register, Today))
            Assert.Empty(register.Check());
        Assert.Contains(
            "Visit 1 (V-1): of CON-02 is stored",
            Assert.Single(Check().Faults, f => f.StartsWith("Visit 1 ", StringComparison.Ordinal)),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Said_to_be_decided_before_what_withdrew_it_was_known_is_found()
    {
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        _visits.Import(Visit("V-2", "2026-11-02"));
        Alter("UPDATE visit SET seen = 0 WHERE visit = 2", entry => entry.Replace("\"seen\":2", "\"seen\":0", StringComparison.Ordinal));
        Assert.Contains("Visit 2 is said to have been decided without what was stored before it.", Check().Faults, StringComparer.Ordinal);
    }

    [Fact]
    public void What_another_version_decided_otherwise_is_a_note()
    {
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        Rewrite("codes", "[\"W6\"]", "[\"W2\"]");
        Alter("UPDATE visit SET version = '0.0.1'", entry =>
            entry.Replace($"\"version\":\"{ProgramVersion.Current}\"", "\"version\":\"0.0.1\"", StringComparison.Ordinal)
        );
        var found = Check();
        Assert.Empty(found.Faults);
        Assert.Contains(
            "It was decided by version 0.0.1; this one decides otherwise.",
            Assert.Single(found.Notes, n => n.StartsWith("Visit 1", StringComparison.Ordinal)),
            StringComparison.Ordinal
        );
        Assert.Equal((1, 1), (found.DecidedByOthers, found.DecidedOtherwise));
    }

    [Fact]
    public void A_trigger_of_somebody_else_s_is_found_and_a_guard_taken_away_is_told()
    {
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        Execute("CREATE TRIGGER kinder AFTER INSERT ON outcome BEGIN UPDATE outcome SET outcome = 'fit'; END");
        Assert.Equal(
            "The trigger kinder of the database is not this program's, or was altered or switched off.",
            Assert.Single(Check().Faults)
        );
        Execute("DROP TRIGGER kinder; DROP TRIGGER outcome_is_kept");
        Assert.Equal("Guards against change were taken away: outcome_is_kept.", Assert.Single(Check().Notes));
        Execute("CREATE TRIGGER outcome_is_kept BEFORE DELETE ON outcome WHEN 0 BEGIN SELECT 1; END");
        Assert.StartsWith("The trigger outcome_is_kept", Assert.Single(Check().Faults), StringComparison.Ordinal);
        Execute("DROP TRIGGER outcome_is_kept; CREATE VIEW kinder AS SELECT * FROM outcome");
        Assert.Equal("The table or view kinder of the database is not this program's.", Assert.Single(Check().Faults));
    }

    [Fact]
    public void The_last_visits_cut_off_with_all_that_tells_of_them_are_found_by_a_checkpoint_kept_elsewhere()
    {
        _visits.Import(Visit("V-1", "2026-05-11"));
        _visits.Import(Visit("V-2", "2026-11-02", withdraw: true));
        Checkpoint kept;
        using (var register = DocumentRegister.OpenToRead(_visits.Register, Today))
            kept = register.Checkpoint()!;
        Cut(visit: 2);
        Assert.Empty(Check().Faults);
        Assert.StartsWith("The log was cut: the exported checkpoint", Assert.Single(Check(kept).Faults), StringComparison.Ordinal);
    }

    private RegisterCheckResult Check(params Checkpoint[] kept)
    {
        using var register = DocumentRegister.OpenToRead(_visits.Register, Today);
        return CheckRegister.Run(register, kept, KnownRules.BuiltIn);
    }

    /// <summary>Alters what was decided of the first visit, in its row and in the log, and all that follows from the log.</summary>
    private void Rewrite(string column, string from, string to)
    {
        var (member, old, altered) = column switch
        {
            "never_releasable" => ("\"outcome\"", "\"outcome\":\"withdraw\"", "\"neverReleasable\":true,\"outcome\":\"withdraw\""),
            "codes" => ("\"codes\"", $"\"codes\":{from}", $"\"codes\":{to}"),
            _ => ("\"outcome\"", $"\"outcome\":\"{from}\"", $"\"outcome\":\"{to}\""),
        };
        var done = false;
        Alter(
            $"UPDATE outcome SET {column} = {(column == "never_releasable" ? to : $"'{to}'")} WHERE visit = 1 AND {column} = "
                + $"{(column == "never_releasable" ? from : $"'{from}'")}",
            entry =>
            {
                if (done || !entry.Contains("\"visit\":1,", StringComparison.Ordinal) || !entry.Contains(member, StringComparison.Ordinal))
                    return entry;
                done = true;
                var whole = JsonNode.Parse(entry)!;
                Assert.Contains(old, entry, StringComparison.Ordinal);
                return column == "never_releasable" ? NeverReleasable(entry) : entry.Replace(old, altered, StringComparison.Ordinal);
            }
        );
        Assert.True(done, "No entry of the log was altered.");
    }

    private static string NeverReleasable(string entry) =>
        entry.Replace(",\"outcome\":", ",\"neverReleasable\":true,\"outcome\":", StringComparison.Ordinal) is var altered
        && altered.Contains("nextBy", StringComparison.Ordinal)
            ? throw new InvalidOperationException("a withdrawn item has no next examination")
            : altered;

    private void Cut(int visit)
    {
        Alter($"DELETE FROM line_end WHERE by_visit = {visit}", entry =>
            entry.Contains($"\"byVisit\":{visit},", StringComparison.Ordinal) ? null : entry
        );
        foreach (
            var table in new[]
            {
                "person",
                "item",
                "makers_limits",
                "examination",
                "observation",
                "renewal",
                "outcome",
                "item_key",
                "visit_key",
            }
        )
            Alter($"DELETE FROM {table} WHERE visit = {visit}", entry => entry);
        Alter($"DELETE FROM visit WHERE visit = {visit}", entry =>
            entry.Contains($"\"visit\":{visit},", StringComparison.Ordinal) ? null : entry
        );
    }

    /// <summary>Alters rows and entries of the log, and writes every root and the count anew.</summary>
    private void Alter(string statement, Func<string, string?> alter)
    {
        using var connection = Connect();
        var guards = Read(connection, "SELECT sql FROM sqlite_schema WHERE type = 'trigger'", r => r.GetString(0));
        foreach (var name in Read(connection, "SELECT name FROM sqlite_schema WHERE type = 'trigger'", r => r.GetString(0)))
            Run(connection, $"DROP TRIGGER {name}");
        Run(connection, $"PRAGMA foreign_keys = OFF; {statement}");
        var entries = Read(connection, "SELECT entry FROM log ORDER BY position", r => Encoding.UTF8.GetString(r.GetFieldValue<byte[]>(0)))
            .Select(alter)
            .OfType<string>()
            .ToList();
        Run(connection, "DELETE FROM log; DELETE FROM checkpoint");
        var frontier = new MerkleFrontier();
        foreach (var entry in entries.Select(Encoding.UTF8.GetBytes))
        {
            Run(connection, "INSERT INTO log VALUES ($1, $2)", frontier.Size, entry);
            frontier.Append(MerkleTree.LeafHash(entry));
            Run(connection, "INSERT INTO checkpoint VALUES ($1, $2)", frontier.Size, Convert.ToBase64String(frontier.Root()));
        }
        Run(connection, "UPDATE register SET log_size = $1", frontier.Size);
        foreach (var guard in guards)
            Run(connection, guard);
    }

    private void Execute(string statement)
    {
        using var connection = Connect();
        Run(connection, statement);
    }

    private SqliteConnection Connect()
    {
        var connection = new SqliteConnection($"Data Source={_visits.Register};Pooling=False");
        connection.Open();
        return connection;
    }

    private static void Run(SqliteConnection connection, string statement, params object[] values)
    {
        using var command = connection.CreateCommand();
        command.CommandText = statement;
        for (var n = 0; n < values.Length; n++)
            command.Parameters.AddWithValue(FormattableString.Invariant($"${n + 1}"), values[n]);
        command.ExecuteNonQuery();
    }

    private static List<T> Read<T>(SqliteConnection connection, string statement, Func<SqliteDataReader, T> read)
    {
        using var command = connection.CreateCommand();
        command.CommandText = statement;
        using var reader = command.ExecuteReader();
        var rows = new List<T>();
        while (reader.Read())
            rows.Add(read(reader));
        return rows;
    }
}
