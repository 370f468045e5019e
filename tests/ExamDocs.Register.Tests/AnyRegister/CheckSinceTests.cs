using ExamDocs.Register.Checking;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;

namespace ExamDocs.Register.Tests;

/// <summary>
/// A check that leaves out what an earlier one found sound: all that came later is looked at, the log must still begin as it did then, and
/// what is not in the log at all is found by counting.
/// </summary>
public sealed class CheckSinceTests : Workplace
{
    [Fact]
    public void What_was_entered_since_is_looked_at_and_the_rest_is_left_out()
    {
        using var register = Some(out var since);
        var late = Issue(register, "late").Number;
        register.Visits.Remember(SampleVisit.Of("V-3", "third"));
        Assert.Empty(Check(register, since).Faults);
        Assert.Equal(register.Checkpoint()!.Body(), Check(register, since).Log!.Body());

        TakeAwayGuard("issued_bytes_stay");
        TakeAwayGuard("outcome_is_never_changed");
        ByHand($"UPDATE content SET bytes = {Empty} WHERE number = $1", late);
        ByHand("UPDATE outcome SET outcome = 'fit-until' WHERE visit = 3 AND position = 0");
        Assert.Equal(
            [
                $"The register no longer holds {late} as it was issued.",
                "Visit 3: outcome of outcome is \"fit-until\", the log gives \"withdraw\".",
            ],
            Check(register, since).Faults
        );

        // Below it nothing of this is seen; a check of everything sees it.
        ByHand($"UPDATE content SET bytes = {Empty} WHERE number = 'R-2026-000001'");
        ByHand("UPDATE outcome SET outcome = 'fit-until' WHERE visit = 1 AND position = 0");
        Assert.Equal(2, Check(register, since).Faults.Count);
        Assert.Equal(4, Check(register, null).Faults.Count);
    }

    [Fact]
    public void What_happened_since_to_earlier_documents_and_visits_is_compared_with_all_their_entries()
    {
        using var register = Some(out var since);
        register.Withdraw("R-2026-000001", "sent to the wrong yard");
        register.Visits.Remember(SampleVisit.Of("V-3", "third") with { Ends = [new(1, "HB-014", new(2026, 9, 3), "was withdrawn")] });
        Assert.Empty(Check(register, since).Faults);
        TakeAwayGuard("what_is_issued_or_void_stays_so");
        ByHand("UPDATE document SET kind = 'notice' WHERE number = 'R-2026-000001'");
        Assert.Equal("R-2026-000001: the log has another kind.", Assert.Single(Check(register, since).Faults));
    }

    [Theory]
    [InlineData("log_is_never_changed", "UPDATE log SET entry = (SELECT entry FROM log WHERE position = 1) WHERE position = 2")]
    [InlineData("log_is_kept", "DELETE FROM log WHERE position = 1")]
    [InlineData("log_is_kept", "DELETE FROM log WHERE position > 0")]
    public void A_log_that_does_not_begin_as_it_did_is_found(string guard, string change)
    {
        using var register = Some(out var since);
        Issue(register, "late");
        TakeAwayGuard(guard);
        ByHand(change);
        Assert.Contains(Check(register, since).Faults, f =>
            f.Contains("The exported checkpoint of ", StringComparison.Ordinal) || f.StartsWith("The log was cut", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void The_log_and_the_roots_written_anew_are_found_by_the_file_alone()
    {
        using var register = Some(out var since);
        var other = new Checkpoint(since.Origin, since.Size, new byte[MerkleTree.HashLength]);
        Assert.Contains(
            $"The exported checkpoint of {since.Size} entries does not hold",
            Assert.Single(Check(register, other).Faults),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_document_or_visit_that_is_in_no_entry_is_found_by_counting()
    {
        using var register = Some(out var since);
        TakeAwayGuard("visits_are_kept");
        TakeAwayGuard("issued_bytes_are_kept");
        ByHand(
            """
            INSERT INTO visit (visit, sha256, stored_on, record) SELECT 9, sha256, stored_on, record FROM visit WHERE visit = 1
            """
        );
        Assert.Equal(
            "There are 3 visits, and 2 in the log: check all of the register, without --since.",
            Assert.Single(Check(register, since).Faults)
        );
        ByHand("DELETE FROM visit WHERE visit = 9");
        TakeAwayGuard("what_is_issued_or_void_stays_so");
        TakeAwayGuard("what_was_taken_stays_so");
        ByHand("UPDATE document SET state = 'pending' WHERE number = 'R-2026-000001'");
        Assert.StartsWith(
            "There are 2 documents issued or void, and 3 in the log",
            Assert.Single(Check(register, since).Faults),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Only_what_was_remembered_since_is_decided_again()
    {
        using var register = Some(out var since);
        register.Visits.Remember(SampleVisit.Of("V-3", "third"));
        var decided = new List<int>();
        register.Check(
            new RegisterCheckRequest
            {
                Since = since,
                Decide = (visit, _) =>
                {
                    decided.Add(visit.Visit);
                    return null;
                },
            }
        );
        Assert.Equal([3], decided);
    }

    private static RegisterCheckResult Check(DocumentRegister register, Checkpoint? since) =>
        register.Check(new RegisterCheckRequest { Since = since });

    /// <summary>Two documents, a void number and two visits, all found sound.</summary>
    private DocumentRegister Some(out Checkpoint since)
    {
        var register = Open();
        Issue(register, "a");
        Issue(register, "b");
        register.Void(Take(register, "void"), "the page could not be printed");
        register.Visits.Remember(SampleVisit.Of("V-1"));
        register.Visits.Remember(SampleVisit.Of("V-2", "another", "HB-020"));
        var found = Check(register, null);
        Assert.Empty(found.Faults);
        since = found.Log!;
        return register;
    }
}
