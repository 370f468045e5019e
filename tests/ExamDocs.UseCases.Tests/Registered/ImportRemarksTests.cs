using System.Text;
using ExamDocs.Core.Regimes;
using ExamDocs.Register;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Registered;
using static ExamDocs.UseCases.Tests.Registered.Visits;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>What somebody has to do on the spot because of an earlier visit that is taken in is named, as when it is issued.</summary>
public sealed class ImportRemarksTests : IDisposable
{
    private const string Late =
        "CON-02 was withdrawn on 2026-05-11 by this record, and examined again on 2026-11-02 by one that did not know of it.";

    private readonly Visits _visits = new();

    public void Dispose() => _visits.Dispose();

    [Fact]
    public void A_withdrawal_that_a_later_visit_did_not_know_of_is_named_once()
    {
        Assert.Empty(_visits.Import(Visit("V-2", "2026-11-02")).Remarks);
        Assert.StartsWith(
            Late,
            Assert.Single(_visits.Import(Visit("V-1", "2026-05-11", withdraw: true)).Remarks),
            StringComparison.Ordinal
        );
        Assert.Empty(_visits.Import(Visit("V-1", "2026-05-11", withdraw: true)).Remarks);
    }

    [Fact]
    public void An_older_version_that_is_sent_again_after_its_correction_is_named()
    {
        var (old, corrected) = (_visits.File(Visit("V-1", "2026-05-11")), _visits.File(Visit("V-1", "2026-05-11", withdraw: true)));
        bool IsNamed(params string[] files) =>
            ImportVisits
                .Run(files, _visits.Register, Today, KnownRules.BuiltIn)
                .Remarks.Any(r => r.StartsWith("V-1 is as it was recorded once before", StringComparison.Ordinal));
        Assert.False(IsNamed(old));
        Assert.False(IsNamed(old));
        Assert.False(IsNamed(corrected));
        Assert.False(IsNamed(old, corrected));
        Assert.True(IsNamed(old));
        Assert.False(IsNamed(old));
        Assert.True(IsNamed(corrected));
    }

    [Fact]
    public void Visits_taken_in_together_know_of_each_other()
    {
        string[] files = [_visits.File(Visit("V-2", "2026-11-02")), _visits.File(Visit("V-1", "2026-05-11", withdraw: true))];
        Assert.Empty(ImportVisits.Run(files, _visits.Register, Today, KnownRules.BuiltIn).Remarks);
    }

    [Fact]
    public void A_label_that_it_ends_is_named()
    {
        _visits.Import(Visit("V-1", "2026-05-11"));
        var label = Label(_visits.Register);
        Assert.Equal(
            [$"{label} (next-examination label of CON-02) no longer holds: it was withdrawn on 2026-11-02. Take the label off."],
            _visits.Import(Visit("V-2", "2026-11-02", withdraw: true)).Remarks
        );
    }

    [Fact]
    public void A_label_of_a_whole_is_ended_by_its_part_and_the_sentence_names_the_part()
    {
        _visits.Import(Visit("V-1", "2026-05-11"));
        var label = Label(_visits.Register);
        using var register = DocumentRegister.Open(_visits.Register, Today);
        register.Visits.Remember(
            new(new() { Items = [new() { Id = "CON-01" }] }, Encoding.UTF8.GetBytes("{}"), [])
            {
                Ends = [new(1, Item, new(2026, 11, 2), "CON-01, which is fitted to it, was withdrawn")],
            }
        );
        Assert.Equal(
            [
                $"{label} (next-examination label of CON-02) no longer holds: CON-01, which is fitted to it, was withdrawn on 2026-11-02. "
                    + "Take the label off.",
            ],
            EndedDocuments.Of(register, [(1, Item)], new HashSet<int> { 2 })
        );
    }

    [Fact]
    public async Task Issued_after_the_later_visit_it_is_named_too()
    {
        _visits.Import(Visit("V-2", "2026-11-02"));
        var issued = await _visits.IssueAsync(Visit("V-1", "2026-05-11", withdraw: true), only: "quarantine-label");
        Assert.StartsWith(Late, Assert.Single(issued.Remarks), StringComparison.Ordinal);
    }

    /// <summary>A label of the first visit, as the press would have issued it.</summary>
    private static string Label(string place)
    {
        using var register = DocumentRegister.Open(place, Today);
        var pending = register.Take(new('D', 2027, "due-label", "job", [Item], Path.GetDirectoryName(place)!) { Visit = 1 });
        return register.Publish(pending, Encoding.UTF8.GetBytes("%PDF-1.7 stand-in"), 1, $$"""{"{{Item}}":"fit"}""").Number;
    }
}
