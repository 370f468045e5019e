using System.Text.Json.Nodes;
using ExamDocs.Register;
using ExamDocs.UseCases.Tests.Issuing;
using static ExamDocs.UseCases.Tests.Registered.Visits;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>A correction that also spells an item's id otherwise is about that item: what was issued of it is replaced or taken back.</summary>
public sealed class CorrectedSpellingTests : IDisposable
{
    private readonly Visits _visits = new();

    public void Dispose() => _visits.Dispose();

    [Theory]
    [InlineData("CON 02")]
    [InlineData("con-02")]
    [InlineData("CON-2")]
    public async Task What_the_version_before_said_of_the_item_is_no_longer_current(string id)
    {
        var first = await _visits.IssueAsync(Visit("V-1", "2026-05-11"));
        // It has to be examined each month: the label that hangs on it gives half a year.
        var corrected = Visit("V-1", "2026-05-11");
        foreach (var limits in corrected["limits"]!.AsArray())
            limits!["intervalMonths"] = 1;
        Rename(corrected, id);
        await _visits.IssueAsync(corrected);
        using var register = DocumentRegister.Open(_visits.Register);
        Assert.All(first.Documents, d => Assert.False(register.Find(d.Document.Number)!.IsCurrent, d.Document.Number));
    }

    [Fact]
    public async Task A_report_of_several_is_replaced_where_the_id_of_one_is_spelt_otherwise()
    {
        var first = await _visits.IssueAsync(Two(), only: "report");
        var corrected = Two();
        foreach (var limits in corrected["limits"]!.AsArray())
            limits!["intervalMonths"] = 1;
        Rename(corrected, "CON 02");
        await _visits.IssueAsync(corrected, only: "report");
        using var register = DocumentRegister.Open(_visits.Register);
        Assert.All(first.Documents, d => Assert.False(register.Find(d.Document.Number)!.IsCurrent, d.Document.Number));
    }

    private static JsonObject Two()
    {
        var record = Workspace.Example().Only(Item, "CON-01");
        var visit = record["visit"]!.AsObject();
        (visit["reference"], visit["examinedOn"], visit["reportedOn"]) = ("V-1", "2026-05-11", "2026-05-11");
        foreach (var row in record.Rows("items"))
            row["lastExamined"] = "2025-11-13";
        foreach (var examination in record.Rows("examinations"))
        {
            examination.Remove("examinedOn");
            examination.Remove("nextBy");
            examination["conclusion"] = "fit";
        }
        return record;
    }

    private static void Rename(JsonObject record, string id)
    {
        record.ExaminationOf(Item)["item"] = id;
        record.Item(Item)["id"] = id;
    }
}
