using ExamDocs.Register.Log;
using Microsoft.Data.Sqlite;

namespace ExamDocs.Register.Tests.Log;

/// <summary>
/// Somebody who has the file of a register takes its guards away and alters the log in it. The register's own check finds
/// every alteration that leaves something to disagree with; what was made to agree throughout is found by a checkpoint kept
/// elsewhere.
/// </summary>
public sealed class AttackedRegisterTests : Workplace
{
    private const int Issues = 12;

    /// <summary>The first entry says which register it is.</summary>
    private const int Entries = Issues + 1;

    /// <summary>Takes the last entries off, and everything that speaks of them.</summary>
    private const string CutThoroughly = """
        DELETE FROM checkpoint WHERE size > {0} + 1;
        UPDATE register SET log_size = {0} + 1;
        DELETE FROM content WHERE number IN (SELECT number FROM document WHERE sequence > {0});
        DELETE FROM document_item WHERE number IN (SELECT number FROM document WHERE sequence > {0});
        DELETE FROM document WHERE sequence > {0};
        UPDATE counter SET last = {0};
        DELETE FROM log WHERE position > {0};
        """;

    [Fact]
    public void Each_entry_altered_is_found() =>
        EachRow(row =>
            $"UPDATE log SET entry = CAST(replace(replace(CAST(entry AS TEXT), 'HB-014-B', 'HB-014-C'), '\"register\":\"', '\"register\":\"x') AS BLOB) WHERE position = {row}"
        );

    [Fact]
    public void Each_entry_whose_day_alone_was_altered_is_found() =>
        EachRow(row =>
            $"UPDATE log SET entry = CAST(replace(CAST(entry AS TEXT), '\"day\":\"2', '\"day\":\"3') AS BLOB) WHERE position = {row}"
        );

    [Fact]
    public void Each_entry_overwritten_with_rubbish_is_found() =>
        EachRow(row => $"UPDATE log SET entry = x'00ff7b22' WHERE position = {row}");

    [Fact]
    public void Each_entry_removed_is_found() => EachRow(row => $"DELETE FROM log WHERE position = {row}");

    [Fact]
    public void Each_entry_removed_and_the_rest_moved_up_is_found() =>
        EachRow(row =>
            $"DELETE FROM log WHERE position = {row}; UPDATE log SET position = position + 999 WHERE position > {row}; UPDATE log SET position = position - 1000 WHERE position > {row}"
        );

    [Fact]
    public void Each_entry_swapped_with_its_neighbour_is_found() =>
        EachRow(row =>
            $"UPDATE log SET position = 999 WHERE position = {row}; UPDATE log SET position = {row} WHERE position = {(row + 1) % Entries}; UPDATE log SET position = {(row + 1) % Entries} WHERE position = 999"
        );

    [Fact]
    public void A_tail_of_any_length_cut_off_is_found() => EachRow(row => $"DELETE FROM log WHERE position >= {row}");

    [Fact]
    public void A_tail_cut_off_with_its_roots_and_the_count_is_found_by_the_documents() =>
        EachRow(row =>
            $"DELETE FROM log WHERE position >= {row}; DELETE FROM checkpoint WHERE size > {row}; UPDATE register SET log_size = {row}"
        );

    [Fact]
    public void Each_root_altered_or_overwritten_is_found() =>
        EachRow(row =>
            $"UPDATE checkpoint SET root = {(row % 2 == 0 ? "'no root'" : $"(SELECT root FROM checkpoint WHERE size = {((row + 1) % Entries) + 1})")} WHERE size = {row + 1}"
        );

    [Fact]
    public void A_tail_cut_off_with_all_that_speaks_of_it_is_found_by_a_checkpoint_kept_elsewhere()
    {
        var exported = Prepare();
        for (var left = 1; left < Issues; left++)
        {
            Restore();
            Attack(
                CutThoroughly.Replace("{0}", left.ToString(System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal)
            );
            using var register = Open();
            Assert.Empty(register.Check());
            Assert.Contains("The log was cut: the exported checkpoint", Assert.Single(register.Check(exported)), StringComparison.Ordinal);
        }
    }

    private void EachRow(Func<int, FormattableString> attack)
    {
        Prepare();
        for (var row = 0; row < Entries; row++)
        {
            Restore();
            Attack(FormattableString.Invariant(attack(row)));
            using var register = Open();
            Assert.NotEmpty(register.Check());
        }
    }

    private string Kept => Path.Combine(Root, "kept.db");

    /// <summary>A register with a dozen documents out, sound; a copy of it is kept for each attack.</summary>
    private Checkpoint Prepare()
    {
        using (var register = Open())
        {
            for (var count = 0; count < Issues; count++)
                Issue(register, FormattableString.Invariant($"job {count}"));
        }
        using var again = Open();
        var checkpoint = again.Checkpoint();
        Assert.NotNull(checkpoint);
        Assert.Equal(Entries, checkpoint.Size);
        Assert.Empty(again.Check(checkpoint));
        again.BackUp(Kept);
        return checkpoint;
    }

    private void Restore()
    {
        File.Copy(Kept, Database, overwrite: true);
        using var register = Open();
        Assert.Empty(register.Check());
    }

    private void Attack(string statements)
    {
        using var connection = new SqliteConnection($"Data Source={Database};Pooling=False");
        connection.Open();
        Run(connection, "PRAGMA foreign_keys = OFF");
        foreach (var guard in Guards(connection))
            Run(connection, $"DROP TRIGGER {guard}");
        Assert.True(Run(connection, statements) > 0, "Nothing was altered.");
    }

    private static List<string> Guards(SqliteConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT name FROM sqlite_schema WHERE type = 'trigger'";
        using var reader = command.ExecuteReader();
        var names = new List<string>();
        while (reader.Read())
            names.Add(reader.GetString(0));
        return names;
    }

    private static int Run(SqliteConnection connection, string statements)
    {
        using var command = connection.CreateCommand();
        command.CommandText = statements;
        return command.ExecuteNonQuery();
    }
}
