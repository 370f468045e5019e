using ExamDocs.Core.Records;
using ExamDocs.Register.Checking;
using ExamDocs.Register.Model;

namespace ExamDocs.Register.Tests;

/// <summary>
/// The guards are gone and a row of a visit was altered: the visit is not given to whoever wants to decide by it. Nobody has to read
/// the whole log for that.
/// </summary>
public sealed class AsLoggedTests : Workplace
{
    private static readonly VisitToRemember[] Known =
    [
        SampleVisit.Of("V-1") with
        {
            Version = "1.2.3",
        },
        SampleVisit.Of("V-2", "another") with
        {
            Version = "1.2.3",
            Ends = [new(1, "HB-014", new(2026, 9, 3), "was withdrawn")],
        },
        Apart(SampleVisit.Of("V-3", "a third", "XX-1")),
    ];

    [Theory]
    [InlineData("UPDATE outcome SET outcome = 'fit', codes = '[]' WHERE visit = 2")]
    [InlineData("UPDATE outcome SET codes = '[]' WHERE visit = 2 AND position = 1")]
    [InlineData("UPDATE outcome SET never_releasable = 0 WHERE visit = 2")]
    [InlineData("UPDATE outcome SET item = 'HB-9' WHERE visit = 2")]
    [InlineData("DELETE FROM outcome WHERE visit = 2 AND position = 1")]
    [InlineData("DELETE FROM outcome WHERE visit = 2")]
    [InlineData("UPDATE item SET serial = '0008' WHERE visit = 2")]
    [InlineData("UPDATE item SET id = 'HB-9' WHERE visit = 2 AND position = 0")]
    [InlineData("DELETE FROM item WHERE visit = 2")]
    [InlineData("UPDATE item_key SET key = 's:9' WHERE visit = 2 AND key = 's:7'")]
    [InlineData("DELETE FROM item_key WHERE visit = 2")]
    [InlineData("UPDATE visit SET employer = 'Somebody Else' WHERE visit = 2")]
    [InlineData("UPDATE visit SET examined_on = '2020-01-01' WHERE visit = 2")]
    [InlineData("UPDATE visit SET reference = NULL WHERE visit = 2")]
    [InlineData("UPDATE visit SET seen = 1 WHERE visit = 2")]
    [InlineData("UPDATE visit SET record = {0} WHERE visit = 2")]
    [InlineData(
        "UPDATE visit SET record = {0}, sha256 = '6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d' WHERE visit = 2"
    )]
    [InlineData("UPDATE visit SET sha256 = '6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d' WHERE visit = 2")]
    [InlineData("UPDATE observation SET state = 'clear' WHERE visit = 2")]
    [InlineData("UPDATE examination SET conclusion = 'fit' WHERE visit = 2")]
    [InlineData("DELETE FROM line_end WHERE by_visit = 2")]
    [InlineData("DELETE FROM visit WHERE visit = 2")]
    [InlineData("UPDATE log SET entry = {0} WHERE position = (SELECT max(position) - 2 FROM log)")]
    public void A_visit_that_was_altered_is_not_given(string statement)
    {
        using var register = Populated();
        Assert.Equal([1, 2], Touching(register));
        Assert.True(Changed(statement.Replace("{0}", Empty, StringComparison.Ordinal), out var undo), "It could not be changed.");
        using (undo)
        {
            var refused = Assert.Throws<RegisterAlteredException>(() => Touching(register));
            Assert.StartsWith("The register was altered or damaged: visit 2 (", refused.Message, StringComparison.Ordinal);
            Assert.Contains(
                "Run examdocs register check, and restore the register from the backup.",
                refused.Message,
                StringComparison.Ordinal
            );
        }
        Assert.Equal([1, 2], Touching(register));
    }

    [Fact]
    public void One_found_by_its_serial_number_alone_is_looked_at_though_its_key_was_altered()
    {
        using var register = Populated();
        var other = new ExaminationRecord { Items = [new() { Id = "NEW-1", Serial = "0007" }] };
        Assert.Equal([1, 2], Touching(register, other));
        Assert.True(Changed("UPDATE item_key SET key = 's:9' WHERE key LIKE 's:%'", out var undo));
        using (undo)
            Assert.Throws<RegisterAlteredException>(() => Touching(register, other));
    }

    [Fact]
    public void The_last_visit_gone_with_all_its_rows_is_missed()
    {
        using var register = Populated();
        Assert.True(Changed("DELETE FROM visit WHERE visit = 3", out var undo));
        using (undo)
            Assert.Contains(
                "visit 3 (stored on 2026-05-12) is no longer",
                Assert.Throws<RegisterAlteredException>(() => Touching(register)).Message,
                StringComparison.Ordinal
            );
    }

    /// <summary>What a decision does not use is left to the check of the register, which looks at every row.</summary>
    [Fact]
    public void One_that_does_not_touch_the_record_keeps_nobody_from_deciding()
    {
        using var register = Populated();
        Assert.True(Changed("UPDATE observation SET state = 'clear' WHERE visit = 3", out var undo));
        using (undo)
        {
            Assert.Equal([1, 2], Touching(register));
            Assert.NotEmpty(register.Check(new RegisterCheckRequest { Read = bytes => Read(0, bytes) }).Faults);
        }
    }

    [Fact]
    public void Nothing_is_stored_over_a_log_that_does_not_have_its_root()
    {
        Populated().Dispose();
        Assert.True(Changed("UPDATE checkpoint SET root = 'x' WHERE size = (SELECT max(size) FROM checkpoint)", out var undo));
        using (undo)
        using (var register = Open())
        {
            Assert.Throws<RegisterAlteredException>(() => register.Visits.Remember(SampleVisit.Of("V-4")));
            Assert.Equal(3, register.Visits.Latest);
        }
    }

    [Fact]
    public void Without_the_indexes_the_same_is_found()
    {
        Populated().Dispose();
        ByHand("DROP INDEX log_by_visit");
        ByHand("DROP INDEX item_by_serial");
        using (var register = DocumentRegister.OpenToRead(Database))
        {
            Assert.Equal([1, 2], Touching(register));
            Assert.True(Changed("UPDATE outcome SET outcome = 'fit' WHERE visit = 2", out var undo));
            using (undo)
                Assert.Throws<RegisterAlteredException>(() => Touching(register));
        }
    }

    /// <summary>Nothing of it has a marking in common with another visit's.</summary>
    private static VisitToRemember Apart(VisitToRemember visit) =>
        visit with
        {
            Record = visit.Record with
            {
                Items = [.. visit.Record.Items.Select((i, n) => i with { Serial = FormattableString.Invariant($"X{n}") })],
            },
        };

    private static int[] Touching(DocumentRegister register, ExaminationRecord? record = null) =>
        [
            .. register
                .Visits.AsLogged(Read)
                .Touching(record ?? new() { Items = [new() { Id = "HB-014" }, new() { Id = "HB-014-B" }] })
                .Select(v => v.Visit.Visit),
        ];

    private static ExaminationRecord? Read(int visit, byte[] bytes) => Array.Find(Known, v => v.Json.AsSpan().SequenceEqual(bytes))?.Record;

    private DocumentRegister Populated()
    {
        var register = DocumentRegister.Open(Database, new(2026, 5, 12));
        foreach (var visit in Known)
            register.Visits.Remember(visit);
        return register;
    }
}
