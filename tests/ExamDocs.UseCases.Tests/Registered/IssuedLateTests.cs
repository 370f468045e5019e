using System.Text.Json.Nodes;
using ExamDocs.Register;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Tests.Issuing;
using ExamDocs.UseCases.Verifying;
using static ExamDocs.UseCases.Tests.Registered.Visits;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>
/// What a later visit found ends what an earlier one says, whichever of the two came into the register first.
/// </summary>
public sealed class IssuedLateTests : IDisposable
{
    private readonly Visits _visits = new();

    public void Dispose() => _visits.Dispose();

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Of_an_item_that_a_later_visit_held_the_earlier_one_prints_no_label_that_counts(bool isEarlierFirst)
    {
        var held = Visit("V-2", "2026-06-12");
        held.ExaminationOf(Item)["observations"]!.AsArray().RemoveAt(0);
        await AssertNoneCountsAsync(held, isEarlierFirst);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Of_an_item_that_a_later_visit_found_lost_the_earlier_one_prints_no_label_that_counts(bool isEarlierFirst)
    {
        var lost = Visit("V-2", "2026-06-12");
        lost.Item(Item)["status"] = "lost";
        lost["examinations"]!.AsArray().Clear();
        await AssertNoneCountsAsync(lost, isEarlierFirst);
    }

    private async Task AssertNoneCountsAsync(JsonObject later, bool isEarlierFirst)
    {
        if (isEarlierFirst)
            _visits.Import(Visit("V-1", "2026-05-11"));
        _visits.Import(later);
        Assert.Contains(FindItems.ByMarking(_visits.Register, Item, Today), i => i.Standing is not UseCases.Registered.Standing.InService);
        var issued = await _visits.IssueAsync(Visit("V-1", "2026-05-11"));
        using (var register = DocumentRegister.Open(_visits.Register))
            Assert.DoesNotContain(register.Documents(), d => d is { IsCurrent: true, Kind: "due-label" or "report" or "certificate" });
        foreach (var document in issued.Documents)
            Assert.NotEqual(Verdict.Valid, (await _visits.VerifyAsync(_visits.FileOf(document))).Verdict);
    }
}
