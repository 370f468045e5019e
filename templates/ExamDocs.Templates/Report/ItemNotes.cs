using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates.Report.Wording;
using ExamDocs.Templates.Shared;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Items;

namespace ExamDocs.Templates.Report;

/// <summary>What a report says of an item besides its particulars: in the last column of its line, or below its block.</summary>
internal static class ItemNotes
{
    private static ReportPhrases Words => ReportPhrases.Current;

    private static ItemPhrases ItemWords => ItemPhrases.Current;

    public static IReadOnlyList<string> Of(DeterminedVisit visit, ReportItem item) =>
        [
            .. Noted(item),
            .. NoSign(item.Examination),
            .. Fitted(item),
            .. visit.Record.Renewals.Where(r => Concerns(r, item.Item.Id)).Select(r => RenewalLine.Of(r, visit)),
            .. visit.Record.Remedies.Where(r => Is(r.Item, item.Item.Id)).Select(r => Words.Remedy(r.What, r.DoneOn)),
            .. Releases(visit, item.Item.Id),
            .. item.Determined.Trend?.Proposed is { } proposed ? [Words.TrendProposal(proposed)] : Array.Empty<string>(),
            .. Asked(item),
        ];

    /// <summary>What was noted with an answer and stands neither among the defects nor among the reasons.</summary>
    private static IEnumerable<string> Noted(ReportItem item) =>
        from observation in item.Examination.Observations
        where observation.State is ObservedState.Noted || (HasNote(observation) && !IsSaid(item, observation))
        let answer = IsPlain(observation.State) ? null : Phrases.State(observation.State!.Value)
        select Printed.Join(Words.Colon, Printed.Criterion(observation.Criterion), answer, Printed.Text(observation.Note));

    /// <summary>An answer that needs no word beside its note: noted, or that nobody could be asked, which is said by itself.</summary>
    private static bool IsPlain(ObservedState? state) => state is null or ObservedState.Noted or ObservedState.NoSign;

    private static bool HasNote(Observation observation) => !string.IsNullOrWhiteSpace(observation.Note);

    private static bool IsSaid(ReportItem item, Observation observation) =>
        observation.State is ObservedState.Doubt or ObservedState.Defect
        && ShortReasons
            .Of(item.Determined)
            .Concat(item.Defects.Select(d => d.Description))
            .Any(said => said.Contains(observation.Note!, StringComparison.Ordinal));

    /// <summary>Nobody could be asked: that weighs less than a clear answer, and is said.</summary>
    private static IEnumerable<string> NoSign(Examination examination)
    {
        var criteria = examination
            .Observations.Where(o => o.State is ObservedState.NoSign)
            .Select(o => Printed.Criterion(o.Criterion))
            .ToList();
        return criteria.Count == 0 ? [] : [Words.NoSign + Words.Colon + string.Join(", ", criteria)];
    }

    private static IEnumerable<string> Fitted(ReportItem item) =>
        [
            .. item.Item.FittedTo is { } parent ? [ItemWords.FittedTo + Words.Colon + parent] : Array.Empty<string>(),
            .. item.Determined.Parts.Count > 0
                ? [ItemWords.Parts + Words.Colon + string.Join(", ", item.Determined.Parts)]
                : Array.Empty<string>(),
        ];

    /// <summary>Releases of this record and of all others: what was once released as recorded in error is printed for good.</summary>
    private static IEnumerable<string> Releases(DeterminedVisit visit, string? id) =>
        visit
            .Record.Releases.Where(r => Is(r.Item, id))
            .Select(r => (Release: r, By: RenewalLine.Name(r.By, visit)))
            .Concat(
                visit
                    .History.Releases.Where(r => Is(r.ItemId, id) && r.Release.Because is ReleaseReason.RecordedInError)
                    .Select(r => (r.Release, By: Printed.Text(r.By)))
            )
            .Select(r => Words.Release(r.Release.On, r.By, r.Release.Because is ReleaseReason.RecordedInError, r.Release.Grounds))
            .Distinct(StringComparer.Ordinal);

    /// <summary>What only some laws ask for.</summary>
    private static IEnumerable<string> Asked(ReportItem item) =>
        [
            .. item.Asks(LawAsks.Purchase)
                ?
                [
                    Words.Purchased + Words.Colon + Printed.ShortDay(item.Item.Purchased),
                    ItemWords.FirstUsed + Words.Colon + item.FirstUsed,
                ]
                : Array.Empty<string>(),
            .. item.Asks(LawAsks.Documents) ? [Words.DeclarationLabel + Words.Colon + item.Declaration] : Array.Empty<string>(),
        ];

    private static bool Concerns(Renewal renewal, string? id) =>
        Is(renewal.Item, id) || Is(renewal.FittedPart, id) || Is(renewal.RemovedPart, id);

    private static bool Is(string? one, string? id) => id is not null && string.Equals(one, id, StringComparison.Ordinal);
}
