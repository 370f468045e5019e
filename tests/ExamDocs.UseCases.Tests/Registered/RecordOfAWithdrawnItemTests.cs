using ExamDocs.Register;
using ExamDocs.UseCases.Tests.Issuing;
using ExamDocs.UseCases.Verifying;
using static ExamDocs.UseCases.Tests.Registered.Visits;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>
/// No visit ends the record of an item, or its evidence: both stay listed as current after an ordinary withdrawal, and nobody altered that.
/// </summary>
public sealed class RecordOfAWithdrawnItemTests : IDisposable
{
    private readonly Visits _visits = new();

    public void Dispose() => _visits.Dispose();

    [Theory]
    [InlineData("record")]
    [InlineData("evidence")]
    public async Task A_sound_register_is_not_called_altered_when_it_is_verified(string kind)
    {
        var issued = Assert.Single((await _visits.IssueAsync(Visit("V-1", "2026-05-11"), only: kind)).Documents);
        _visits.Import(Visit("V-2", "2026-06-12", withdraw: true));
        using (var register = DocumentRegister.OpenToRead(_visits.Register))
            Assert.Empty(register.Check());
        var verified = await _visits.VerifyAsync(_visits.FileOf(issued));
        Assert.DoesNotContain(verified.Statements, s => s.Question is "bytes" && s.Answer is not Answer.Holds);
    }
}
