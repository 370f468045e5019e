using NodaTime;

namespace ExamDocs.Register.Tests;

/// <summary>Visits that were decided together are stored together, with what they could know; the same again is not stored.</summary>
public sealed class RememberTests : Workplace
{
    [Fact]
    public void Visits_of_one_run_all_could_know_the_last_of_them()
    {
        using var register = DocumentRegister.Open(Database, new LocalDate(2026, 5, 12));
        register.Visits.Remember(SampleVisit.Of("V-1"));
        var asOf = new LocalDate(2026, 5, 11);
        Assert.Equal(
            [(2, true), (3, true)],
            register.Visits.Remember([SampleVisit.Of("V-2") with { Version = "9.8.7", AsOf = asOf }, SampleVisit.Of("V-3")])!
        );
        Assert.Equal([(1, null), (3, "9.8.7"), (3, null)], register.Visits.All().Select(v => (v.Seen!.Value, v.Version)));
        Assert.Equal([new(2026, 5, 12), asOf, new(2026, 5, 12)], register.Visits.All().Select(v => v.AsOf!.Value));
        Assert.Empty(register.Check());
    }

    [Fact]
    public void The_same_record_with_the_same_outcomes_is_not_stored_again()
    {
        using var register = Open();
        register.Visits.Remember([SampleVisit.Of("V-1"), SampleVisit.Of("V-2")]);
        Assert.Equal(
            [(2, false), (1, false), (3, true)],
            register.Visits.Remember([SampleVisit.Of("V-2"), SampleVisit.Of("V-1"), SampleVisit.Of("V-3")])!
        );
        Assert.Equal(3, register.Visits.All()[2].Seen);
    }

    [Fact]
    public void The_same_record_with_other_outcomes_is_a_further_version()
    {
        using var register = Open();
        var visit = SampleVisit.Of("V-1");
        register.Visits.Remember(visit);
        var other = visit with { Outcomes = [visit.Outcomes[0], visit.Outcomes[1] with { Codes = ["W1"] }] };
        Assert.Equal((2, true), register.Visits.Remember(other));
        Assert.Equal((2, false), register.Visits.Remember(other));
        Assert.Equal((3, true), register.Visits.Remember(visit));
        Assert.Equal(["W1 W6", "W1", "W1 W6"], register.Visits.OutcomesOf("HB-014-B").Select(o => string.Join(' ', o.Outcome.Codes)));
    }

    [Fact]
    public void One_reference_of_two_employers_is_two_visits()
    {
        using var register = Open();
        var (one, other) = (SampleVisit.Of("V-1"), SampleVisit.Of("V-1", "another"));
        other = other with
        {
            Record = other.Record with { Visit = other.Record.Visit with { Employer = new() { Name = "Brook Arborists" } } },
        };
        Assert.Equal([(1, true), (2, true)], register.Visits.Remember([one, other])!);
        Assert.Equal([(1, false), (2, false)], register.Visits.Remember([one, other])!);
    }

    [Fact]
    public void Nothing_is_stored_where_another_run_stored_a_visit_since()
    {
        using var register = Open();
        var known = register.Visits.Latest;
        using (var another = Open())
            another.Visits.Remember(SampleVisit.Of("V-1"));
        Assert.Null(register.Visits.Remember([SampleVisit.Of("V-2")], known));
        Assert.Equal([(2, true)], register.Visits.Remember([SampleVisit.Of("V-2")], register.Visits.Latest)!);
    }

    [Fact]
    public void A_register_has_an_identity_and_the_day_since_which_it_is_kept()
    {
        using var register = DocumentRegister.Open(Database, new LocalDate(2026, 5, 12));
        Assert.Matches("^[0-9a-f]{32}$", register.Identity);
        using var later = DocumentRegister.Open(Database, new LocalDate(2027, 5, 12));
        Assert.Equal((register.Identity, new LocalDate(2026, 5, 12)), (later.Identity, later.KeptSince));
        Assert.EndsWith(register.Identity, register.Checkpoint()!.Origin, StringComparison.Ordinal);
    }
}
