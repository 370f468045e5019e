using ExamDocs.Register.Model;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Tests.Issuing;
using ExamDocs.UseCases.Verifying;
using static ExamDocs.UseCases.Tests.Registered.HelmetVisits;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>A corrected record replaces the documents whose content it changes, and no other.</summary>
public sealed class OnlyWhatChangedTests : IDisposable
{
    private readonly HelmetVisits _visits = new();

    public void Dispose() => _visits.Dispose();

    [Fact]
    public async Task The_serial_of_one_helmet_replaces_one_report_and_says_why_and_all_else_verifies_as_current()
    {
        var first = await _visits.IssueAsync(Visit(Connector), PerItem);
        var printing = first.Documents.Where(d => _visits.TextOf(d).Contains("BM90115", StringComparison.Ordinal)).ToList();

        var second = await _visits.IssueAsync(SerialOfTwo(Connector), PerItem);

        var old = Assert.Single(printing, d => d.Kind is "report");
        var report = Assert.Single(second.Documents, d => d.IssuedNow && d.Kind is "report");
        Assert.Contains(Pdf.Squeeze($"Replaces {old.Number}: serial of HEL-02."), _visits.TextOf(report), StringComparison.Ordinal);
        var ended = first.Documents.Select(d => _visits.Find(d.Number)).Where(d => !d.IsCurrent).ToList();
        Assert.Equal(printing.Select(d => d.Number).Order(), ended.Select(d => d.Number).Order());
        Assert.All(ended, d => Assert.Equal((DocumentEnd.Replaced, "serial of HEL-02"), (d.Ended, d.EndedReason)));
        Assert.DoesNotContain(second.Remarks, r => r.Contains("earlier version", StringComparison.Ordinal));

        var verified = await VerifyDocuments.RunAsync(
            new VerifyRequest
            {
                Files = [.. Directory.EnumerateFiles(_visits.Out, "*.pdf").Order()],
                RegisterPath = _visits.Register,
                Now = NodaTime.Instant.FromUtc(2026, 6, 1, 0, 0),
                Browser = OpenBrowser.Instance,
            },
            TestContext.Current.CancellationToken
        );
        Assert.Equal(first.Documents.Count, verified.Count);
        Assert.All(verified, f => Assert.True(f.IsValid, f.Number));
        _visits.IsSound();
    }

    /// <summary>Its record has the withdrawal and the release, and so has the earlier version: they are told once.</summary>
    [Fact]
    public async Task What_was_withdrawn_and_released_by_the_record_itself_reads_the_same_in_each_version()
    {
        const string released = "ADJ-01";
        var first = await _visits.IssueAsync(Visit(released), ReportsPerItem);
        await _visits.IssueAsync(SerialOfTwo(released), ReportsPerItem);
        Assert.True(_visits.Find(Of(first, released).Number).IsCurrent);
        Assert.True(_visits.Find(Of(first, One).Number).IsCurrent);
        Assert.False(_visits.Find(Of(first, Two).Number).IsCurrent);
    }

    [Fact]
    public async Task Each_of_three_versions_replaces_what_it_changes_of_whichever_version_that_is()
    {
        var first = await _visits.IssueAsync(Visit(), ReportsPerItem);
        var second = await _visits.IssueAsync(SerialOfTwo(), ReportsPerItem);
        var third = SerialOfTwo();
        third.Item(One)["description"] = "Climbing helmet, red";
        var changed = Assert.Single((await _visits.IssueAsync(third, ReportsPerItem)).Documents, d => d.IssuedNow);
        Assert.Equal([Of(first, One).Number], _visits.Find(changed.Number).Replaces.Select(r => r.Number));
        Assert.Equal([Of(second, Two).Number, changed.Number], _visits.Current());

        // Back to what was typed first: both are issued once more, because what was replaced stays replaced.
        var back = await _visits.IssueAsync(Visit(), ReportsPerItem);
        Assert.All(back.Documents, d => Assert.True(d.IssuedNow));
        Assert.Equal(
            [(changed.Number, "description of HEL-01"), (Of(second, Two).Number, "serial of HEL-02")],
            back.Documents.SelectMany(d => _visits.Find(d.Number).Replaces).Select(r => (r.Number, r.Reason))
        );
        Assert.Equal(back.Documents.Select(d => d.Number), _visits.Current());
        _visits.IsSound();
    }

    [Fact]
    public async Task Reports_of_each_item_never_end_a_schedule_that_still_holds_nor_the_other_way_round()
    {
        var schedule = Assert.Single((await _visits.IssueAsync(Visit(), Reports)).Documents);
        // No report prints the day of purchase.
        var corrected = With(One, "purchased", "2023-09-06");
        var single = await _visits.IssueAsync(corrected, PerItem);
        Assert.True(_visits.Find(schedule.Number).IsCurrent);
        Assert.DoesNotContain(single.Remarks, r => r.Contains(schedule.Number, StringComparison.Ordinal));

        var again = await _visits.IssueAsync(corrected);
        Assert.Equal([schedule.Number], again.Documents.Where(d => d.Kind is "report").Select(d => d.Number));
        Assert.All(again.Documents, d => Assert.False(d.IssuedNow));
        Assert.All(single.Documents, d => Assert.True(_visits.Find(d.Number).IsCurrent));
        _visits.IsSound();
    }

    [Fact]
    public async Task A_schedule_replaces_the_report_of_the_item_that_changed_and_leaves_the_other()
    {
        var single = await _visits.IssueAsync(Visit(), ReportsPerItem);
        var schedule = Assert.Single((await _visits.IssueAsync(SerialOfTwo(), Reports)).Documents);
        Assert.Equal([Of(single, One).Number, schedule.Number], _visits.Current());
        Assert.Equal([Of(single, Two).Number], _visits.Find(schedule.Number).Replaces.Select(r => r.Number));
    }

    [Fact]
    public async Task A_schedule_that_no_longer_holds_is_replaced_by_the_reports_of_its_items()
    {
        var schedule = Assert.Single((await _visits.IssueAsync(Visit(), Reports)).Documents);
        var single = await _visits.IssueAsync(SerialOfTwo(), ReportsPerItem);
        var old = _visits.Find(schedule.Number);
        Assert.Equal((DocumentEnd.Replaced, "serial of HEL-02"), (old.Ended, old.EndedReason));
        Assert.Equal(single.Documents.Select(d => d.Number), old.ReplacedBy);
    }

    [Fact]
    public async Task An_item_more_or_less_makes_another_schedule()
    {
        var record = Visit();
        var one = Assert.Single((await _visits.IssueAsync(record.Only(One), Reports)).Documents);
        var both = Assert.Single((await _visits.IssueAsync(Visit(), Reports)).Documents);
        Assert.Equal([(one.Number, "addition of HEL-02; examinations of HEL-02")], Replaces(both));
        Assert.Equal([both.Number], _visits.Current());
    }

    [Fact]
    public async Task What_warns_of_another_item_stays_and_the_next_visit_names_its_label()
    {
        var first = await _visits.IssueAsync(Visit(Connector));
        var second = await _visits.IssueAsync(SerialOfTwo(Connector));
        Assert.Equal(
            first.Documents.Where(d => d.Items.Contains(Connector)).Select(d => d.Number),
            second.Documents.Where(d => d.Items.Contains(Connector) && !d.IssuedNow).Select(d => d.Number)
        );
        var next = Workspace.Example().Only(Connector);
        (next["visit"]!["reference"], next["visit"]!["examinedOn"], next["visit"]!["reportedOn"]) = ("V-9", "2026-11-02", "2026-11-02");
        next.ExaminationOf(Connector).Remove("examinedOn");
        var label = first.Documents.Single(d => d.Kind is "quarantine-label").Number;
        var later = await _visits.IssueAsync(next, r => r with { Only = ["quarantine-label"], Today = new(2026, 11, 2) });
        Assert.Contains(later.Inputs[0].Visit!.Items.Single().Reasons, r =>
            r.Code is "W10" && r.Text.Contains(label, StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task A_label_that_stayed_through_a_correction_ends_with_a_later_withdrawal()
    {
        var first = await _visits.IssueAsync(Visit(), r => r with { Only = ["due-label"] });
        await _visits.IssueAsync(SerialOfTwo(), r => r with { Only = ["due-label"] });
        var next = Visit().Only(One);
        (next["visit"]!["reference"], next["visit"]!["examinedOn"], next["visit"]!["reportedOn"]) = ("V-9", "2026-11-02", "2026-11-02");
        var examination = next.ExaminationOf(One);
        examination.Remove("examinedOn");
        examination.Remove("nextBy");
        examination["conclusion"] = "withdraw";
        await _visits.IssueAsync(next, r => r with { Today = new(2026, 11, 2) });
        Assert.Equal(DocumentEnd.Ended, _visits.Find(Of(first, One).Number).Ended);
        // Its serial number, which labels print, was the one corrected.
        Assert.Equal(DocumentEnd.Replaced, _visits.Find(Of(first, Two).Number).Ended);
    }

    private IEnumerable<(string Number, string Reason)> Replaces(Issued issued) =>
        _visits.Find(issued.Number).Replaces.Select(r => (r.Number, r.Reason));

    private static Issued Of(IssueResult result, string item) => result.Documents.Single(d => d.Items[0] == item);
}
