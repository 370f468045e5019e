using ExamDocs.Core.Findings;
using ExamDocs.Core.Regimes;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class AuthorityIsNamed : RegimeRule
{
    public AuthorityIsNamed()
        : base(
            new RuleInfo(
                "PAR024",
                Severity.Error,
                "Where a risk is imminent, the enforcing authority is named",
                "A copy of the report goes to the authority as soon as practicable; somebody must know which one.",
                $"Type the enforcing authority's name and address: HSE for hired or leased kit, else the authority for the premises.",
                "SI 1998/2307 reg 10(1)(c) and (4)"
            )
        ) =>
        Each(e =>
            IsNamed(e)
                ? []
                : e
                    .Defects.Where(d => d.Defect.ImminentRisk is true)
                    .Select(d => new Fault(
                        $"{d.Path[e.Path.Length..]}/imminentRisk",
                        $"a risk of serious injury is imminent, and no enforcing authority with name and address is recorded",
                        GoesToTheExecutive(e) ? null : (Message)$"Type the enforcing authority's name and address."
                    ))
        );

    /// <summary>True where a regime sends the copy to the HSE: only then may the hint name it.</summary>
    private static bool GoesToTheExecutive(Cases.ExaminationCase e) =>
        e
            .Regimes.SelectMany(r => r.DutiesTo(DutyKind.CopyAtImminentRisk, hired: true, e.On))
            .Any(d => d.Whom is Recipient.HealthAndSafetyExecutive);

    private static bool IsNamed(Cases.ExaminationCase examination) =>
        examination.Context.Record.Visit.EnforcingAuthority is { Name: not null, Address: not null };
}
