using System.Text.Json.Nodes;
using ExamDocs.Register;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Tests.Issuing;
using static ExamDocs.UseCases.Tests.Registered.Visits;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>
/// A correction that leaves out what the version before withdrew says nothing of its label: a run of that version that ends later keeps it
/// current, and prints it.
/// </summary>
public sealed class OvertakenWarningTests : IDisposable
{
    private readonly Visits _visits = new();

    public void Dispose() => _visits.Dispose();

    [Theory]
    [InlineData(0)] // the correction is stored before the label has a number
    [InlineData(1)]
    public async Task What_stays_withdrawn_has_a_quarantine_label_that_is_current(int done)
    {
        IssueResult? correction = null;
        var slow = await _visits.IssueAsync(Two(Item), progress: p =>
        {
            if (p.Stage is RunStage.Printing && p.Done == done && correction is null)
                correction = Task.Run(() => _visits.IssueAsync(Two(Item).Only("CON-01"))).GetAwaiter().GetResult();
        });
        Assert.NotNull(correction);
        Assert.Equal(Standing.Withdrawn, Assert.Single(FindItems.ByMarking(_visits.Register, Item, new(2026, 7, 1))).Standing);
        using var register = DocumentRegister.Open(_visits.Register);
        Assert.True(
            register.Documents().Any(d => d is { IsCurrent: true, Kind: "quarantine-label" } && d.Items.Contains(Item)),
            string.Join(
                "; ",
                register.Documents().Select(d => $"{d.Number} {d.Kind} of {string.Join(", ", d.Items)}: {d.State} {d.EndedReason}")
            ) + $"; {slow.Failure}"
        );
    }

    /// <summary>The program never withdraws a quarantine label by itself.</summary>
    [Fact]
    public void A_label_that_was_in_hand_stays_current_once_it_is_out()
    {
        _visits.Import(Two(Item));
        using var register = DocumentRegister.Open(_visits.Register, Today);
        var pending = register.Take(new('Q', 2027, "quarantine-label", "job", [Item], Folder: null) { Visit = 1, KnownUpTo = 1 });
        _visits.Import(Two(Item).Only("CON-01"));
        register.Publish(pending, "%PDF-1.7 stand-in"u8.ToArray(), 1, $$"""{"{{Item}}":"withdraw"}""");
        Assert.Equal(Standing.Withdrawn, Assert.Single(FindItems.ByMarking(_visits.Register, Item, new(2026, 7, 1))).Standing);
        var label = register.Find(pending.Number)!;
        Assert.True(label.IsCurrent, $"{label.Number} is {label.Ended}: {label.EndedReason}");
    }

    /// <summary>Two connectors, of which one is withdrawn.</summary>
    private static JsonObject Two(string withdrawn)
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
            examination["conclusion"] = (string?)examination["item"] == withdrawn ? "withdraw" : "fit";
        }
        return record;
    }
}
