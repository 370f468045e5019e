using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Tests.Issuing;
using static ExamDocs.UseCases.Tests.Registered.Visits;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>What was issued from a record that was corrected is replaced or taken back, and both are linked.</summary>
public sealed class CorrectionTests : IDisposable
{
    private readonly Visits _visits = new();

    public void Dispose() => _visits.Dispose();

    [Fact]
    public async Task A_correction_takes_a_new_number_says_what_it_replaces_and_the_old_one_is_no_longer_current()
    {
        var first = await _visits.IssueAsync(Visit("V-1", "2026-05-11"));
        var corrected = Visit("V-1", "2026-05-11");
        corrected.Item(Item)["description"] = "Connector, oval, triple action";
        var second = await _visits.IssueAsync(corrected, reason: "the description was mistyped");

        var (old, report) = (One(first, "report"), One(second, "report"));
        Assert.Contains(
            Pdf.Squeeze($"Replaces {old.Document.Number}: the description was mistyped."),
            Pdf.Squeeze(Pdf.Text(_visits.FileOf(report))),
            StringComparison.Ordinal
        );
        using var register = DocumentRegister.Open(_visits.Register);
        var ended = register.Find(old.Document.Number)!;
        Assert.Equal((DocumentEnd.Replaced, "the description was mistyped"), (ended.Ended, ended.EndedReason));
        Assert.Equal([report.Document.Number], ended.ReplacedBy, StringComparer.Ordinal);
        Assert.Equal([old.Document.Number], register.Find(report.Document.Number)!.Replaces.Select(r => r.Number), StringComparer.Ordinal);
        Assert.False(File.Exists(_visits.FileOf(old)));
        Assert.True(File.Exists(Path.Combine(_visits.Out, "replaced", old.Document.FileName)));
        Assert.Empty(register.Check());
    }

    [Fact]
    public async Task What_the_corrected_record_no_longer_bears_out_is_taken_back_and_a_warning_is_not()
    {
        var fit = await _visits.IssueAsync(Visit("V-1", "2026-05-11"));
        var withdrawn = await _visits.IssueAsync(Visit("V-1", "2026-05-11", withdraw: true));
        var again = await _visits.IssueAsync(Visit("V-1", "2026-05-11"));

        using var register = DocumentRegister.Open(_visits.Register);
        // The label that says when to examine next hung on what is withdrawn now.
        var due = register.Find(One(fit, "due-label").Document.Number)!;
        Assert.Equal(DocumentEnd.Ended, due.Ended);
        Assert.Contains(withdrawn.Remarks, r =>
            r.StartsWith(due.Number, StringComparison.Ordinal) && r.Contains("Take the label off", StringComparison.Ordinal)
        );
        // The first version again releases nothing: the item is labelled once more, and the new label takes the old one's place.
        var label = register.Find(One(withdrawn, "quarantine-label").Document.Number)!;
        Assert.Equal([One(again, "quarantine-label").Document.Number], label.ReplacedBy);
        Assert.DoesNotContain(again.Documents, d => d.Document.Kind is "due-label");
        // Its conclusion is kinder than what is known: nothing is reported of it until somebody releases it.
        Assert.DoesNotContain(again.Documents, d => d.Document.Kind is "report");
        Assert.Empty(register.Check());
    }

    /// <summary>One visit is one reference, however it is typed, as it is where records are decided.</summary>
    [Theory]
    [InlineData("v-1")]
    [InlineData("V 1")]
    [InlineData("V-01")]
    public async Task A_correction_whose_reference_is_spelt_otherwise_replaces_what_it_corrects(string reference)
    {
        var first = await _visits.IssueAsync(Visit("V-1", "2026-05-11"));
        var corrected = Visit(reference, "2026-05-11");
        foreach (var limits in corrected["limits"]!.AsArray())
            limits!["intervalMonths"] = 1;
        await _visits.IssueAsync(corrected);
        using var register = DocumentRegister.Open(_visits.Register);
        Assert.All(first.Documents, d => Assert.False(register.Find(d.Document.Number)!.IsCurrent));
    }

    /// <summary>A run that began before the correction and is slow puts nothing beside it, and takes nothing of it back.</summary>
    [Fact]
    public async Task A_run_of_the_version_before_that_ends_later_leaves_the_correction_s_documents_alone_current()
    {
        var corrected = Visit("V-1", "2026-05-11");
        foreach (var limits in corrected["limits"]!.AsArray())
            limits!["intervalMonths"] = 1;
        IssueResult? correction = null;
        await _visits.IssueAsync(Visit("V-1", "2026-05-11"), progress: p =>
        {
            if (p is { Stage: RunStage.Printing, Done: 1 } && correction is null)
                correction = Task.Run(() => _visits.IssueAsync(corrected)).GetAwaiter().GetResult();
        });
        using var register = DocumentRegister.Open(_visits.Register);
        Assert.All(correction!.Documents, d => Assert.True(register.Find(d.Document.Number)!.IsCurrent));
        Assert.All(register.Documents().Where(d => d.Visit == 1), d => Assert.False(d.IsCurrent));
    }

    [Fact]
    public async Task Another_language_or_a_second_run_replaces_nothing()
    {
        var first = await _visits.IssueAsync(Visit("V-1", "2026-05-11"), only: "report");
        var second = await _visits.IssueAsync(Visit("V-1", "2026-05-11"), only: "report");
        Assert.Equal(One(first, "report").Document.Number, One(second, "report").Document.Number);
        using var register = DocumentRegister.Open(_visits.Register);
        Assert.All(register.Documents(), d => Assert.True(d.IsCurrent));
    }

    [Fact]
    public async Task Another_employer_s_visit_of_the_same_reference_on_another_day_is_no_correction()
    {
        var first = await _visits.IssueAsync(Visit("V-1", "2026-05-11"));
        var other = Visit("V-1", "2026-06-02");
        other["visit"]!["employer"]!["name"] = "Somebody Else Ltd";
        other.Item(Item)["serial"] = "OTHER-1";
        await _visits.IssueAsync(other);
        using var register = DocumentRegister.Open(_visits.Register);
        Assert.All(first.Documents, d => Assert.True(register.Find(d.Document.Number)!.IsCurrent));
    }

    [Fact]
    public async Task The_withdrawal_s_label_is_named_by_the_reason_and_a_release_that_names_it_counts()
    {
        var issued = await _visits.IssueAsync(Visit("V-1", "2026-05-11", withdraw: true));
        var label = One(issued, "quarantine-label").Document.Number;
        Assert.Contains(
            label,
            _visits.Check(Visit("V-2", "2026-11-02")).Reasons.Single(r => r.Code is "W10").Text,
            StringComparison.Ordinal
        );
        Assert.Equal(Core.Records.Outcome.Fit, _visits.Check(Released(Visit("V-2", "2026-11-02"), label)).Outcome);
        Assert.Equal(
            Core.Records.Outcome.Fit,
            _visits.Check(Released(Visit("V-2", "2026-11-02"), One(issued, "notice").Document.Number)).Outcome
        );
        Assert.Equal(Core.Records.Outcome.Withdraw, _visits.Check(Released(Visit("V-2", "2026-11-02"), "Q-2026-000099")).Outcome);
    }

    private static Issued One(IssueResult result, string kind) => result.Documents.Single(d => d.Document.Kind == kind);
}
