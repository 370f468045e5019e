using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using NodaTime;

namespace ExamDocs.Core.Rules.Dates;

public sealed class NothingIsInTheFuture : Rule<VisitCase>
{
    public NothingIsInTheFuture()
        : base(
            new RuleInfo(
                "DAT010",
                Severity.Error,
                "Nothing is dated in the future",
                "What has not happened yet cannot be reported.",
                $"Correct the date, or the clock of the machine.",
                "common practice, no source"
            )
        )
    {
        Forbid(v => v.Visit.ExaminedOn > v.Context.AsOf, "/visit/examinedOn", v => $"the date examined is in the future");
        Forbid(v => v.Visit.ReportedOn > v.Context.AsOf, "/visit/reportedOn", v => $"the date of the report is in the future");
        Each(v =>
            v.Context.Examinations.Where(e => e.Examination.ExaminedOn > v.Context.AsOf)
                .Select(e => new Fault($"{e.Path}/examinedOn", $"the date examined is in the future"))
        );
        Each(v => Done(v.Context).Where(d => d.On > v.Context.AsOf).Select(d => new Fault(d.Path, $"{d.On!.Value} is in the future")));
        Each(v =>
            v.Context.Items.SelectMany(Known)
                .Where(d => d.On?.Earliest > v.Context.AsOf)
                .Select(d => new Fault(d.Path, $"{d.On} is in the future"))
        );
    }

    /// <summary>Empty, because the faults have whole pointers: the rule goes through every list.</summary>
    protected override string PathOf(VisitCase subject) => "";

    /// <summary>Dates of what is recorded as done. Releases have a rule of their own.</summary>
    private static IEnumerable<(string Path, LocalDate? On)> Done(RecordContext c) =>
        c
            .Renewals.Select(r => ($"{r.Path}/doneOn", r.Row.DoneOn))
            .Concat(c.Remedies.Select(r => ($"{r.Path}/doneOn", r.Row.DoneOn)))
            .Concat(c.Disposals.Select(d => ($"{d.Path}/on", d.Row.On)))
            .Concat(c.Items.Select(i => ($"{i.Path}/declaration/on", i.Item.Declaration?.On)))
            .Concat(c.Examinations.SelectMany(e => e.Defects).Select(d => ($"{d.Path}/notified/on", d.Defect.Notified?.On)));

    /// <summary>The item's own dates. Where it was examined, other rules already compare most of them with that day.</summary>
    private static IEnumerable<(string Path, PartialDate? On)> Known(ItemCase i) =>
        i.ExaminedOn is not null
            ? [($"{i.Path}/purchased", i.Item.Purchased)]
            :
            [
                ($"{i.Path}/purchased", i.Item.Purchased),
                ($"{i.Path}/manufactured", i.Item.Manufactured),
                ($"{i.Path}/firstUsed", i.Item.FirstUsed),
                ($"{i.Path}/lastExamined", i.Item.LastExamined),
            ];
}
