using ExamDocs.Core.Cases;

namespace ExamDocs.Core.Determination.CaseForService;

/// <summary>
/// The argument for keeping an item in service, in the order in which an examiner argues. It decides nothing: it lists what the
/// outcome rules weighed, so that whoever signs can follow every step.
/// </summary>
internal static class Ledger
{
    /// <summary>The source of evidence that comes from the record itself and not from a law or instructions.</summary>
    public const string TheRecord = "as recorded";

    /// <param name="item">The item.</param>
    /// <param name="reasons">Every reason against the item, and every one that limits it.</param>
    /// <param name="findings">The findings that reach it.</param>
    public static IReadOnlyList<LedgerEntry> Of(ItemCase item, IReadOnlyList<Reason> reasons, IReadOnlyList<Findings.Finding> findings) =>
        [
            .. IdentityEvidence.Of(item, reasons),
            .. FindingEvidence.Of(findings, Heading.Identity),
            .. HistoryEvidence.Of(item, reasons),
            .. FindingEvidence.Of(findings, Heading.History),
            .. ObservedEvidence.Of(item, reasons),
            .. MeasuredEvidence.Of(item, reasons),
            .. FindingEvidence.Of(findings, Heading.Measurements),
            .. LimitsEvidence.Of(item, reasons),
            .. FindingEvidence.Of(findings, Heading.Limits),
            .. DoubtEvidence.Of(item, reasons),
            .. FindingEvidence.Of(findings, Heading.Doubts),
            .. DoubtEvidence.Conclusion(item),
        ];

    /// <summary>The reasons with these codes: as evidence against the item where they withdraw it, else as open.</summary>
    public static IEnumerable<LedgerEntry> Reasons(IReadOnlyList<Reason> reasons, Heading heading, params string[] codes) =>
        from reason in reasons
        where codes.Contains(reason.Code, StringComparer.Ordinal)
        let bearing = reason.Code[0] is 'W' ? Bearing.Against : Bearing.Open
        select new LedgerEntry(heading, bearing, reason.Said, reason.Source) { Code = reason.Code };
}
