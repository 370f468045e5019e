using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Dates;

public sealed class NothingIsInTheFuture : Rule<VisitCase>
{
    public NothingIsInTheFuture() : base(new RuleInfo("DAT010", Severity.Error, "Nothing is dated in the future",
        "What has not happened yet cannot be reported.",
        "Correct the date, or the clock of the machine.", "common practice, no source"))
    {
        Forbid(v => v.Visit.ExaminedOn > v.Context.AsOf, "/visit/examinedOn", v => "the date examined is in the future");
        Forbid(v => v.Visit.ReportedOn > v.Context.AsOf, "/visit/reportedOn", v => "the date of the report is in the future");
        Each(v => v.Context.Examinations.Where(e => e.Examination.ExaminedOn > v.Context.AsOf)
            .Select(e => new Fault($"{e.Path}/examinedOn", "the date examined is in the future")));
    }

    /// <summary>The faults carry whole pointers: visit and examinations are looked at together.</summary>
    protected override string PathOf(VisitCase subject) => "";
}
