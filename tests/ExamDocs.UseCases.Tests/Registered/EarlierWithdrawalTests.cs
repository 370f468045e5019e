using System.Text.Json.Nodes;
using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Tests.Issuing;
using static ExamDocs.UseCases.Tests.Registered.Visits;
using Outcome = ExamDocs.Core.Records.Outcome;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>A withdrawal that only the register knows of holds as one on the record does (W10).</summary>
public sealed class EarlierWithdrawalTests : IDisposable
{
    private readonly Visits _visits = new();

    public void Dispose() => _visits.Dispose();

    [Fact]
    public void Without_history_the_connector_is_fit()
    {
        _visits.Import(Visit("V-0", "2025-05-11"));
        Assert.Equal(Outcome.Fit, _visits.Check(Visit("V-2", "2026-11-02")).Outcome);
    }

    [Fact]
    public void What_was_withdrawn_stays_withdrawn_however_clear_the_next_examination()
    {
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        AssertOpen(Visit("V-2", "2026-11-02"));
    }

    [Fact]
    public void A_release_ends_it_and_the_visits_after_need_none()
    {
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        Assert.Equal(Outcome.Fit, _visits.Check(Released(Visit("V-2", "2026-11-02"))).Outcome);
        _visits.Import(Released(Visit("V-2", "2026-11-02")));
        Assert.Equal(Outcome.Fit, _visits.Check(Visit("V-3", "2027-04-02")).Outcome);
    }

    [Fact]
    public void A_visit_that_did_not_know_of_it_does_not_end_it()
    {
        _visits.Import(Visit("V-2", "2026-11-02"));
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        AssertOpen(Visit("V-3", "2027-04-02"));
    }

    [Fact]
    public void Withdrawn_on_account_of_it_alone_is_not_a_second_withdrawal_to_be_released()
    {
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        _visits.Import(Visit("V-2", "2026-11-02"));
        AssertOpen(Visit("V-3", "2027-04-02"));
        Assert.Equal(Outcome.Fit, _visits.Check(Released(Visit("V-3", "2027-04-02"))).Outcome);
    }

    [Fact]
    public void A_corrected_record_of_the_same_day_releases_nothing()
    {
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        AssertOpen(Visit("V-1", "2026-05-11"));
        _visits.Import(Visit("V-1", "2026-05-11"));
        AssertOpen(Visit("V-2", "2026-11-02"));
        Assert.Equal(Outcome.Fit, _visits.Check(Released(Visit("V-2", "2026-11-02"))).Outcome);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Of_versions_of_one_record_imported_in_one_go_each_withdrawal_counts(bool withdrawsAtLast)
    {
        var files = (string[])
            [
                _visits.File(Visit("V-1", "2026-05-11", withdraw: !withdrawsAtLast)),
                _visits.File(Visit("V-1", "2026-05-11", withdraw: withdrawsAtLast)),
            ];
        Assert.Equal((2, 0), Counts(ImportVisits.Run(files, _visits.Register, Today, KnownRules.BuiltIn)));
        AssertOpen(Visit("V-2", "2026-11-02"));
    }

    [Fact]
    public void A_corrected_record_that_leaves_the_item_out_ends_nothing()
    {
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        var without = Visit("V-1", "2026-05-11");
        without.Item("CON-02")["id"] = "CON-99";
        without.ExaminationOf("CON-02")["item"] = "CON-99";
        _visits.Import(without);
        AssertOpen(Visit("V-2", "2026-11-02"));
    }

    [Fact]
    public void The_same_record_again_is_known_and_an_older_version_read_again_counts_again()
    {
        Assert.Equal((1, 0), Counts(_visits.Import(Visit("V-1", "2026-05-11", withdraw: true))));
        Assert.Equal((0, 1), Counts(_visits.Import(Visit("V-1", "2026-05-11", withdraw: true))));
        _visits.Import(Visit("V-1", "2026-05-11"));
        Assert.Equal((1, 0), Counts(_visits.Import(Visit("V-1", "2026-05-11", withdraw: true))));
        AssertOpen(Visit("V-2", "2026-11-02"));
    }

    [Fact]
    public void The_same_visit_again_does_not_stand_in_its_own_way()
    {
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        var again = _visits.Check(Visit("V-1", "2026-05-11", withdraw: true));
        Assert.Equal(["W6"], again.Reasons.Select(r => r.Code), StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("serial", "OTHER-1", "asked")] // the same owner: a serial typed otherwise frees nothing
    [InlineData("maker", "Other Maker", "asked")]
    [InlineData("serial", null, "W10")]
    [InlineData("description", "Another word", "W10")]
    public void With_the_same_owner_an_id_is_the_item_or_it_is_asked(string member, string? value, string expected) =>
        Assert.Equal(expected, Found(owner: null, (member, value)));

    [Theory]
    [InlineData("serial", "OTHER-1", "nothing")]
    [InlineData("serial", null, "asked")] // not known: it may be the same
    [InlineData("description", "Another word", "W10")]
    public void With_another_owner_it_is_another_item_only_where_a_particular_differs(string member, string? value, string expected) =>
        Assert.Equal(expected, Found("Somebody Else Ltd", (member, value)));

    [Theory]
    [InlineData("V-2", "2026-11-02")] // a later visit
    [InlineData("V-1", "2026-05-11")] // the same reference and day, by chance
    public void Another_employer_s_item_found_fit_ends_nothing(string reference, string day)
    {
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        var theirs = Visit(reference, day);
        theirs["visit"]!["employer"]!["name"] = "Somebody Else Ltd";
        theirs.Item("CON-02")["serial"] = "OTHER-1";
        _visits.Import(theirs);
        AssertOpen(Visit("V-3", "2027-04-02"));
        // Not even where the serial number is not known this time, so that it could be either.
        var unmarked = Visit("V-3", "2027-04-02");
        unmarked.Item("CON-02")["serial"] = null;
        AssertOpen(unmarked);
    }

    /// <summary>Two examiners on one day, or one who writes the day for a reference: nobody can tell which came first.</summary>
    [Theory]
    [InlineData("V-2", null)]
    [InlineData("V-1", "Somebody Else Ltd")]
    [InlineData("V-2", "Somebody Else Ltd")]
    public void Withdrawn_at_another_visit_of_the_same_day_it_is_withdrawn(string reference, string? employer)
    {
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        var same = Visit(reference, "2026-05-11");
        if (employer is not null)
            same["visit"]!["employer"]!["name"] = employer;
        AssertOpen(same);
        Assert.Equal(Outcome.Fit, _visits.Check(Released(same)).Outcome);
    }

    /// <summary>What a later visit withdrew on account of this one alone is no second withdrawal to this one.</summary>
    [Fact]
    public void A_withdrawal_that_rests_on_this_visit_s_own_says_nothing_of_it()
    {
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        _visits.Import(Visit("V-2", "2026-11-02"));
        Assert.Equal(["W6"], _visits.Check(Visit("V-1", "2026-05-11", withdraw: true)).Reasons.Select(r => r.Code));
        // This visit's own withdrawal holds the item once its record is corrected.
        AssertOpen(Visit("V-1", "2026-05-11"));
    }

    [Fact]
    public void A_record_without_a_reference_read_again_is_not_another_visit()
    {
        var record = Visit("V-1", "2026-05-11", withdraw: true);
        record["visit"]!.AsObject().Remove("reference");
        _visits.Import(record);
        Assert.DoesNotContain("W10", _visits.Check(record).Reasons.Select(r => r.Code), StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("2026-05-11", "2026-11-02")]
    [InlineData("2026-05-11", "2026-05-11")]
    public void Checked_in_one_go_what_one_visit_withdraws_holds_at_the_others(string first, string second)
    {
        var (withdrawing, after) = (_visits.File(Visit("V-1", first, withdraw: true)), _visits.File(Visit("V-2", second)));
        _visits.Import(Visit("V-0", "2025-05-11"));
        foreach (
            var order in (string[][])
                [
                    [withdrawing, after],
                    [after, withdrawing],
                ]
        )
        {
            var found = CheckAgainstRegister.All(order, Today, null, _visits.Register);
            Assert.Equal(order, found.Select(f => f.File));
            Assert.All(found, f => Assert.Equal(Outcome.Withdraw, f.Visit!.Items.Single(i => i.Item.Id is Item).Outcome));
            Assert.Equal(
                "W10",
                found
                    .Single(f => string.Equals(f.File, after, StringComparison.Ordinal))
                    .Visit!.Items.Single(i => i.Item.Id is Item)
                    .Reasons[0]
                    .Code
            );
        }
    }

    [Theory]
    [InlineData("2026-11-02", false)]
    [InlineData("2026-11-02", true)]
    [InlineData("2026-05-11", false)]
    [InlineData("2026-05-11", true)]
    public async Task Issued_in_one_go_too_and_a_second_run_issues_nothing(string day, bool isFirstNamed)
    {
        var (withdrawing, after) = (_visits.File(Visit("V-1", "2026-05-11", withdraw: true)), _visits.File(Visit("V-2", day)));
        string[] files = isFirstNamed ? [withdrawing, after] : [after, withdrawing];
        var issued = await _visits.IssueTogetherAsync(files);
        Assert.DoesNotContain(issued.Documents, d => d.Document.Kind is "certificate" or "due-label");
        var item = issued.Inputs[isFirstNamed ? 1 : 0].Visit!.Items.Single(i => i.Item.Id is Item);
        Assert.Equal((Outcome.Withdraw, "W10"), (item.Outcome, item.Reasons[0].Code));
        Assert.Contains(
            issued
                .Documents.Single(d =>
                    d.Document.Kind is "quarantine-label" && d.Document.Number.EndsWith("000001", StringComparison.Ordinal)
                )
                .Document.Number,
            item.Reasons[0].Text,
            StringComparison.Ordinal
        );
        var again = await _visits.IssueTogetherAsync(files);
        Assert.All(again.Documents, d => Assert.False(d.IssuedNow, d.Document.Kind));
        Assert.Equal(issued.Documents.Select(d => d.Document.Number), again.Documents.Select(d => d.Document.Number));
    }

    [Fact]
    public void An_owner_spelt_with_other_spaces_capitals_and_legal_form_is_the_same() =>
        Assert.Equal("asked", Found("QUILLMERE access hire, limited", ("serial", "OTHER-1")));

    [Fact]
    public void Withdrawn_under_another_id_the_same_marking_is_asked_about()
    {
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        var renamed = Visit("V-2", "2026-11-02");
        renamed.Item("CON-02")["id"] = "CON-77";
        renamed.ExaminationOf("CON-02")["item"] = "CON-77";
        var visit = CheckAgainstRegister.All([_visits.File(renamed)], Today, null, _visits.Register)[0].Visit!;
        Assert.Contains(visit.Findings, f => f.Code is "IDN011" && f.Message.Text.Contains("CON-02", StringComparison.Ordinal));
    }

    [Fact]
    public void An_examination_the_record_does_not_know_of_is_named_and_a_later_one_changes_nothing()
    {
        _visits.Import(Visit("V-1", "2026-05-11"));
        Assert.Contains(_visits.Check(Visit("V-2", "2026-11-02")).Findings, f => f.Code is "DAT017");
        _visits.Import(Visit("V-2", "2026-11-02"));
        Assert.DoesNotContain(_visits.Check(Visit("V-1", "2026-05-11")).Findings, f => f.Code is "DAT017");
    }

    [Fact]
    public void A_register_that_is_not_there_is_an_error_and_not_one_that_knows_nothing() =>
        Assert.Throws<FileNotFoundException>(() =>
            CheckAgainstRegister.All([_visits.File(Visit("V-1", "2026-05-11"))], Today, null, _visits.Register + "x")
        );

    [Fact]
    public void A_check_writes_nothing_into_the_register()
    {
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        var before = File.ReadAllBytes(_visits.Register);
        _visits.Check(Visit("V-2", "2026-11-02"));
        Assert.Equal(before, File.ReadAllBytes(_visits.Register));
    }

    /// <summary>Whether the next record of the connector finds it withdrawn, asks which it is, or says nothing.</summary>
    private string Found(string? owner, (string Member, string? Value) edit)
    {
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        var record = Visit("V-2", "2026-11-02");
        record.Item("CON-02")[edit.Member] = edit.Value;
        if (owner is not null)
            record["visit"]!["hiredFrom"]!["name"] = owner;
        var item = _visits.Check(record);
        return item.Reasons.Any(r => r.Code is "W10") ? "W10"
            : item.Findings.Any(f => f.Code is "IDN011") && item.Outcome is Outcome.Undetermined ? "asked"
            : "nothing";
    }

    private void AssertOpen(JsonObject record)
    {
        var item = _visits.Check(record);
        Assert.Equal(Outcome.Withdraw, item.Outcome);
        Assert.Contains("W10", item.Reasons.Select(r => r.Code), StringComparer.Ordinal);
    }

    private static (int, int) Counts(ImportResult result) => (result.New, result.Known);
}
