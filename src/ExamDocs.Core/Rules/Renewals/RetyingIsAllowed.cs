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
                "A termination is re-tied only by somebody whom its maker allows",
                "A stopper that its maker alone may tie says nothing any more once somebody else has tied it.",
                $"Fit a part tied by its maker, or record what the maker's instructions say of re-tying and who re-tied it.",
                "the maker's instructions recorded in the limits"
            )
        ) =>
        Forbid(
            r => r.Row.RetiedBy is not null && Objection(r) is not null,
            "/retiedBy",
            r => $"re-tied by {r.Row.RetiedBy}: {Objection(r)}"
        );

    /// <summary>
    /// Why it may not be re-tied so; null where it may. The part's own limits count first, else those of the item renewed; of several,
    /// the strictest holds.
    /// </summary>
    private static Message? Objection(RowCase<Renewal> renewal)
    {
        var ofPart = Allowed(renewal.Context.ItemsWithId(renewal.Row.FittedPart));
        var allowed = ofPart.Count > 0 ? ofPart : Allowed(renewal.Context.ItemsWithId(renewal.Row.Item));
        return allowed switch
        {
            [] => $"it is not recorded whom the maker allows to re-tie it",
            _ when allowed.Contains(Retying.Maker) => $"only its maker may re-tie it",
            _ when allowed.Contains(Retying.CompetentPerson) && !IsCompetent(renewal) =>
                $"its maker allows only a competent person to re-tie it: the one who supervised the renewal, or an examiner of this record",
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
