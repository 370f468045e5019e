using ExamDocs.Core.Cases;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.CaseForService;

/// <summary>What it has been through.</summary>
internal static class HistoryEvidence
{
    public static IEnumerable<LedgerEntry> Of(ItemCase item, IReadOnlyList<Reason> reasons) =>
    [
        Use(item.Item),
        .. item.Examination?.Examination.Exposure is { } exposure ? Exposure(exposure) : [],
        item.LastExamined is { } last
            ? Entry(Bearing.For, $"last examined {Say.When(last)}")
            : Entry(Bearing.Open, "no earlier examination is known"),
        .. item.Earlier.Where(e => e.On is not null).Select(Earlier),
        .. item.Earlier.Concat(item.Deciding).Select(e => e.EventInService).Where(e => e is not null).Distinct()
            .Select(e => Entry(Bearing.Neutral, $"exceptional event on {Say.Day(e!.On)}: {e.What}")),
        .. item.Context.Renewals.Where(r => Concerns(r.Row, item.ItemId)).Select(r => Entry(Bearing.Neutral, Renewed(r.Row))),
        .. item.Context.Remedies.Where(r => item.ItemId is not null && Same(r.ItemId, item.ItemId)).Select(r => Entry(Bearing.Neutral, Remedied(r.Row))),
        .. Ledger.Reasons(reasons, Heading.History, "W10", "U0"),
    ];

    /// <summary>A remedy in words.</summary>
    public static string Remedied(Remedy remedy) =>
        $"{remedy.What ?? "a remedy not described"}{(remedy.DoneOn is { } on ? $" on {Say.Day(on)}" : "")}{(remedy.Evidence is { } evidence ? $" ({evidence})" : "")}";

    /// <summary>A renewal in words.</summary>
    public static string Renewed(Renewal renewal)
    {
        var on = renewal.DoneOn is { } day ? $" on {Say.Day(day)}" : "";
        return (renewal.RemovedPart, renewal.FittedPart) switch
        {
            ({ } off, { } fitted) => $"{off} taken off {renewal.Item} and {fitted} fitted{on}",
            ({ } off, _) => $"{off} taken off {renewal.Item}{on}",
            var (_, fitted) => $"{fitted} fitted to {renewal.Item}{on}",
        };
    }

    private static LedgerEntry Use(Item item) => item switch
    {
        { NeverUsed: true } => Entry(Bearing.For, "never used"),
        { FirstUsed: { } first } => Entry(Bearing.Neutral, $"first used {Say.When(first)}"),
        _ => Entry(Bearing.Open, "first use not recorded"),
    };

    private static IEnumerable<LedgerEntry> Exposure(Exposure exposure)
    {
        var parts = new[]
        {
            exposure.Use is { } use ? $"use {use}" : null, exposure.Hardware is { } hardware ? $"on a {hardware}" : null,
            exposure.Ground is { } ground ? $"ground {ground}" : null, exposure.UserMassKg is { } mass ? $"user of {Say.Number(mass)} kg" : null,
        }.OfType<string>().ToList();
        return parts.Count == 0 ? [] : [Entry(Bearing.Neutral, string.Join(", ", parts))];
    }

    private static LedgerEntry Earlier(ExaminationCase examination)
    {
        var conclusion = examination.Examination.Conclusion is { } word ? Words.Conclusions.WordFor(word) : "not recorded";
        return Entry(examination.Examination.Conclusion is Conclusion.Fit ? Bearing.For : Bearing.Neutral,
            $"examined on {Say.Day(examination.On!.Value)}, conclusion {conclusion}");
    }

    private static bool Concerns(Renewal renewal, string? id) =>
        id is not null && (Same(renewal.Item, id) || Same(renewal.FittedPart, id) || Same(renewal.RemovedPart, id));

    private static bool Same(string? one, string? other) => string.Equals(one, other, StringComparison.Ordinal);

    private static LedgerEntry Entry(Bearing bearing, string text) => new(Heading.History, bearing, text, Ledger.TheRecord);
}
