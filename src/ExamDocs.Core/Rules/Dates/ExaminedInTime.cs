using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Sentences;
using NodaTime;

namespace ExamDocs.Core.Rules.Dates;

public sealed class ExaminedInTime : ExaminationRule
{
    public ExaminedInTime()
        : base(
            new RuleInfo(
                "DAT011",
                Severity.Warning,
                "It was examined before the last interval ran out",
                "Kit used after its due date was used unexamined; the owner should know.",
                "Nothing to type: tell the owner, and examine what happened to the item in the meantime.",
                "SI 1998/2307 reg 9(3)(a)"
            )
        ) => Forbid(e => e.On > Due(e), "", e => $"overdue when examined: it was due by {Say.Day(Due(e)!.Value)}");

    /// <summary>
    /// The day it was due. Where only a month or a year is recorded for the last examination, its last day counts: the rule warns only of
    /// what is certain.
    /// </summary>
    private static LocalDate? Due(ExaminationCase e) =>
        e.Item?.LastExamined is { } last ? e.IntervalFrom(last.Latest)?.LastDay(last.Latest) : null;
}
