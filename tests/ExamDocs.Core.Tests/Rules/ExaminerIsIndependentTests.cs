using System.Text.Json.Nodes;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Tests.Rules;

/// <summary>
/// HSE INDG422, as quoted elsewhere: the examiner is not who does the routine maintenance. In a small firm it often is, so it is a warning
/// and says so.
/// </summary>
public sealed class ExaminerIsIndependentTests
{
    [Theory]
    [InlineData("ex1", "ex2", "made the renewal of 11 May 2026")]
    [InlineData("ex2", "ex1", "supervised the renewal of 11 May 2026")]
    public void Whoever_made_or_supervised_the_renewal_is_told_that_it_is_judged_by_the_same_person(string by, string under, string did)
    {
        var found = Assert.Single(Of(Renewed("2026-05-11", by, under)));
        Assert.Equal((Severity.Warning, "/examinations/0/examiner"), (found.Severity, found.Path));
        Assert.Equal($"the examiner Ida Brackenfold also {did} that is judged here", found.Message.Text);
        Assert.Contains("no fault by itself", found.Hint.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Another_persons_work_is_no_concern() => Assert.Empty(Of(Renewed("2026-05-11", "ex2", "ex2")));

    /// <summary>The last examination, on 12 November 2025, has judged it already.</summary>
    [Theory]
    [InlineData("2025-11-12", 0)]
    [InlineData("2025-11-13", 1)]
    public void Work_that_an_earlier_examination_judged_is_past(string done, int findings) =>
        Assert.Equal(findings, Of(Renewed(done, "ex1", "ex1")).Count);

    [Theory]
    [InlineData("ex1", 1)]
    [InlineData("Ida Brackenfold", 1)]
    [InlineData("Fenwright", 0)]
    public void A_repair_counts_as_well_by_id_or_by_name(string by, int findings)
    {
        var record = GoodRecord.Json();
        var repair = record["remedies"]![0]!;
        (repair["doneBy"], repair["doneOn"]) = (by, "2026-05-10");
        Assert.Equal(findings, Of(record).Count);
    }

    /// <summary>Two pieces of work of one examiner on one item are one cause.</summary>
    [Fact]
    public void One_item_gives_one_warning()
    {
        var record = Renewed("2026-05-11", "ex1", "ex1");
        record["remedies"]!
            .AsArray()
            .Add(JsonNode.Parse("""{ "item": "HAR-1", "what": "strap", "doneBy": "ex1", "doneOn": "2026-05-11", "evidence": "-" }"""));
        Assert.Single(Of(record));
    }

    private static JsonNode Renewed(string on, string by, string under)
    {
        var record = GoodRecord.Json();
        var renewal = record["renewals"]![0]!;
        (renewal["doneOn"], renewal["doneBy"], renewal["supervisedBy"]) = (on, by, under);
        return record;
    }

    private static List<Finding> Of(JsonNode record) => [.. GoodRecord.Check(record).Where(f => f.Code is "CON017")];
}
