using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Regimes;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class RegimeIsConfirmed : Rule<VisitCase>
{
    public RegimeIsConfirmed()
        : base(
            new RuleInfo(
                "PAR033",
                Severity.Note,
                "What the regime is taken from was read in its source",
                "Law that was remembered, or seen in a copy only, may have changed or never have been so; whoever relies on it must know.",
                $"Nothing to type: look the law up before you rely on it.",
                "the regime's data, with a source and a confidence for each figure"
            )
        ) =>
        Each(v =>
            Used(v.Context).Where(u => u.Regime.NotConfirmed.Count > 0).Select(u => new Fault(u.Path, $"{u.Regime.Id}: {Words(u.Regime)}"))
        );

    /// <summary>Empty, because the faults have whole pointers: the regime is typed at the visit or at an examination.</summary>
    protected override string PathOf(VisitCase subject) => "";

    private static Message Words(Regime regime) =>
        Message.Join(" ", regime.NotConfirmed.Select(text => (Message)$"{new ProgramText(text)}"));

    /// <summary>Every regime that binds an examination of this visit, once, with the place where it is typed first.</summary>
    private static IEnumerable<(Regime Regime, string Path)> Used(RecordContext context) =>
        context
            .Examinations.Where(e => !e.IsBeforeVisit)
            .SelectMany(e =>
                e.Regimes.Select(r =>
                    (
                        Regime: r,
                        Path: string.Equals(e.Examination.Regime, r.Id, StringComparison.Ordinal) ? $"{e.Path}/regime" : "/visit/regime"
                    )
                )
            )
            .DistinctBy(u => u.Regime.Id, StringComparer.Ordinal);
}
