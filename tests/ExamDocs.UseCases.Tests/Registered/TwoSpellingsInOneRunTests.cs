using ExamDocs.Core.Regimes;
using ExamDocs.Register;
using ExamDocs.UseCases.Commands;
using static ExamDocs.UseCases.Tests.Registered.Visits;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>Two files of one visit whose reference is spelt in two ways, handed in together.</summary>
public sealed class TwoSpellingsInOneRunTests : IDisposable
{
    private readonly Visits _visits = new();

    public void Dispose() => _visits.Dispose();

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task What_one_of_them_withdraws_is_labelled(bool withdrawsFirst)
    {
        var result = await _visits.IssueTogetherAsync(
            _visits.File(Visit("V-1", "2026-05-11", withdraw: withdrawsFirst)),
            _visits.File(Visit("v 1", "2026-05-11", withdraw: !withdrawsFirst))
        );
        Assert.Null(result.Failure);
        Assert.Contains(result.Documents, d => d.Document.Kind is "quarantine-label");
    }

    [Fact]
    public async Task A_visit_that_has_nothing_to_do_with_them_is_issued_too()
    {
        var other = Visit("V-7", "2026-07-01", withdraw: true);
        var result = await _visits.IssueTogetherAsync(
            _visits.File(Visit("V-1", "2026-05-11")),
            _visits.File(Visit("v 1", "2026-05-12")),
            _visits.File(other)
        );
        Assert.Null(result.Failure);
        Assert.Contains(result.Documents, d => d.Document.Kind is "quarantine-label");
    }

    [Theory]
    [InlineData("V-1")]
    [InlineData("v 1")]
    public void Each_is_stored_once(string reference)
    {
        string[] files = [_visits.File(Visit("V-1", "2026-05-11")), _visits.File(Visit(reference, "2026-05-11", withdraw: true))];
        ImportVisits.Run(files, _visits.Register, Today, KnownRules.BuiltIn);
        using var register = DocumentRegister.OpenToRead(_visits.Register);
        Assert.Equal(2, register.Counted().Visits);
    }
}
