using System.Text.Json.Nodes;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Tests.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Tests.Commands;

/// <summary>A visit is started with what is known, and with no answer.</summary>
public sealed class StartVisitTests : IDisposable
{
    private static readonly Person Examiner = new() { Name = "Ada Fenn", Qualifications = "Guild examiner" };

    private readonly Visits _visits = new();

    public void Dispose() => _visits.Dispose();

    [Fact]
    public void What_falls_due_comes_with_its_history_and_unanswered()
    {
        _visits.Import(Visits.Visit("V-1", "2026-05-11"));
        var (draft, refused) = Start(new FromRegister(_visits.Register, new LocalDate(2026, 11, 11), null, Visits.Today));
        Assert.Null(refused);
        var record = draft!.Record;
        Assert.Empty(draft.Findings);
        Assert.Equal([Visits.Item], record.Items.Select(i => i.Id), StringComparer.Ordinal);
        Assert.Equal((null, null, null), (record.Visit.Reference, record.Visit.ExaminedOn, record.Visit.Basis));
        // Nothing that could pass for an examination of this visit.
        Assert.All(record.Examinations, e => Assert.NotNull(e.ExaminedOn));
        Assert.NotEmpty(record.Examinations);
        Assert.NotEmpty(record.Limits);
        Assert.Equal("Guild examiner", record.People.Single(p => p.Id == record.Visit.Examiner).Qualifications);
    }

    [Fact]
    public void A_photo_of_the_earlier_visit_is_not_looked_for_in_the_next()
    {
        var earlier = Visits.Visit("V-1", "2026-05-11");
        earlier["examinations"]![0]!["observations"]![0]!["photo"] = "photos/earlier.jpg";
        _visits.Import(earlier);
        var (draft, _) = Start(new FromRegister(_visits.Register, new LocalDate(2026, 11, 11), null, Visits.Today));
        var read = CheckRecord.Of(File(draft!), Visits.Today).Visit!;
        Assert.NotEmpty(read.Recorded.Examinations.SelectMany(e => e.Observations));
        Assert.DoesNotContain(read.Findings, f => f.Code is "INT042");
    }

    [Fact]
    public void A_list_comes_in_unexamined_and_what_it_has_as_out_of_use_stays_withdrawn()
    {
        using var list = new ListFile();
        list.Sheet(
            "Kit",
            [
                ["Asset No.", "Type", "Maker", "Model", "Serial No.", "Result"],
                ["C-1", "Karabiner", "Fennick Works", "Talon", "S1", "Pass"],
                ["C-2", "Karabiner", "Fennick Works", "Talon", "S2", "Fail"],
            ]
        );
        Assert.NotNull(list.Adopt(ListFile.Propose).Written);
        var (opened, _) = OpenedList.Open(Path.Combine(list.Folder, list.Name), null, KnownRules.BuiltIn);
        Assert.Empty(opened!.ToSettle);
        var request = new StartVisitRequest(null, null, Visits.Today, Examiner) { Adopted = opened.Take(ListFile.AsOf).Record };
        var draft = StartVisit.Run(request).Draft!.With("/visit/examinedOn", "2026-05-11").With("/visit/reportedOn", "2026-05-11");
        var items = CheckRecord.Of(File(draft), Visits.Today).Visit!.Items;
        Assert.Equal([Outcome.Undetermined, Outcome.Withdraw], items.Select(i => i.Outcome));
        Assert.Contains(items[1].Reasons, r => r.Code is "W10");
        Assert.All(draft.Record.Examinations, e => Assert.Equal(Conclusion.Withdraw, e.Conclusion));
    }

    [Fact]
    public void Nothing_due_is_refused_in_a_sentence()
    {
        _visits.Import(Visits.Visit("V-1", "2026-05-11"));
        var (draft, refused) = Start(new FromRegister(_visits.Register, new LocalDate(2026, 11, 10), null, Visits.Today));
        Assert.Null(draft);
        Assert.Contains("nothing in the register falls due", refused, StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_visit_needs_no_register()
    {
        var (draft, refused) = StartVisit.Run(new StartVisitRequest(null, _visits.Register + ".none", Visits.Today, Examiner));
        Assert.Null(refused);
        Assert.Empty(draft!.Record.Items);
        Assert.Equal("Ada Fenn", Assert.Single(draft.Record.People).Name);
        Assert.Equal("examdocs/1", draft.Record.Format);
    }

    private string File(Intake.Drafting.RecordDraft draft) => _visits.File(JsonNode.Parse(draft.Write())!.AsObject());

    private (Intake.Drafting.RecordDraft? Draft, string? Refused) Start(FromRegister due) =>
        StartVisit.Run(new StartVisitRequest(due, _visits.Register, Visits.Today, Examiner));
}
