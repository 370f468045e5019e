using System.Text;
using ExamDocs.Core.Records;
using ExamDocs.Register.Checking;
using ExamDocs.Register.Log;
using ExamDocs.Register.Merging;
using ExamDocs.Register.Model;
using NodaTime;

namespace ExamDocs.Register.Tests;

/// <summary>
/// Two registers that numbered independently become one: nothing is lost, no number has two documents, and again changes nothing.
/// </summary>
public sealed class MergeTests : Workplace
{
    private readonly Dictionary<string, ExaminationRecord> _records = new(StringComparer.Ordinal);

    [Fact]
    public void Visits_and_documents_come_in_once_and_keep_their_numbers()
    {
        using var here = Open();
        using var other = Other();
        Issue(here, "R", "report", Remember(here, "V-1"), "HB-014");
        Issue(other, "D", "due-label", Remember(other, "V-2", "HB-020"), "HB-020");
        var result = Merge(here, other);
        Assert.Equal((1, 1, 0), (result.Visits, result.Documents, result.Known));
        Assert.Empty(result.Refused);
        var label = here.Find("D-2026-000001")!;
        Assert.Equal((other.Identity, 2, true), (label.Origin, label.Visit!.Value, label.IsCurrent));
        Assert.Equal(other.Content(other.FindByNumber("D-2026-000001")!), here.Content(here.FindByNumber("D-2026-000001")!));
        Assert.Equal([null, other.Identity], here.Visits.All().Select(v => v.Origin));
        AssertSound(here);
        AssertNothingChanges(here, other);
        Assert.Equal("D-2026-000002", Issue(here, "D", "due-label", 1, "HB-014"));
        AssertSound(here);
    }

    [Fact]
    public void Both_ways_round_each_knows_all_visits_and_both_stay_sound()
    {
        using var here = Open();
        using var other = Other();
        Remember(here, "V-1");
        Remember(other, "V-2", "HB-020");
        Merge(here, other);
        Merge(other, here);
        Assert.Equal((2, 2), (here.Visits.All().Count, other.Visits.All().Count));
        AssertSound(here);
        AssertSound(other);
        // Once more, and each has the other's numbers for all of them.
        Assert.Equal((0, 0), (Merge(here, other).Visits, Merge(other, here).Visits));
        AssertNothingChanges(here, other);
        AssertNothingChanges(other, here);
    }

    [Fact]
    public void Onto_itself_and_onto_its_copy_nothing_changes()
    {
        using var here = Open();
        Issue(here, "R", "report", Remember(here, "V-1"), "HB-014");
        using (var itself = DocumentRegister.OpenToRead(Database))
            AssertNothingChanges(here, itself);
        here.BackUp(Path.Combine(Root, "copy.db"));
        using var copy = DocumentRegister.OpenToRead(Path.Combine(Root, "copy.db"));
        AssertNothingChanges(here, copy);
    }

    [Fact]
    public void A_number_that_both_gave_out_stays_where_it_is_and_both_are_named()
    {
        using var here = Open();
        using var other = Other();
        Issue(here, "R", "report", Remember(here, "V-1"), "HB-014");
        Issue(other, "R", "report", Remember(other, "V-2", "HB-020"), "HB-020");
        Issue(other, "R", "report", 1, "HB-020-B");
        var result = Merge(here, other);
        Assert.Contains("R-2026-000001 (report of HB-020)", Assert.Single(result.Refused), StringComparison.Ordinal);
        Assert.Contains("that number is report of HB-014", result.Refused[0], StringComparison.Ordinal);
        Assert.Equal((1, 1), (result.Visits, result.Documents));
        Assert.Equal(["HB-014"], here.Find("R-2026-000001")!.Items);
        Assert.Equal("R-2026-000003", Issue(here, "R", "report", 1, "HB-014-B"));
        AssertSound(here);
    }

    [Fact]
    public void What_no_longer_holds_in_one_does_not_hold_in_the_other()
    {
        using var here = Open();
        Issue(here, "R", "report", Remember(here, "V-1"), "HB-014");
        Issue(here, "D", "due-label", 1, "HB-014");
        Issue(here, "E", "equipment-record", 1, "HB-014");
        here.BackUp(Path.Combine(Root, "copy.db"));
        using var copy = DocumentRegister.Open(Path.Combine(Root, "copy.db"));
        copy.Visits.Remember(SampleOf("V-2") with { Ends = [new(1, "HB-014", new(2026, 9, 3), "was withdrawn")] });
        copy.Withdraw("E-2026-000001", "wrong yard");
        Merge(here, copy);
        Assert.Equal(
            (DocumentEnd.Ended, DocumentEnd.Ended, DocumentEnd.Withdrawn),
            (here.Find("R-2026-000001")!.Ended, here.Find("D-2026-000001")!.Ended, here.Find("E-2026-000001")!.Ended)
        );
        Assert.Equal("was withdrawn", Assert.Single(here.EndedLines("D-2026-000001")).Why);
        AssertSound(here);
        AssertNothingChanges(here, copy);
    }

    [Fact]
    public void A_copy_in_which_others_went_on_has_its_own_visits_told_apart()
    {
        using var here = Open();
        Remember(here, "V-1");
        here.BackUp(Path.Combine(Root, "copy.db"));
        using var copy = DocumentRegister.Open(Path.Combine(Root, "copy.db"));
        Remember(here, "V-2", "HB-020");
        Remember(copy, "V-3", "HB-030");
        Assert.Equal((1, 1), Merge(here, copy) is var r ? (r.Visits, r.Known) : default);
        Assert.Equal(["V-1", "V-2", "V-3"], here.Visits.All().Select(v => v.Reference!));
        AssertSound(here);
        AssertNothingChanges(here, copy);
    }

    [Fact]
    public void What_a_visit_could_see_stays_what_it_could_see_where_it_was_decided()
    {
        using var here = Open();
        using var other = Other();
        Remember(here, "V-1");
        Remember(here, "V-2");
        Remember(other, "V-3");
        Remember(other, "V-4");
        Merge(here, other);
        var asked = SampleOf("V-9").Record;
        var merged = here.Visits.All()[2];
        Assert.Equal(("V-3", 1), (merged.Reference, merged.Seen!.Value));
        Assert.Equal(["V-3"], here.Visits.Touching(asked, merged.Seen, merged.Origin).Select(t => t.Visit.Reference!));
        Assert.Equal(["V-1", "V-2"], here.Visits.Touching(asked, 2).Select(t => t.Visit.Reference!));
        Assert.Equal(4, here.Visits.Touching(asked).Count);
    }

    [Fact]
    public void Over_a_third_register_nothing_comes_in_twice()
    {
        using var here = Open();
        using var other = Other();
        using var third = DocumentRegister.Open(Path.Combine(Root, "third.db"));
        Issue(other, "R", "report", Remember(other, "V-1"), "HB-014");
        Merge(third, other);
        Merge(here, third);
        Assert.Equal((0, 0), Merge(here, other) is var r ? (r.Visits, r.Documents) : default);
        Assert.Equal(other.Identity, here.Find("R-2026-000001")!.Origin);
        Assert.Equal(other.Identity, Assert.Single(here.Visits.All()).Origin);
        AssertSound(here);
    }

    [Fact]
    public void An_unsound_register_and_one_with_a_number_not_out_yet_are_refused_whole()
    {
        using var here = Open();
        using var other = Other();
        Remember(other, "V-1");
        other.Take(new('R', 2026, "report", "job", ["HB-014"], Out) { Visit = 1 });
        Assert.Contains("is not out yet", Assert.Single(Merge(here, other).Refused), StringComparison.Ordinal);
        Assert.Empty(here.Visits.All());
    }

    [Fact]
    public void Two_versions_of_one_visit_are_named()
    {
        using var here = Open();
        using var other = Other();
        Remember(here, "V-1");
        other.Visits.Remember(SampleOf("V-1", "corrected"));
        Assert.Contains(
            "V-1 is in both registers in different versions",
            Assert.Single(Merge(here, other).Remarks),
            StringComparison.Ordinal
        );
    }

    private DocumentRegister Other() => DocumentRegister.Open(Path.Combine(Root, "other.db"));

    private int Remember(DocumentRegister register, string reference, string id = "HB-014") =>
        register.Visits.Remember(SampleOf(reference, id: id)).Visit;

    private VisitToRemember SampleOf(string reference, string note = "pulled thread", string id = "HB-014")
    {
        var visit = SampleVisit.Of(reference, note, id);
        visit = visit.Fit() with { Json = Encoding.UTF8.GetBytes($"{Encoding.UTF8.GetString(visit.Json)} {id}"), Version = "1.2.3" };
        _records[Sha256Hex.Of(visit.Json)] = visit.Record;
        return visit;
    }

    private MergeResult Merge(DocumentRegister into, DocumentRegister from) => into.Merge(from, Read);

    private ExaminationRecord? Read(byte[] json) => _records.GetValueOrDefault(Sha256Hex.Of(json));

    private void AssertSound(DocumentRegister register) => Assert.Empty(register.Check(new RegisterCheckRequest { Read = Read }).Faults);

    private void AssertNothingChanges(DocumentRegister into, DocumentRegister from)
    {
        var before = into.Checkpoint()!.Size;
        var result = Merge(into, from);
        Assert.Equal((0, 0), (result.Visits, result.Documents));
        Assert.Equal(before, into.Checkpoint()!.Size);
        AssertSound(into);
    }

    private string Issue(DocumentRegister register, string letter, string kind, int visit, string item)
    {
        var job = $"{register.Identity} {letter} {visit} {item}";
        var pending = register.Take(new(letter[0], 2026, kind, job, [item], Path.Combine(Out, register.Identity)) { Visit = visit });
        return register.Publish(pending, Pdf(job), 1, $$"""{"{{item}}":"fit"}""").Number;
    }
}
