using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using ExamDocs.Core.Service;
using NodaTime;

namespace ExamDocs.Core.Rules.Renewals;

public sealed class FittedPartIsInDate : Rule<RowCase<Renewal>>
{
    public FittedPartIsInDate()
        : base(
            new RuleInfo(
                "REN008",
                Severity.Error,
                "The part fitted was within its limits on the day it was fitted",
                "A part from the back of the store may be past its storage or its age before it is ever used.",
                $"Fit a part that is in date, or correct the dates.",
                "the maker's instructions recorded in the limits"
            )
        ) => Each(r => r.FittedNow().SelectMany(fitted => Faults(fitted.Part, r.Row)));

    private static IEnumerable<Fault> Faults(ItemCase part, Renewal renewal)
    {
        if (renewal.DoneOn is not { } on)
            yield break;
        if (part.Life.GoverningLimit is { } governing && on > governing.LastDay)
            yield return new Fault(
                "/fittedPart",
                $"{renewal.FittedPart} was fitted on {on}, after its end of service on {governing.LastDay}: " + $"{governing.Sentence}"
            );
        else if (part.Life.StoredTooLong is { } stored)
            yield return new Fault("/fittedPart", $"{renewal.FittedPart}: {stored}");
        else if (part.Item.FirstUsed is null && StoredTooLongBy(part, on) is { } late)
            yield return new Fault("/fittedPart", $"{renewal.FittedPart}: {late}");
    }

    /// <summary>A part without a recorded first use counts as first used on the day it was fitted.</summary>
    private static Sentence? StoredTooLongBy(ItemCase part, LocalDate on) =>
        part
            .Limits.All.Select(l => TimeLimits.StoredTooLong(part.Item with { FirstUsed = PartialDate.Of(on) }, l))
            .FirstOrDefault(s => s is not null);
}
