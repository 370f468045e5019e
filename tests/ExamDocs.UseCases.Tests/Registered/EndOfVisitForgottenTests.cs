using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Tests.Issuing;
using ExamDocs.UseCases.Verifying;
using static ExamDocs.UseCases.Tests.Registered.Visits;
using Outcome = ExamDocs.Core.Records.Outcome;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>
/// An entry of the log that was made to be about something else is found by nobody who looks for it by what it was about. A check of the
/// whole register finds it.
/// </summary>
public sealed class EndOfVisitForgottenTests : IDisposable
{
    private readonly Visits _visits = new();

    public void Dispose() => _visits.Dispose();

    /// <summary>The visit that was stored last: no later one shows that there is a gap.</summary>
    [Fact]
    public async Task The_last_visit_withdrew_and_was_deleted_and_its_entries_are_about_another_visit_now()
    {
        var report = await ReportAsync();
        _visits.ImportOthers(0, 3);
        FillBlocks();
        _visits.Import(Visit("V-1", "2026-06-12", withdraw: true));
        FillBlocks();
        Assert.Equal(Verdict.NotValid, await VerifyAsync(report));
        Assert.Equal(Outcome.Withdraw, _visits.Check(Visit("V-2", "2026-11-02")).Outcome);

        Rewrite("\"visit\":5", "\"visit\":4", "%\"what\":\"remembered\"%");
        Rewrite("\"byVisit\":5", "\"byVisit\":4", "%\"byVisit\":5%");
        Rewrite("-000001\"", "-000007\"", "%ended\"%");
        foreach (
            var table in (string[])["person", "item", "makers_limits", "observation", "examination", "item_key", "visit_key", "outcome"]
        )
            Tampering.Alter(_visits.Register, $"DELETE FROM {table} WHERE visit = 5");
        Tampering.Alter(_visits.Register, "DELETE FROM line_end WHERE by_visit = 5");
        Tampering.Alter(_visits.Register, "DELETE FROM ended_line WHERE by_visit = 5");
        Tampering.Alter(_visits.Register, "DELETE FROM visit WHERE visit = 5");
        Tampering.Alter(_visits.Register, "UPDATE document SET ended = NULL, ended_on = NULL, ended_reason = NULL WHERE ended IS NOT NULL");

        AssertCheckFinds();
    }

    /// <summary>No visit knows of it: it is in the row and in one entry alone.</summary>
    [Fact]
    public async Task The_document_was_withdrawn_by_hand_and_the_entry_is_about_another_number_now()
    {
        var report = await ReportAsync();
        FillBlocks();
        using (var register = DocumentRegister.Open(_visits.Register, Today))
            Assert.True(register.Withdraw("R-2027-000001", "typed against the wrong connector"));
        FillBlocks();
        Assert.Equal(Verdict.NotValid, await VerifyAsync(report));

        Rewrite("-000001\"", "-000007\"", "%\"what\":\"withdrawn\"%");
        Tampering.Alter(_visits.Register, "UPDATE document SET ended = NULL, ended_on = NULL, ended_reason = NULL WHERE ended IS NOT NULL");

        AssertCheckFinds();
    }

    private void AssertCheckFinds()
    {
        using var register = DocumentRegister.OpenToRead(_visits.Register);
        Assert.NotEmpty(register.Check());
    }

    private async Task<string> ReportAsync() =>
        _visits.FileOf(Assert.Single((await _visits.IssueAsync(Visit("V-0", "2026-05-11"), only: "report")).Documents));

    /// <summary>Numbers that became void: their entries fill whole blocks of the log.</summary>
    private void FillBlocks()
    {
        using var register = DocumentRegister.Open(_visits.Register, Today);
        foreach (var n in Enumerable.Range(0, 130))
            register.Void(register.Take(new('N', 2027, "notice", $"{Guid.NewGuid()}", ["ZQ-1"], Folder: null)), "tried");
    }

    private void Rewrite(string from, string to, string like) =>
        Tampering.Alter(
            _visits.Register,
            $"UPDATE log SET entry = CAST(replace(CAST(entry AS TEXT), '{from}', '{to}') AS BLOB) WHERE CAST(entry AS TEXT) LIKE '{like}'"
        );

    private async Task<Verdict> VerifyAsync(string file) => (await _visits.VerifyAsync(file)).Verdict;
}
