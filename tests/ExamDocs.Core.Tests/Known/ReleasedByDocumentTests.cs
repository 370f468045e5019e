using ExamDocs.Core.Known;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Tests.Known;

/// <summary>A release that names a document ends the withdrawal of that document and no other.</summary>
public sealed class ReleasedByDocumentTests
{
    private static readonly LocalDate Spring = new(2026, 5, 11),
        Autumn = new(2026, 11, 2);

    [Fact]
    public void A_record_that_withdraws_cannot_release_by_another_records_label()
    {
        var repeats = Withdrawn(1, "V-1", Spring, Bridge(), "Q-1", "W10");
        var withdraws = Withdrawn(2, "V-2", Spring, Bridge(), "Q-2", "W1", "W4");
        withdraws = withdraws with { Record = withdraws.Record with { Releases = [InError("RB-1", "Q-1", Spring)] } };
        var history = Known(Visit("V-3", Autumn, Bridge()), repeats, withdraws);
        Assert.Empty(history.Releases);
        Assert.Equal(["W1", "W4"], Assert.Single(history.Withdrawals).Codes);
    }

    [Fact]
    public void A_release_by_the_first_versions_label_leaves_another_serial_withdrawn()
    {
        var first = Withdrawn(1, "V-1", Spring, Bridge("RB-1", "Q100"), "Q-1", "W1");
        var second = Withdrawn(2, "V-1", Spring, Bridge("RB-1", "Q555"), "Q-2", "W1");
        var now = Visit("V-2", Autumn, Bridge("RB-1-B", "Q777") with { Formerly = "RB-1" });
        var history = Known(now, first, second);
        Assert.Equal(
            [
                ["Q-1"],
                ["Q-2"],
            ],
            history.Withdrawals.Select(w => w.Documents)
        );
    }

    [Fact]
    public void Two_records_of_one_day_with_different_reasons_are_two_withdrawals()
    {
        var doubt = Withdrawn(1, "V-1", Spring, Bridge(), "Q-1", "W2");
        var saw = Withdrawn(2, "V-2", Spring, Bridge(), "Q-2", "W4");
        Assert.Equal(
            [
                ["Q-1"],
                ["Q-2"],
            ],
            Known(Visit("V-3", Autumn, Bridge()), doubt, saw).Withdrawals.Select(w => w.Documents)
        );
    }

    [Fact]
    public void Two_records_of_one_day_with_one_reason_are_one_withdrawal()
    {
        var one = Withdrawn(1, "V-1", Spring, Bridge(), "Q-1", "W2");
        var again = Withdrawn(2, "V-2", Spring, Bridge(), "Q-2", "W10", "W2");
        Assert.All(Known(Visit("V-3", Autumn, Bridge()), one, again).Withdrawals, w =>
            Assert.Equal(["Q-1", "Q-2"], w.Documents.Order(StringComparer.Ordinal))
        );
    }

    /// <summary>What was looked at again for the one was not looked at for the other.</summary>
    [Fact]
    public void Two_records_of_one_day_with_doubts_about_different_things_are_two_withdrawals()
    {
        var eye = Doubted(Withdrawn(1, "V-1", Spring, Bridge(), "Q-1", "W2", "W6"), "termination");
        var stain = Doubted(Withdrawn(2, "V-2", Spring, Bridge(), "Q-2", "W2", "W6"), "contamination");
        Assert.Equal(
            [
                ["Q-1"],
                ["Q-2"],
            ],
            Known(Visit("V-3", Autumn, Bridge()), eye, stain).Withdrawals.Select(w => w.Documents)
        );
    }

    private static KnownVisit Doubted(KnownVisit visit, string criterion) =>
        visit with
        {
            Record = visit.Record with
            {
                Examinations =
                [
                    visit.Record.Examinations[0] with
                    {
                        Observations = [new() { Criterion = criterion, State = ObservedState.Doubt }],
                    },
                ],
            },
        };

    private static History Known(ExaminationRecord now, params KnownVisit[] others) => WhatIsKnown.Of(now, others).History;

    private static KnownVisit Withdrawn(int number, string reference, LocalDate on, Item item, string label, params string[] codes) =>
        new(
            number,
            Visit(reference, on, item),
            [
                new KnownOutcome(item.Id, Outcome.Withdraw, codes)
                {
                    ExaminedOn = on,
                    Documents = [new KnownDocument(label, "quarantine-label")],
                },
            ]
        );

    private static ExaminationRecord Visit(string reference, LocalDate on, Item item) =>
        new()
        {
            Visit = new()
            {
                Reference = reference,
                ExaminedOn = on,
                Employer = new() { Name = "Alder Vale" },
            },
            People = [new() { Id = "ex1", Name = "Ada Fenn" }],
            Items = [item],
            Examinations =
            [
                new()
                {
                    Item = item.Id,
                    Examiner = "ex1",
                    ExaminedOn = on,
                },
            ],
        };

    private static Item Bridge(string id = "RB-1", string serial = "Q100") =>
        new()
        {
            Id = id,
            Category = "rope-bridge",
            Maker = "Fennick Works",
            Model = "Long",
            Serial = serial,
        };

    private static Release InError(string item, string document, LocalDate on) =>
        new()
        {
            Item = item,
            By = "ex1",
            On = on,
            Document = document,
            Because = ReleaseReason.RecordedInError,
            Grounds = "it was typed on the wrong line",
        };
}
