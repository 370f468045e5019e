using System.Text.Json;

namespace ExamDocs.Proof.Tests.SecondEvaluator;

/// <summary>Earlier withdrawals that nobody has ended (W10).</summary>
internal sealed class OpenHolds(JsonElement record, IReadOnlyList<PastHold> store)
{
    private readonly IReadOnlyList<JsonElement> _releases = record.List("releases");
    private readonly IReadOnlyList<JsonElement> _renewals = record.List("renewals");

    public bool Any(Kit kit) =>
        kit.Earlier.Any(earlier => IsOpen(kit, earlier.Examination, earlier.On))
        || store.Any(hold => hold.Item == kit.Id && hold.On < kit.On && IsOpen(kit, hold));

    private bool IsOpen(Kit kit, JsonElement examination, DateOnly on)
    {
        var codes = FoundRules.Withdrawals(examination, kit.Kind, kit.Limits, on).Concat(LifeRules.ExpiryThen(kit, on)).ToList();
        var never = codes.Contains("W5") || FoundRules.RestsOnWhatIsNeverReleased(examination, kit.Kind);
        return codes.Count > 0
            && (
                never
                || !_releases.Any(release =>
                    release.Text("item") == kit.Id
                    && !(release.Day("on") < on)
                    && !store.Any(hold => hold.Item == kit.Id && hold.On != on && hold.Document == release.Text("document"))
                )
            );
    }

    private bool IsOpen(Kit kit, PastHold hold)
    {
        if (hold.Codes.Count > 0 && hold.Codes.All(code => code is "W8" or "W9") && IsRenewed(kit, hold))
        {
            return false;
        }

        return hold.Never
            || hold.Codes.Contains("W5")
            || hold.Document is null
            || !_releases.Any(release =>
                release.Text("item") == hold.Item && release.Text("document") == hold.Document && !(release.Day("on") < hold.On)
            );
    }

    /// <summary>Every part it rested on has since been taken off, or it has itself been taken off.</summary>
    private bool IsRenewed(Kit kit, PastHold hold)
    {
        var since = _renewals
            .Where(renewal => renewal.Day("doneOn") >= hold.On && (kit.Examination is null || renewal.Day("doneOn") <= kit.On))
            .ToList();
        var parts = hold.Codes.Contains("W9") ? hold.Parts : [];
        return parts.All(part => since.Any(r => r.Text("item") == hold.Item && r.Text("removedPart") == part))
            && (parts.Count > 0 || since.Any(r => r.Text("item") == hold.Item || r.Text("removedPart") == hold.Item))
            && (!hold.Codes.Contains("W8") || since.Any(r => r.Text("removedPart") == hold.Item));
    }
}
