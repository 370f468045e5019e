using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Renewals;

public sealed class RetyingIsAllowed : Rule<RowCase<Renewal>>
{
    public RetyingIsAllowed()
        : base(
            new RuleInfo(
                "REN011",
                Severity.Error,
                "A termination is re-tied only by whom its maker lets",
                "A stopper that its maker alone may tie says nothing any more once somebody else has tied it.",
                "Fit a part tied by its maker, or record what the maker's instructions say of re-tying and who re-tied it.",
                "the maker's instructions recorded in the limits"
            )
        ) =>
        Forbid(
            r => r.Row.RetiedBy is not null && Objection(r) is not null,
            "/retiedBy",
            r => $"re-tied by {r.Row.RetiedBy}, and {Objection(r)}"
        );

    /// <summary>
    /// Why it may not be re-tied so; null where it may. The part's own limits count first, else those of the item renewed; of several,
    /// the strictest holds.
    /// </summary>
    private static string? Objection(RowCase<Renewal> renewal)
    {
        var ofPart = Allowed(renewal.Context.ItemsWithId(renewal.Row.FittedPart));
        var allowed = ofPart.Count > 0 ? ofPart : Allowed(renewal.Context.ItemsWithId(renewal.Row.Item));
        return allowed switch
        {
            [] => "the maker's word on who may re-tie it is not recorded",
            _ when allowed.Contains(Retying.Maker) => "its maker alone may re-tie it",
            _ when allowed.Contains(Retying.CompetentPerson) && !IsCompetent(renewal) =>
                "its maker lets only a competent person re-tie it: the one who supervised the renewal, or an examiner of this record",
            _ => null,
        };
    }

    private static List<Retying> Allowed(IEnumerable<ItemCase> items) =>
        [.. items.SelectMany(i => i.Limits.All).Select(l => l.Retying).OfType<Retying>()];

    private static bool IsCompetent(RowCase<Renewal> renewal) =>
        Same(renewal.Row.RetiedBy, renewal.Row.SupervisedBy)
        || renewal.Context.Examinations.Any(e => Same(renewal.Row.RetiedBy, e.Examination.Examiner));

    private static bool Same(string? one, string? other) => string.Equals(one, other, StringComparison.Ordinal);
}
