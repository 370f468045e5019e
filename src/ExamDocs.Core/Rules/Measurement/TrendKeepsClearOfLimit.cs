using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Sentences;
using NodaTime;

namespace ExamDocs.Core.Rules.Measurement;

/// <summary>Warns where the trend would reach the maker's limit while the item is still meant to serve.</summary>
public sealed class TrendKeepsClearOfLimit : ExaminationRule
{
    public TrendKeepsClearOfLimit()
        : base(
            new RuleInfo(
                "MEA007",
                Severity.Warning,
                "The diameter does not reach the maker's limit within the time of service",
                "Wear that goes on as it has gone reaches the limit on a day that can be calculated.",
                $"Weigh the time proposed; where you agree, enter the defect with the time by which it could become a danger.",
                "Sen 1968 (Theil-Sen); least squares with a 95 % prediction band; the maker's limit"
            )
        ) =>
        Each(e =>
            MeasuredNow.Of(e) is { Trend.Governing: { } governing } && IsReachedInTime(e.Item!, governing.Reaches!.Value)
                ?
                [
                    new Fault(
                        "/diameters",
                        $"{new Sentence(w => w.Diameters.Projected(governing))}; it counts only once it is entered as a defect"
                    ),
                ]
                : []
        );

    /// <summary>
    /// True where the limit is reached by the end of service or the next examination, whichever is later; always where neither is known.
    /// </summary>
    private static bool IsReachedInTime(ItemCase item, LocalDate reaches)
    {
        var ends = new[] { item.Life.End, item.NextBy }.OfType<LocalDate>().ToList();
        return ends.Count == 0 || reaches <= ends.Max();
    }
}
