using ExamDocs.Register.Model;
using NodaTime;

namespace ExamDocs.Register.Tests;

/// <summary>What a later visit finds ends what earlier documents say of an item, in the transaction that stores the visit.</summary>
public sealed class LineEndTests : Workplace
{
    private static readonly LocalDate On = new(2026, 9, 3);

    [Fact]
    public void A_due_label_and_a_certificate_end_as_a_whole_and_a_report_line_by_line()
    {
        using var register = Open();
        var visit = register.Visits.Remember(SampleVisit.Of("V-1")).Visit;
        var (report, label, certificate) = (
            Give(register, "report", visit, "A", "B", "C"),
            Give(register, "due-label", visit, "A"),
            Give(register, "certificate", visit, "A", "B")
        );
        var other = Give(register, "due-label", visit, "B");
        var copy = Copy(register, report, visit, "A", "B");
        var notice = Give(register, "notice", visit, "A");
        var by = Withdraw(register, "V-2", visit, "A");
        Assert.Equal(
            [(report, null), (label, DocumentEnd.Ended), (certificate, DocumentEnd.Ended), (other, null), (copy, null), (notice, null)],
            new[] { report, label, certificate, other, copy, notice }.Select(n => (n, register.Find(n)!.Ended))
        );
        var line = Assert.Single(register.EndedLines(report));
        Assert.Equal(("A", On, "withdrawn", by), (line.Item, line.On, line.Why, line.ByVisit));
        Assert.Single(register.EndedLines(copy));
        Assert.Empty(register.EndedLines(notice));
        Assert.Equal((On, "withdrawn"), (register.Find(label)!.EndedOn, register.Find(label)!.EndedReason));
        Assert.Empty(register.Check());
    }

    [Fact]
    public void A_report_ends_once_all_its_lines_have()
    {
        using var register = Open();
        var visit = register.Visits.Remember(SampleVisit.Of("V-1")).Visit;
        var report = Give(register, "report", visit, "A", "B");
        Withdraw(register, "V-2", visit, "A");
        Assert.True(register.Find(report)!.IsCurrent);
        Withdraw(register, "V-3", visit, "B");
        Assert.Equal(DocumentEnd.Ended, register.Find(report)!.Ended);
        Assert.Equal(["A", "B"], register.EndedLines(report).Select(l => l.Item));
        Assert.Empty(register.Check());
    }

    [Theory]
    [InlineData("withdraw", false)]
    [InlineData("undetermined", false)]
    [InlineData("fit", true)]
    [InlineData("fit-until", true)]
    public void Only_a_line_that_says_that_the_item_may_be_used_ends(string outcome, bool ends)
    {
        using var register = Open();
        var visit = register.Visits.Remember(SampleVisit.Of("V-1")).Visit;
        var pending = register.Take(new('R', 2026, "report", "a", ["A", "B"], Out) { Visit = visit });
        register.Publish(pending, Pdf("a"), 1, $$"""{"A":"{{outcome}}","B":"fit"}""");
        Withdraw(register, "V-2", visit, "A");
        Assert.Equal(ends, register.EndedLines(pending.Number).Count == 1);
    }

    [Fact]
    public void It_is_told_by_the_labels_and_notices_of_the_visit_that_ended_it()
    {
        using var register = Open();
        var visit = register.Visits.Remember(SampleVisit.Of("V-1")).Visit;
        var report = Give(register, "report", visit, "HB-014", "HB-015");
        var by = Withdraw(register, "V-2", visit, "HB-014");
        var (label, notice) = (Give(register, "quarantine-label", by, "hb 14"), Give(register, "notice", by, "HB-014"));
        Give(register, "quarantine-label", by, "HB-016");
        Give(register, "report", by, "HB-014");
        Assert.Equal([notice, label], Assert.Single(register.EndedLines(report)).Documents);
    }

    /// <summary>Two visits of one day may each withdraw what the other found fit.</summary>
    [Fact]
    public void Two_visits_may_end_lines_of_one_another()
    {
        using var register = Open();
        var visits = register.Visits.Remember([
            SampleVisit.Of("V-1") with
            {
                Ends = [new LineEnd(2, "B", On, "withdrawn")],
            },
            SampleVisit.Of("V-2") with
            {
                Ends = [new LineEnd(1, "A", On, "withdrawn")],
            },
        ])!;
        var (one, two) = (visits[0].Visit, visits[1].Visit);
        var (ofOne, ofTwo) = (Give(register, "report", one, "A", "C"), Give(register, "report", two, "B", "C"));
        var (noticeOfOne, noticeOfTwo) = (Give(register, "notice", one, "B"), Give(register, "notice", two, "A"));
        Assert.Equal([noticeOfTwo], Assert.Single(register.EndedLines(ofOne)).Documents);
        Assert.Equal([noticeOfOne], Assert.Single(register.EndedLines(ofTwo)).Documents);
        Assert.Empty(register.Check());
    }

    [Fact]
    public void What_was_being_printed_meanwhile_ends_when_it_is_out()
    {
        using var register = Open();
        var visit = register.Visits.Remember(SampleVisit.Of("V-1")).Visit;
        var pending = register.Take(new('D', 2026, "due-label", "d", ["A"], Out) { Visit = visit });
        using (var another = Open())
            Withdraw(another, "V-2", visit, "A");
        register.Publish(pending, Pdf("d"), 1, """{"A":"fit"}""");
        Assert.Equal(DocumentEnd.Ended, register.Find(pending.Number)!.Ended);
        Assert.Equal(("A", 2), Assert.Single(register.Visits.EndsOf(visit)) is var (end, by) ? (end.Item, by) : default);
        Assert.Empty(register.Check());
    }

    [Fact]
    public void What_is_ended_twice_keeps_the_first_day_and_reason()
    {
        using var register = Open();
        var visit = register.Visits.Remember(SampleVisit.Of("V-1")).Visit;
        var report = Give(register, "report", visit, "A", "B");
        var by = Withdraw(register, "V-2", visit, "A");
        Withdraw(register, "V-3", visit, "A", On.PlusDays(9));
        Withdraw(register, "V-2", visit, "A");
        Assert.Equal((On, by), Assert.Single(register.EndedLines(report)) is var line ? (line.On, line.ByVisit) : default);
        Assert.Empty(register.Check());
    }

    [Fact]
    public void A_visit_that_is_known_already_can_still_end_a_line()
    {
        using var register = Open();
        var visit = register.Visits.Remember(SampleVisit.Of("V-1")).Visit;
        var label = Give(register, "due-label", visit, "A");
        register.Visits.Remember(SampleVisit.Of("V-2"));
        Assert.Equal(2, Withdraw(register, "V-2", visit, "A"));
        Assert.False(register.Find(label)!.IsCurrent);
    }

    [Fact]
    public void Where_the_visit_cannot_be_stored_nothing_has_ended()
    {
        using var register = Open();
        var visit = register.Visits.Remember(SampleVisit.Of("V-1")).Visit;
        var label = Give(register, "due-label", visit, "A");
        Assert.ThrowsAny<System.Data.Common.DbException>(() =>
            register.Visits.Remember([
                SampleVisit.Of("V-2") with
                {
                    Ends = [new(visit, "A", On, "withdrawn"), new(99, "A", On, "withdrawn")],
                },
            ])
        );
        Assert.True(register.Find(label)!.IsCurrent);
        Assert.Single(register.Visits.All());
        Assert.Empty(register.Check());
    }

    private int Withdraw(DocumentRegister register, string reference, int visit, string item, LocalDate? on = null) =>
        register.Visits.Remember(SampleVisit.Of(reference) with { Ends = [new(visit, item, on ?? On, "withdrawn")] }).Visit;

    private string Give(DocumentRegister register, string kind, int visit, params string[] items) =>
        Give(register, kind, visit, items, copyOf: null);

    private string Copy(DocumentRegister register, string of, int visit, params string[] items) =>
        Give(register, "report", visit, items, of);

    private string Give(DocumentRegister register, string kind, int visit, string[] items, string? copyOf)
    {
        var letter = kind switch
        {
            "report" => 'R',
            "due-label" => 'D',
            "certificate" => 'C',
            "notice" => 'N',
            _ => 'Q',
        };
        var job = $"{kind} {visit} {copyOf} {string.Join(' ', items)}";
        var pending = register.Take(new(letter, 2026, kind, job, items, Out) { Visit = visit, CopyOf = copyOf });
        var outcome = kind is "notice" or "quarantine-label" ? "withdraw" : "fit";
        return register.Publish(pending, Pdf(job), 1, $"{{{string.Join(',', items.Select(i => $"\"{i}\":\"{outcome}\""))}}}").Number;
    }
}
