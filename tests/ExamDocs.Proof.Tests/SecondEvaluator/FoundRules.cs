using System.Text.Json;

namespace ExamDocs.Proof.Tests.SecondEvaluator;

/// <summary>What one examination found: answers, defects, diameters and conclusion (W1 to W4, W6, W7, U1, U2).</summary>
internal static class FoundRules
{
    private static readonly HashSet<string> States = ["clear", "noted", "doubt", "defect", "no-sign", "not-examined", "not-applicable"];

    public static IEnumerable<string> Withdrawals(JsonElement examination, Kind? kind, IReadOnlyList<JsonElement> limits, DateOnly on) =>
        Answers(examination, kind, on)
            .Concat(examination.List("defects").Where(defect => IsDangerNow(defect, on)).Select(_ => "W4"))
            .Concat(examination.Text("conclusion") == "withdraw" ? ["W6"] : [])
            .Concat(examination.List("diameters").Any(station => limits.Any(entry => IsOutside(station, entry))) ? ["W7"] : []);

    public static IEnumerable<string> Gaps(JsonElement examination, Kind kind)
    {
        var answers = examination
            .List("observations")
            .ToLookup(o => o.Text("criterion") ?? "", o => o.Text("state"), StringComparer.Ordinal);
        if (answers.SelectMany(group => group).Any(state => state is not null && !States.Contains(state)))
        {
            yield return "U2";
        }

        foreach (var criterion in kind.Criteria.Values)
        {
            var given = answers[criterion.Id].ToList();
            if (criterion.Required && (given.Count == 0 || given.Any(state => state is null or "not-examined")))
            {
                yield return "U1";
            }

            if (given.Any(state => state is not null && !Allows(criterion, state)))
            {
                yield return "U2";
            }
        }
    }

    public static bool Allows(Criterion criterion, string state) =>
        state switch
        {
            "noted" => criterion.Noted,
            "no-sign" => criterion.NoSign,
            "not-applicable" => criterion.NotApplicable,
            _ => States.Contains(state),
        };

    public static bool HasDefectOfNoCriterion(JsonElement examination, Kind kind) =>
        examination.List("observations").Any(o => o.Text("state") == "defect" && !kind.Criteria.ContainsKey(o.Text("criterion") ?? ""));

    public static bool RestsOnWhatIsNeverReleased(JsonElement examination, Kind? kind) =>
        examination
            .List("observations")
            .Any(o =>
                o.Text("state") is "defect" or "doubt"
                && kind is not null
                && kind.Criteria.TryGetValue(o.Text("criterion") ?? "", out var c)
                && c.NeverReleasable
            );

    private static IEnumerable<string> Answers(JsonElement examination, Kind? kind, DateOnly on)
    {
        foreach (var observation in examination.List("observations"))
        {
            var state = observation.Text("state");
            if (state == "doubt")
            {
                yield return "W2";
            }

            if (state == "defect" && kind is not null && kind.Criteria.TryGetValue(observation.Text("criterion") ?? "", out var criterion))
            {
                if (criterion.Class == "decisive")
                {
                    yield return "W1";
                }
                else if (!IsPutOff(examination, criterion.Id, on))
                {
                    yield return "W3";
                }
            }
        }
    }

    private static bool IsPutOff(JsonElement examination, string criterion, DateOnly on)
    {
        var entries = examination.List("defects").Where(defect => defect.Text("criterion") == criterion).ToList();
        return entries.Count > 0
            && entries.All(entry =>
                entry.Text("danger") == "later" && entry.Day("becomesDangerOn") > on && entry.Text("remedy") is not null
            );
    }

    private static bool IsDangerNow(JsonElement defect, DateOnly on) =>
        defect.Text("danger") == "now"
        || defect.Yes("imminentRisk")
        || (defect.Text("danger") == "later" && !(defect.Day("becomesDangerOn") > on));

    /// <summary>Without division: the sum of n readings against n times the bound.</summary>
    private static bool IsOutside(JsonElement station, JsonElement limits)
    {
        var readings = station.List("readingsMm").Where(r => r.ValueKind == JsonValueKind.Number).Select(r => r.GetDecimal()).ToList();
        if (
            readings.Count == 0
            || limits.Number("nominalDiameterMm") is not { } nominal
            || limits.Number("diameterTolerancePercent") is not { } tolerance
        )
        {
            return false;
        }

        var sum = readings.Sum() * 100;
        return sum < readings.Count * nominal * (100 - tolerance) || sum > readings.Count * nominal * (100 + tolerance);
    }
}
