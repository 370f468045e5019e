using System.Text.Json.Nodes;
using ExamDocs.Core.Determination;
using ExamDocs.Register;
using ExamDocs.UseCases.Tests.Issuing;
using static ExamDocs.UseCases.Tests.Registered.Visits;

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
    public void A_corrected_record_of_the_same_day_takes_its_place()
    {
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        _visits.Import(Visit("V-1", "2026-05-11"));
        Assert.Equal(Outcome.Fit, _visits.Check(Visit("V-2", "2026-11-02")).Outcome);
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
    [InlineData("serial", "OTHER-1", true)] // the same employer: a serial typed otherwise frees nothing
    [InlineData("maker", "Other Maker", true)]
    public void With_the_same_employer_an_id_is_the_item(string member, string value, bool isOpen) => AssertSame(isOpen, employer: null, (member, value));

    [Theory]
    [InlineData("serial", "OTHER-1", false)]
    [InlineData("serial", null, true)] // not known: in doubt it is the same
    [InlineData("description", "Another word", true)]
    public void With_another_employer_it_is_another_item_only_where_a_particular_differs(string member, string? value, bool isOpen) =>
        AssertSame(isOpen, "Somebody Else Ltd", (member, value));

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

    [Fact]
    public void An_employer_spelt_with_other_spaces_and_capitals_is_the_same() =>
        AssertSame(isOpen: true, "BRACKWATER tree training & hire, ltd.".Replace("&", "and", StringComparison.Ordinal), ("serial", "OTHER-1"));

    [Fact]
    public void Withdrawn_under_another_id_the_same_marking_is_a_warning()
    {
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        var renamed = Visit("V-2", "2026-11-02");
        renamed.Item("CON-02")["id"] = "CON-77";
        renamed.ExaminationOf("CON-02")["item"] = "CON-77";
        var visit = CheckAgainstRegister.All([_visits.File(renamed)], Today, null, _visits.Register)[0].Visit!;
        Assert.Contains(visit.Findings, f => f.Code is "IDN010" && f.Message.Contains("CON-02", StringComparison.Ordinal));
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
        Assert.Throws<FileNotFoundException>(() => CheckAgainstRegister.All([_visits.File(Visit("V-1", "2026-05-11"))], Today, null, _visits.Register + "x"));

    [Fact]
    public void A_check_writes_nothing_into_the_register()
    {
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        var before = File.ReadAllBytes(_visits.Register);
        _visits.Check(Visit("V-2", "2026-11-02"));
        Assert.Equal(before, File.ReadAllBytes(_visits.Register));
    }

    private void AssertSame(bool isOpen, string? employer, (string Member, string? Value) edit)
    {
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        var record = Visit("V-2", "2026-11-02");
        record.Item("CON-02")[edit.Member] = edit.Value;
        if (employer is not null)
            record["visit"]!["employer"]!["name"] = employer;
        Assert.Equal(isOpen, _visits.Check(record).Reasons.Any(r => r.Code is "W10"));
    }

    private void AssertOpen(JsonObject record)
    {
        var item = _visits.Check(record);
        Assert.Equal(Outcome.Withdraw, item.Outcome);
        Assert.Contains("W10", item.Reasons.Select(r => r.Code), StringComparer.Ordinal);
    }

    private static (int, int) Counts(ImportResult result) => (result.New, result.Known);
}
