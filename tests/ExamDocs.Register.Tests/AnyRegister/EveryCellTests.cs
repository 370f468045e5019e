using ExamDocs.Core.Records;
using ExamDocs.Proof.Tests;
using ExamDocs.Register.Checking;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;
using NodaTime;

namespace ExamDocs.Register.Tests;

/// <summary>
/// Somebody takes all guards away and changes one cell, or deletes all rows of one table: the check of the register names it,
/// whichever table and column it was, and never breaks on what cannot be read.
/// </summary>
public sealed class EveryCellTests : Workplace
{
    private static readonly VisitToRemember[] Known =
    [
        SampleVisit.Of("V-1").Fit() with
        {
            Version = "1.2.3",
            AsOf = new(2026, 5, 11),
        },
        SampleVisit.Of("V-2", "another", "HB-020") with
        {
            Version = "1.2.3",
        },
        SampleVisit.Of("V-3", "third") with
        {
            Version = "1.2.3",
        },
    ];

    private static readonly string[] Texts = ["'2026-13-45'", "'{\"not'", "'fit-until'", "coalesce({0}, '') || 'x'"];

    [Fact]
    public void It_is_sound_before_anything_is_changed()
    {
        using var register = Populated();
        Assert.Equal(([], []), Check(register) is var found ? (found.Faults.ToArray(), found.Notes.ToArray()) : default);
        Assert.All(Tables(), table => Assert.True(Rows(table) > 0, $"Nothing is in {table}: changing it shows nothing."));
    }

    [Fact]
    public void All_rows_of_each_table_deleted_are_found()
    {
        using var register = Populated();
        foreach (var table in Tables())
            Found(register, $"DELETE FROM {table}", table);
    }

    [Fact]
    public void One_row_of_each_table_deleted_is_found()
    {
        using var register = Populated();
        foreach (var table in Tables())
            Found(register, $"DELETE FROM {table} WHERE {Row} = (SELECT max({Row}) FROM {table})", table);
    }

    [Fact]
    public void One_cell_of_each_column_changed_is_found()
    {
        using var register = Populated();
        var tried = 0;
        foreach (var (nth, (table, column, isNumber, isBytes)) in Tables().SelectMany(ColumnsOf).Index())
        {
            foreach (
                var value in isNumber ? ["{0} + 1000", "-7"]
                : isBytes ? [Empty]
                : Texts.Where((_, n) => IsEachTried || (n + nth) % 2 == 0)
            )
            {
                // A number that is not there plus a thousand is still not there.
                var where = isNumber ? $" WHERE {column} IS NOT NULL" : "";
                tried += Found(
                    register,
                    $"UPDATE {table} SET {column} = {value.Replace("{0}", column, StringComparison.Ordinal)} WHERE {Row} = "
                        + $"(SELECT min({Row}) FROM {table}{where})",
                    $"{table}.{column} = {value}"
                );
            }
            tried += Found(
                register,
                $"UPDATE {table} SET {column} = NULL WHERE {Row} = (SELECT min({Row}) FROM {table} WHERE {column} IS NOT NULL)",
                $"{table}.{column} emptied"
            );
        }
        Assert.True(tried > (IsEachTried ? 300 : 150), $"Only {tried} changes could be tried.");
        Assert.Empty(Check(register).Faults);
    }

    /// <summary>A server takes ten times as long: there a column gets two of the four texts, unless all is asked for.</summary>
    private bool IsEachTried => !PostgresAddress.IsOne(Database) || Effort.Full;

    /// <summary>Nodes of a log are kept once it is longer; <see cref="LogNodesTests"/> changes those.</summary>
    private IEnumerable<string> Tables() => EveryTable().Where(t => t is not "log_node");

    /// <returns>1 where the change could be made; the database itself refuses some.</returns>
    private int Found(DocumentRegister register, string change, string what)
    {
        if (!Changed(change, out var undo))
            return 0;
        using (undo)
            Assert.True(Check(register).Faults.Count > 0, $"Nothing was found of: {what}");
        return 1;
    }

    private static RegisterCheckResult Check(DocumentRegister register) =>
        register.Check(
            new RegisterCheckRequest
            {
                Read = bytes => Array.Find(Known, v => v.Json.AsSpan().SequenceEqual(bytes))?.Record,
                Decide = (_, bytes) =>
                    Array.Find(Known, v => v.Json.AsSpan().SequenceEqual(bytes)) is { } known ? new(known.Outcomes) : null,
                Version = "1.2.3",
            }
        );

    /// <summary>Something of everything that a register keeps.</summary>
    private DocumentRegister Populated()
    {
        var register = DocumentRegister.Open(Database, new LocalDate(2026, 5, 12));
        var visit = register.Visits.Remember(Known[0]).Visit;
        var report = Give(register, "R", "report", visit, "HB-014", "HB-014-B");
        var label = Give(register, "D", "due-label", visit, "HB-014");
        Give(register, "R", "report", visit, [new Replacement(report, "an address was wrong")], report, "HB-014");
        register.Void(Take(register, "void"), "the page could not be printed");
        register.Visits.Remember(Known[1] with { Ends = [new(visit, "HB-014", new(2026, 9, 3), "withdrawn")] });
        register.Withdraw(Give(register, "E", "equipment-record", visit, "HB-014"), "sent to the wrong yard");
        Assert.False(register.Find(label)!.IsCurrent);
        Another(register);
        register.MoveContent($"folder:{Path.Combine(Root, "kept")}");
        register.MoveContent("database");
        return register;
    }

    /// <summary>A visit that came from another register.</summary>
    private static void Another(DocumentRegister register)
    {
        using var transaction = register.Rows.Database.BeginWriting();
        register.Rows.VisitStore.TakeIn(new('a', 32), 7, Known[2], 7, new(2026, 5, 1));
        transaction.Commit();
    }

    private string Give(DocumentRegister register, string letter, string kind, int visit, params string[] items) =>
        Give(register, letter, kind, visit, [], null, items);

    private string Give(
        DocumentRegister register,
        string letter,
        string kind,
        int visit,
        IReadOnlyList<Replacement> replaces,
        string? copyOf,
        params string[] items
    )
    {
        var job = $"{kind} {copyOf} {string.Join(' ', items)}";
        var pending = register.Take(
            new(letter[0], 2026, kind, job, items, Out)
            {
                Visit = visit,
                Replaces = replaces,
                CopyOf = copyOf,
                Language = "en",
            }
        );
        return register.Publish(pending, Pdf(job), 1, $"{{{string.Join(',', items.Select(i => $"\"{i}\":\"fit\""))}}}").Number;
    }

    private long Rows(string table)
    {
        using var connection = Connect();
        return connection.Number($"SELECT count(*) FROM {table}");
    }
}
