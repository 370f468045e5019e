using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates;
using ExamDocs.Templates.EquipmentRecord;
using ExamDocs.Templates.Report;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Documents.Tests.Printing;

/// <summary>SI 1998/2307 Schedule 1 paragraph 7(a): why an item was examined, in time or late.</summary>
public sealed class ReportItemTests
{
    private const string Harness = "HAR-01";

    /// <summary>Examined on 11 May 2026: six months before, to the day, is in time; one day more is late (reg 9(3)(a)(i)).</summary>
    [Theory]
    [InlineData("2025-11-11", "en", "within an interval of 6 months (regulation 9(3)(a)(i))")]
    [InlineData("2025-11-10", "en", "overdue: it was due by 10\u00A0May 2026; basis: interval of 6 months (regulation 9(3)(a)(i))")]
    [InlineData(
        "2025-11-10",
        "de",
        "überfällig: die Prüfung war bis 10.\u00A0Mai 2026 fällig; Grundlage: Frist von 6 Monaten (regulation 9(3)(a)(i))"
    )]
    [InlineData(
        "2025-11-10",
        "fr",
        "en retard\u00A0: la vérification était due au plus tard le 10\u00A0mai 2026\u00A0; fondement\u00A0: intervalle de 6 mois "
            + "(regulation 9(3)(a)(i))"
    )]
    public async Task An_overdue_item_is_not_said_to_be_examined_within_its_interval(string lastExamined, string language, string printed)
    {
        var (visit, item) = Example.With(Harness, i => i with { LastExamined = Day(lastExamined) });
        Assert.Equal(printed.StartsWith("within", StringComparison.Ordinal), item.Findings.All(f => f.Code is not "DAT011"));
        var (report, record) = await Language
            .Find(language)!
            .InAsync(() => Task.FromResult((Item(visit, item).Basis, Recorded(visit, item).Basis)));
        Assert.Equal((printed, printed), (report, record));
    }

    /// <summary>A note may say more than its answer, and more than the entry of its defect.</summary>
    [Theory]
    [InlineData("HAR-01", "stitching", ObservedState.Clear, "Stitching: clear: one thread looks dull")]
    [InlineData("HAR-01", "severe-load", ObservedState.NoSign, "Severe load: one thread looks dull")]
    [InlineData("BRG-08", "cover-abrasion", ObservedState.Defect, "Cover abrasion: defect: one thread looks dull")]
    [InlineData("HAR-04", "stitching", ObservedState.Doubt, null)]
    public void What_was_noted_with_any_answer_is_printed_once(string id, string criterion, ObservedState state, string? printed)
    {
        var (visit, item) = Example.WithExamination(id, e =>
            e.DayAt(Example.Record.Visit) != Example.Record.Visit.ExaminedOn
                ? e
                : e with
                {
                    Observations =
                    [
                        .. e.Observations.Select(o =>
                            o.Criterion == criterion ? o with { State = state, Note = "one thread looks dull" } : o
                        ),
                    ],
                }
        );
        var notes = Item(visit, item).Notes.Where(n => n.Contains("looks dull", StringComparison.Ordinal));
        Assert.Equal(printed is null ? [] : [printed], notes);
    }

    /// <summary>Nobody can say that an interval was kept that began on a day nobody knows.</summary>
    [Fact]
    public void Where_the_last_examination_is_not_known_no_interval_is_said_to_be_kept()
    {
        var items = Example.Record.Items.Select(i => i.Id == Harness ? i with { LastExamined = null } : i);
        var examinations = Example.Record.Examinations.Where(e =>
            e.Item != Harness || e.DayAt(Example.Record.Visit) == Example.Record.Visit.ExaminedOn
        );
        var visit = Example.Determined(Example.Record with { Items = [.. items], Examinations = [.. examinations] });
        var item = visit.Items.First(i => i.Item.Id == Harness);
        const string printed = "interval of 6 months (regulation 9(3)(a)(i)); when it was last examined is not recorded";
        Assert.Equal((printed, printed), (Item(visit, item).Basis, Recorded(visit, item).Basis));
    }

    [Fact]
    public void An_examination_after_an_event_is_said_to_be_overdue_too()
    {
        var after = new ExceptionalEvent { What = "Fall of a tree", On = new(2026, 5, 2) };
        var examinations = Example.Record.Examinations.Select(e =>
            e.Item == Harness && e.DayAt(Example.Record.Visit) == Example.Record.Visit.ExaminedOn
                ? e with
                {
                    Basis = Basis.Exceptional,
                    Event = after,
                }
                : e
        );
        var items = Example.Record.Items.Select(i => i.Id == Harness ? i with { LastExamined = Day("2025-11-10") } : i);
        var visit = Example.Determined(Example.Record with { Items = [.. items], Examinations = [.. examinations] });
        Assert.Equal(
            "overdue: it was due by 10\u00A0May 2026; basis: after exceptional circumstances (regulation 9(3)(a)(iv)); Fall of a tree, on "
                + "2\u00A0May 2026",
            Item(visit, visit.Items.First(i => i.Item.Id == Harness)).Basis
        );
    }

    private static PartialDate Day(string iso) => PartialDate.Of(NodaTime.Text.LocalDatePattern.Iso.Parse(iso).Value);

    private static ReportItem Item(DeterminedVisit visit, DeterminedItem item) =>
        new ReportModel(Example.Identity(DocumentTypes.Report), visit, [item], visit.Record.People[0], visit.Record.People[0]).Items[0];

    private static RecordedExamination Recorded(DeterminedVisit visit, DeterminedItem item) =>
        new EquipmentRecordModel(Example.Identity(DocumentTypes.EquipmentRecord), visit, item).Examinations.Single(e => e.Decided);
}
