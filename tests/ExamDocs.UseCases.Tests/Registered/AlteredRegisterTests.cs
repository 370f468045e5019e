using System.Security.Cryptography;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Tests.Issuing;
using static ExamDocs.UseCases.Tests.Registered.Visits;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>
/// Somebody took the guards away and altered what the register knows of a withdrawn connector: nothing is decided, printed or stored
/// from it. Where the log was altered with it, what is found and what is not is said here too.
/// </summary>
public sealed class AlteredRegisterTests : IDisposable
{
    private readonly Visits _visits = new();

    public AlteredRegisterTests()
    {
        _visits.Import(Visit("V-0", "2025-11-13"));
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
    }

    public void Dispose() => _visits.Dispose();

    [Fact]
    public void As_it_was_stored_the_connector_stays_withdrawn() =>
        Assert.Equal(Outcome.Withdraw, _visits.Check(Visit("V-2", "2026-11-02")).Outcome);

    [Theory]
    [InlineData("UPDATE outcome SET outcome = 'fit', codes = '[]' WHERE visit = 2")]
    [InlineData("DELETE FROM outcome WHERE visit = 2")]
    [InlineData("UPDATE item SET serial = 'OTHER-1' WHERE visit = 2")]
    [InlineData("UPDATE item_key SET key = 's:OTHER-1' WHERE visit = 2 AND key LIKE 's:%'")]
    [InlineData("DELETE FROM item_key WHERE visit = 2")]
    [InlineData("DELETE FROM item WHERE visit = 2")]
    [InlineData("UPDATE visit SET employer = 'Somebody Else Ltd' WHERE visit = 2")]
    [InlineData("DELETE FROM line_end WHERE by_visit = 2")]
    [InlineData("PRAGMA foreign_keys = OFF; DELETE FROM visit WHERE visit = 2")]
    [InlineData("the record")]
    [InlineData("the record; UPDATE outcome SET outcome = 'fit', codes = '[]' WHERE visit = 2")]
    public async Task Nothing_comes_of_a_register_in_which_a_row_was_altered(string statement)
    {
        Alter(statement);
        Tampering.AssertNamed(Assert.Throws<RegisterAlteredException>(() => _visits.Check(Visit("V-2", "2026-11-02"))));
        Tampering.AssertNamed(await Assert.ThrowsAsync<RegisterAlteredException>(() => _visits.IssueAsync(Visit("V-2", "2026-11-02"))));
        Tampering.AssertNamed(Assert.Throws<RegisterAlteredException>(() => _visits.Import(Visit("V-2", "2026-11-02"))));
        Assert.NotEmpty(Faults());
        AssertNothingCame(visits: statement.Contains("FROM visit", StringComparison.Ordinal) ? 1 : 2);
    }

    [Fact]
    public async Task A_record_altered_into_the_one_that_is_decided_does_not_pass_for_it()
    {
        var same = Visit("V-2", "2026-11-02");
        Assert.Equal(Outcome.Withdraw, _visits.Check(same).Outcome);
        var sha256 = CheckAgainstRegister.All([_visits.File(same)], Today, KnownRules.BuiltIn, null)[0].Visit is { } visit
            ? RememberVisit.Of(visit).Json
            : [];
        Alter($"UPDATE visit SET sha256 = '{Convert.ToHexStringLower(SHA256.HashData(sha256))}' WHERE visit = 2");
        Tampering.AssertNamed(Assert.Throws<RegisterAlteredException>(() => _visits.Check(same)));
        Tampering.AssertNamed(await Assert.ThrowsAsync<RegisterAlteredException>(() => _visits.IssueAsync(same)));
        AssertNothingCame(visits: 2);
    }

    /// <summary>
    /// The entry alone says nothing of itself; its root does, to which the entries around it lead.
    /// </summary>
    [Fact]
    public async Task With_its_entry_altered_too_nothing_is_issued_and_the_check_of_the_register_finds_it()
    {
        Alter("UPDATE outcome SET outcome = 'fit', codes = '[]' WHERE visit = 2");
        Alter(
            "UPDATE log SET entry = CAST(replace(replace(CAST(entry AS TEXT), '\"withdraw\"', '\"fit\"'), '\"W6\"', '') AS "
                + "BLOB) WHERE CAST(entry AS TEXT) LIKE '%\"visit\":2,%'"
        );
        const string said = "its log is no longer as it was recorded";
        var checkedBefore = Assert.Throws<RegisterAlteredException>(() => _visits.Check(Visit("V-2", "2026-11-02")));
        Assert.Contains(said, checkedBefore.Message, StringComparison.Ordinal);
        var refused = await Assert.ThrowsAsync<RegisterAlteredException>(() => _visits.IssueAsync(Visit("V-2", "2026-11-02")));
        Assert.Contains(said, refused.Message, StringComparison.Ordinal);
        Assert.NotEmpty(Faults());
        AssertNothingCame(visits: 2);
    }

    /// <summary>A visit that is gone is missed by its number, whatever was done to its entry or put in its place.</summary>
    [Theory]
    [InlineData("DELETE FROM log WHERE CAST(entry AS TEXT) LIKE '%\"visit\":1,\"what\":\"remembered\"}'")]
    [InlineData(
        "UPDATE log SET entry = CAST(replace(CAST(entry AS TEXT), '\"remembered\"', '\"rememberee\"') AS BLOB) WHERE "
            + "CAST(entry AS TEXT) LIKE '%\"visit\":1,\"what\":\"remembered\"}'"
    )]
    [InlineData("PRAGMA ignore_check_constraints = ON; INSERT INTO visit (visit, sha256, stored_on, record) VALUES (-2, '', '', x'')")]
    public async Task A_visit_that_was_deleted_is_missed_when_its_entry_was_altered_too_or_another_row_makes_up_the_count(string statement)
    {
        using var visits = new Visits();
        visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        visits.ImportOthers(0, 130);
        Tampering.Alter(visits.Register, statement);
        foreach (
            var table in (string[])["item_key", "visit_key", "item", "outcome", "observation", "examination", "person", "makers_limits"]
        )
            Tampering.Alter(visits.Register, $"PRAGMA foreign_keys = OFF; DELETE FROM {table} WHERE visit = 1");
        Tampering.Alter(visits.Register, "PRAGMA foreign_keys = OFF; DELETE FROM visit WHERE visit = 1");
        Assert.Throws<RegisterAlteredException>(() => visits.Check(Visit("V-2", "2026-11-02")));
        await Assert.ThrowsAsync<RegisterAlteredException>(() => visits.IssueAsync(Visit("V-2", "2026-11-02")));
    }

    /// <summary>Of the visits that touch a record their own rows and entries are read, not the log.</summary>
    [Fact]
    public void Entries_are_found_by_an_index()
    {
        var index = Assert.Single(Read("SELECT sql FROM sqlite_schema WHERE name = 'log_by_visit'", 0));
        var expression = index[(index.IndexOf("((", StringComparison.Ordinal) + 2)..^2];
        Assert.Contains(
            "log_by_visit",
            Assert.Single(
                Read(
                    $"EXPLAIN QUERY PLAN SELECT position, entry FROM log WHERE {expression} IN (SELECT value FROM "
                        + "json_each('[1]')) ORDER BY position",
                    3
                ),
                line => line.Contains(" log ", StringComparison.Ordinal)
            ),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "log_by_visit",
            Assert.Single(
                Read($"EXPLAIN QUERY PLAN SELECT {expression} FROM log WHERE {expression} > 0 ORDER BY {expression} DESC LIMIT 1", 3)
            ),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "item_by_serial",
            Assert.Single(Read("EXPLAIN QUERY PLAN SELECT visit FROM item WHERE serial IN ('x')", 3)),
            StringComparison.Ordinal
        );
    }

    private void AssertNothingCame(int visits)
    {
        Assert.False(Directory.Exists(_visits.Out) && Directory.EnumerateFileSystemEntries(_visits.Out).Any());
        using var register = DocumentRegister.OpenToRead(_visits.Register, Today);
        Assert.Empty(register.Documents());
        Assert.Equal(visits, register.Visits.All().Count);
    }

    private IReadOnlyList<string> Faults()
    {
        using var register = DocumentRegister.OpenToRead(_visits.Register, Today);
        return CheckRegister.Run(register, [], KnownRules.BuiltIn).Faults;
    }

    private void Alter(string statement) => Tampering.Alter(_visits.Register, statement);

    private List<string> Read(string statement, int column) => Tampering.Read(_visits.Register, statement, column);
}
