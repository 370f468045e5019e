using ExamDocs.Core.Sentences.Messages;
using ExamDocs.Templates;
using ExamDocs.Templates.Label;
using ExamDocs.UseCases.Issuing;

namespace ExamDocs.UseCases.Tests.Issuing;

public sealed class HeldBackTests(ExampleIssued example)
{
    private IReadOnlyList<DocumentJob> Labels =>
        [.. ComposeDocuments.Of(example.Visit, perItem: false, ReadingDistance.Default).Jobs.Where(j => j.Type == DocumentTypes.DueLabel)];

    /// <summary>A label that says when to examine again says that the item was reported as fit: without a report there is none.</summary>
    [Fact]
    public void An_item_whose_report_the_browser_cannot_print_gets_no_label_with_a_next_date()
    {
        var (label, other) = (Labels[1], Labels[2]);
        var report = label with { Type = DocumentTypes.Report };
        var heldBack = new HeldBack();
        Assert.False(heldBack.HoldsReportOf(label));
        heldBack.TellUnprinted(report, "the browser crashed");
        Assert.True(heldBack.HoldsReportOf(label));
        Assert.False(heldBack.HoldsReportOf(other));
        Assert.Equal(["PRN005"], Assert.Single(heldBack.Refused).Codes);
    }

    /// <summary>There is no page to print all the same, so that it must not be said to be printed.</summary>
    [Fact]
    public void A_warning_that_the_browser_cannot_print_is_said_to_be_held_back()
    {
        var heldBack = new HeldBack();
        heldBack.TellUnprinted(Labels[0] with { Type = DocumentTypes.QuarantineLabel }, "the browser crashed");
        Assert.Contains("the browser crashed; it is held back.", Assert.Single(heldBack.Unprintable), StringComparison.Ordinal);
        var refused = Assert.Single(heldBack.Refused);
        Assert.Equal(
            ("do-not-use label", "Sperrschild", "étiquette d’interdiction"),
            (refused.What.Text, refused.What.In(TranslatedMessages.German), refused.What.In(TranslatedMessages.French))
        );
    }

    [Fact]
    public void What_cannot_be_printed_is_refused_by_its_own_name()
    {
        var names = DocumentTypes.All.Select(type =>
        {
            var heldBack = new HeldBack();
            heldBack.TellUnprinted(Labels[0] with { Type = type }, "the browser crashed");
            return Assert.Single(heldBack.Refused).What.Text;
        });
        Assert.Equal(
            [
                "report or certificate",
                "notice of defect",
                "report or certificate",
                "do-not-use label",
                "next-examination label",
                "equipment record",
                "check sheet",
                "evidence file",
            ],
            names
        );
    }
}
