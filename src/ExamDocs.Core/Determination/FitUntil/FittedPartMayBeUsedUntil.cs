using ExamDocs.Core.Cases;
using ExamDocs.Core.Sentences;
using NodaTime;

namespace ExamDocs.Core.Determination.FitUntil;

/// <summary>D3. The last day of a part is the last day of the whole.</summary>
internal sealed class FittedPartMayBeUsedUntil : IUntilRule
{
    public OutcomeRuleInfo Info { get; } =
        new(
            "D3",
            "A part fitted to it may be used only until a day",
            "The whole may be used no longer than the part on it, unless that part is renewed.",
            "common practice, no source"
        );

    public IEnumerable<(LocalDate LastDay, Reason Reason)> Days(ItemCase item, Verdicts verdicts) =>
        item
            .Parts.Select(part => (Last: verdicts[part].LastDay, Name: (Func<SentenceBook, string>)(w => w.Name(part.Item))))
            .Concat(item.PartsElsewhere.Select(part => (Last: part.Until, Name: (Func<SentenceBook, string>)(_ => part.Id))))
            .Where(part => part.Last is not null)
            .Select(part => (part.Last!.Value, Info.Because(w => w.Reasons.NotAfterPart(part.Last.Value, part.Name(w)))));
}
