using System.Text;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Tests.Issuing;
using ExamDocs.UseCases.Verifying;
using static ExamDocs.UseCases.Tests.Registered.Visits;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>What an altered register knows is neither printed again nor vouched for.</summary>
public sealed class AlteredRegisterPrintTests : IDisposable
{
    private readonly Visits _visits = new();

    public AlteredRegisterPrintTests()
    {
        _visits.Import(Visit("V-0", "2025-11-13"));
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
    }

    public void Dispose() => _visits.Dispose();

    [Fact]
    public void No_workbook_is_prepared_from_it()
    {
        Tampering.Alter(_visits.Register, "UPDATE outcome SET outcome = 'fit', codes = '[]' WHERE visit = 2");
        Tampering.AssertNamed(Assert.Throws<RegisterAlteredException>(() => RegisterRecord.Of(_visits.Register, null, null, Today, out _)));
    }

    [Theory]
    [InlineData("DELETE FROM line_end", "visit 2 (V-1 of 2026-05-11)")]
    [InlineData("UPDATE outcome SET outcome = 'fit'", "visit 1 (V-0 of 2025-11-13)")]
    [InlineData("UPDATE document SET ended = NULL, ended_on = NULL, ended_reason = NULL", "D-2027-000001")]
    public async Task A_label_that_has_ended_is_not_printed_again_once_that_was_taken_out(string statement, string named)
    {
        var label = Label();
        Tampering.Alter(_visits.Register, "UPDATE document SET ended = NULL, ended_on = NULL, ended_reason = NULL");
        Tampering.Alter(_visits.Register, "DELETE FROM ended_line");
        Tampering.Alter(_visits.Register, statement);
        var sheet = Path.Combine(Path.GetDirectoryName(_visits.Register)!, "labels.pdf");
        var request = new LabelRequest
        {
            InputsOrNumbers = [label],
            OutFile = sheet,
            RegisterPath = _visits.Register,
            Today = Today,
        };
        var refused = await Assert.ThrowsAsync<RegisterAlteredException>(() =>
            PrintLabels.RunAsync(request, TestContext.Current.CancellationToken)
        );
        Assert.StartsWith($"The register was altered or damaged: {named} is no longer", refused.Message, StringComparison.Ordinal);
        Assert.False(File.Exists(sheet));
    }

    [Fact]
    public async Task A_document_of_such_a_visit_is_not_verified_by_it()
    {
        using var visits = new Visits();
        var report = visits.FileOf(Assert.Single((await visits.IssueAsync(Visit("V-0", "2026-05-11"), only: "report")).Documents));
        visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        Assert.Equal(Verdict.NotValid, Assert.Single(await VerifyAsync()).Verdict);
        Tampering.Alter(visits.Register, "DELETE FROM line_end");
        Tampering.AssertNamed(await Assert.ThrowsAsync<RegisterAlteredException>(VerifyAsync));

        Task<IReadOnlyList<VerifiedFile>> VerifyAsync() =>
            VerifyDocuments.RunAsync(
                new VerifyRequest
                {
                    Browser = OpenBrowser.Instance,
                    Files = [report],
                    RegisterPath = visits.Register,
                    Now = NodaTime.Instant.FromUtc(2027, 12, 31, 12, 0),
                },
                TestContext.Current.CancellationToken
            );
    }

    /// <summary>A next-examination label of the first visit, as the press would have issued it; the second visit has ended it.</summary>
    private string Label()
    {
        using var register = DocumentRegister.Open(_visits.Register, Today);
        var pending = register.Take(
            new('D', 2027, "due-label", "job", [Visits.Item], Path.GetDirectoryName(_visits.Register)!) { Visit = 1 }
        );
        var label = register.Publish(pending, Encoding.UTF8.GetBytes("%PDF-1.7 stand-in"), 1, $$"""{"{{Visits.Item}}":"fit"}""").Number;
        Assert.False(register.Find(label)!.IsCurrent);
        return label;
    }
}
