using System.Text.Json.Nodes;
using ExamDocs.Register;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Tests.Issuing;
using ExamDocs.UseCases.Verifying;
using static ExamDocs.UseCases.Tests.Registered.Visits;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>
/// A slip in the record that withdraws an item leaves its label hanging on it: nothing vouches for that label as long as nobody said
/// which item was meant.
/// </summary>
public sealed class WithdrawnWithASlipTests : IDisposable
{
    private readonly Visits _visits = new();

    public void Dispose() => _visits.Dispose();

    [Fact]
    public async Task The_serial_number_is_mistyped_under_the_same_id_and_owner()
    {
        var withdrawing = Visit("V-2", "2026-06-12", withdraw: true);
        withdrawing.Item(Item)["serial"] = "OT-44112";
        await AssertNotVouchedForAsync(withdrawing);
    }

    [Theory]
    [InlineData("V-2", "2026-06-12")]
    [InlineData("V-1", "2026-05-11")] // the correction of the visit itself
    public async Task The_id_is_another_and_maker_category_and_serial_number_are_the_same(string reference, string day)
    {
        var withdrawing = Visit(reference, day, withdraw: true);
        withdrawing.ExaminationOf(Item)["item"] = "CON-77";
        withdrawing.Item(Item)["id"] = "CON-77";
        await AssertNotVouchedForAsync(withdrawing);
    }

    private async Task AssertNotVouchedForAsync(JsonObject withdrawing)
    {
        var label = (await _visits.IssueAsync(Visit("V-1", "2026-05-11"))).Documents.Single(d => d.Document.Kind is "due-label");
        var file = _visits.FileOf(label);
        var told = (await _visits.IssueAsync(withdrawing)).Remarks;
        // The register knows better where it is asked for the item.
        Assert.All(FindItems.ByMarking(_visits.Register, Item, new(2026, 7, 1)), i => Assert.NotEqual(Standing.InService, i.Standing));
        var verified = await _visits.VerifyAsync(file, new(2026, 7, 1));
        Assert.True(
            verified.Verdict is not Verdict.Valid || told.Any(r => r.Contains(label.Document.Number, StringComparison.Ordinal)),
            "The label is valid, and nobody is told of it."
        );
    }
}
