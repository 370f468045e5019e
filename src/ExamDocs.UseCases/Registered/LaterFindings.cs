using ExamDocs.Core.Determination;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Issuing;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// What other visits found against items of a visit that is only issued now, and deciding it did not know of: one of a later day may
/// have come into the register first; then it could end nothing of this one. What is asked is what verifying the document would ask.
/// </summary>
internal static class LaterFindings
{
    /// <summary>What other visits ended of a visit, whichever came into the register first.</summary>
    /// <inheritdoc cref="Of"/>
    public static EndedLines Ended(DocumentRegister register, int number, DeterminedVisit visit) =>
        EndedLines.Of(register, number, visit, Of(register, number, visit));

    /// <param name="register">The register.</param>
    /// <param name="number">The visit's number in it.</param>
    /// <param name="visit">The visit.</param>
    /// <returns>Ids of items that it may not say may be used.</returns>
    /// <exception cref="RegisterAlteredException">What is stored differs from the log.</exception>
    private static IEnumerable<string> Of(DocumentRegister register, int number, DeterminedVisit visit)
    {
        if (register.Visits.Latest == 1)
            return [];
        var records = new RememberedRecords(register) { WithoutObservations = true };
        List<TouchingVisit> others =
        [
            .. register.Visits.AsLogged(records.Read).Touching(visit.Recorded).Where(t => t.Visit.Visit != number),
        ];
        var named = others.SelectMany(t => Against(t, records.Of(t.Visit.Visit))).ToHashSet(StringComparer.Ordinal);
        if (named.Count == 0)
            return [];
        // What is found against a part is against what it is fitted to, and against what an item was formerly or shares a serial number
        // with: over any number of steps and records.
        var rows = others.SelectMany(t => records.Of(t.Visit.Visit).Items).Concat(visit.Record.Items).ToList();
        for (var count = 0; count < named.Count; )
        {
            count = named.Count;
            named.UnionWith(rows.Where(i => KeysOf(i).Any(named.Contains)).SelectMany(i => KeysOf(i).Concat(Keys(i.FittedTo))).ToList());
        }
        var asked = visit
            .Items.Where(i => i is { Outcome: Outcome.Fit or Outcome.FitUntil, Item.Id: not null } && KeysOf(i.Item).Any(named.Contains))
            .Select(i => i.Item.Id!);
        return new DocumentStanding(register, visit.AsOf).Against(number, [.. asked]).Select(a => a.Item);
    }

    /// <summary>Keys of the items that a visit found something against.</summary>
    private static IEnumerable<string> Against(TouchingVisit visit, ExaminationRecord record) =>
        visit
            .Outcomes.Where(o => OutcomeWords.Find(o.Outcome) is not (Outcome.Fit or Outcome.FitUntil) && o.Codes is not ["U0"])
            .Select(o => o.Item)
            .Concat(record.Disposals.Select(d => d.Item))
            .Concat(record.Items.Where(i => i.Status is ItemStatus.Lost or ItemStatus.Destroyed).Select(i => i.Id))
            .SelectMany(Keys);

    private static IEnumerable<string> KeysOf(Item item) => Keys(item.Id).Concat(SerialKeys.Of(item.Serial)).Concat(Keys(item.Formerly));

    private static IEnumerable<string> Keys(string? text) => Folded.Keys(text);
}
