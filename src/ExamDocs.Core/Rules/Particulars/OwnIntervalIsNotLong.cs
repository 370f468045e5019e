using System.Globalization;
using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class OwnIntervalIsNotLong : ExaminationRule
{
    private const int LongestBuiltIn = 12;

    public OwnIntervalIsNotLong()
        : base(
            new RuleInfo(
                "PAR040",
                Severity.Warning,
                "A regime of the user's own gives kit that lifts or holds persons 12 months at most",
                "No law or standard that the program knows lets such kit go longer; a longer interval may be a slip in the "
                    + "user's own file.",
                $"Look the interval up in the law that the regime is for, and correct the file; or let the examiner set an earlier date.",
                "EN 365:2004 4.4 (unofficial copy)"
            )
        ) =>
        Each(e =>
            e.Item?.Item.Purpose is Purpose.Other
                ? []
                : e
                    .Regimes.Where(r => r.AddedFrom is not null && MonthsOf(r, e) > LongestBuiltIn)
                    .Select(r => new Fault(
                        "/regime",
                        $"the user's own regime {r.Id} ({r.AddedFrom}) gives kit that lifts or holds persons {MonthsOf(r, e)} months",
                        Item: e.ItemId
                    ))
        );

    /// <summary>The months in the regime's table; the basis is left out, because it may shorten the interval only this time.</summary>
    private static int MonthsOf(Regime regime, ExaminationCase e) => regime.MonthsFor(e.Item?.Item.Purpose, e.On);
}
