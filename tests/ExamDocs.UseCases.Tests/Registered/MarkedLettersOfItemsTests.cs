using System.Text.Json.Nodes;
using ExamDocs.Core.Regimes;
using ExamDocs.Register;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Tests.Issuing;
using static ExamDocs.UseCases.Tests.Registered.Visits;
using Outcome = ExamDocs.Core.Records.Outcome;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>What was withdrawn does not come back because its mark was typed without an accent, or in small letters.</summary>
public sealed class MarkedLettersOfItemsTests : IDisposable
{
    private readonly Visits _visits = new();

    public void Dispose() => _visits.Dispose();

    /// <summary>The firm's own mark is all that many items bear: it is their id too.</summary>
    [Theory]
    [InlineData("CORDÉE-1", "CORDEE-1")]
    [InlineData("GÜRTEL-1", "GURTEL-1")]
    [InlineData("\u0130P-1", "ip-1")]
    [InlineData("MA\u1e9e-1", "ma\u00df-1")]
    [InlineData("HEL-01", "hel-o1")]
    public void Withdrawn_it_is_not_fit_under_another_spelling(string withdrawn, string typed)
    {
        _visits.Import(Marked(Visit("V-1", "2026-05-11", withdraw: true), withdrawn));
        var file = _visits.File(Marked(Visit("V-2", "2026-11-02"), typed));
        var item = CheckAgainstRegister.All([file], Today, KnownRules.BuiltIn, _visits.Register)[0].Visit!.Items.Single();
        Assert.True(item.Outcome is Outcome.Withdraw or Outcome.Undetermined, $"{typed} is {item.Outcome}.");
        Assert.NotEmpty(FindItems.ByMarking(_visits.Register, typed, Today));
    }

    [Fact]
    public async Task A_correction_whose_reference_lacks_an_accent_replaces_what_it_corrects()
    {
        var first = await _visits.IssueAsync(Visit("Pr\u00fcfung 1", "2026-05-11"));
        var corrected = Visit("Prufung 1", "2026-05-11");
        foreach (var limits in corrected["limits"]!.AsArray())
            limits!["intervalMonths"] = 1;
        await _visits.IssueAsync(corrected);
        using var register = DocumentRegister.Open(_visits.Register);
        Assert.All(first.Documents, d => Assert.False(register.Find(d.Document.Number)!.IsCurrent));
    }

    private static JsonObject Marked(JsonObject record, string mark)
    {
        record.ExaminationOf(Item)["item"] = mark;
        var item = record.Item(Item);
        (item["id"], item["ownersMark"], item["serial"]) = (mark, mark, null);
        return record;
    }
}
