using System.Text.Json;

namespace ExamDocs.Proof.Tests.SecondEvaluator;

/// <summary>
/// Determines a record a second time, from its text and the written outcome rules alone; shares no code with the
/// programme, so that one misreading is not made twice.
/// </summary>
public sealed class Evaluator
{
    private readonly JsonElement _record;
    private readonly IReadOnlyList<Kit> _kits;
    private readonly OpenHolds _holds;
    private readonly HashSet<Kit> _done = [];
    private readonly HashSet<Kit> _inProgress = [];

    private Evaluator(JsonElement record, IReadOnlyList<PastHold> store)
    {
        _record = record;
        _kits = Assembling.Of(record);
        _holds = new OpenHolds(record, store);
    }

    public static IReadOnlyList<Answer> Answers(string json, IReadOnlyList<PastHold> store)
    {
        using var document = JsonDocument.Parse(json);
        return new Evaluator(document.RootElement, store).Answers();
    }

    private List<Answer> Answers()
    {
        var badVisit = Errors.OfVisit(_record.Member("visit") ?? default);
        foreach (var kit in Renewing.InError(_kits, _record).Concat(badVisit ? _kits : []).ToList())
        {
            kit.Error();
        }

        foreach (var kit in _kits)
        {
            Alone(kit);
        }

        foreach (var kit in _kits)
        {
            WithParts(kit);
        }

        return [.. _kits.Select(ToAnswer)];
    }

    private void Alone(Kit kit)
    {
        if (Errors.OfItem(kit, _record) || MissedByName.Any(kit, _kits, _record))
        {
            kit.Error();
        }

        kit.End = LifeRules.End(kit);
        kit.Codes.UnionWith(kit.Examination is null ? [] : LifeRules.Expiry(kit, kit.On));
        kit.Codes.UnionWith(LifeRules.Uncounted(kit));
        if (kit.Whole is { } whole && whole.Parts.Contains(kit) && !Renewing.IsPermitted(kit, whole))
        {
            kit.Codes.Add("W8");
        }

        if (_holds.Any(kit))
        {
            kit.Codes.Add("W10");
        }

        Found(kit);
    }

    private void Found(Kit kit)
    {
        if (kit.Examination is not { } examination)
        {
            kit.Codes.Add("U0");
            return;
        }

        kit.Codes.UnionWith(FoundRules.Withdrawals(examination, kit.Kind, kit.Limits, kit.On));
        if (kit.Kind is { } kind)
        {
            kit.Codes.UnionWith(FoundRules.Gaps(examination, kind));
            kit.Unsure |= FoundRules.HasDefectOfNoCriterion(examination, kind);
        }

        if (Errors.OfExamination(kit, examination, _record))
        {
            kit.Error();
        }

        kit.OwnNext = IntervalRules.Next(kit, examination, _record.Member("visit")?.Text("regime"));
    }

    private void WithParts(Kit kit)
    {
        if (!_done.Add(kit))
        {
            return;
        }

        _inProgress.Add(kit);
        foreach (var part in kit.Parts)
        {
            if (_inProgress.Contains(part))
            {
                part.Error();
                part.Unsure = true;
                continue;
            }

            WithParts(part);
            kit.Codes.UnionWith(
                part.Withdrawn ? ["W9"]
                : part.Undetermined ? ["U6"]
                : []
            );
            kit.Unsure |= part.Unsure;
        }

        _inProgress.Remove(kit);
        Conclude(kit);
    }

    private static void Conclude(Kit kit)
    {
        if (Errors.IsKinder(kit))
        {
            kit.Error();
        }

        if (kit.Withdrawn || kit.Undetermined)
        {
            return;
        }

        var d1 = kit.Examination!.Value.List("defects")
            .Where(defect => defect.Text("danger") == "later")
            .Select(defect => defect.Day("becomesDangerOn")?.AddDays(-1))
            .Min();
        var d2 = kit.End < kit.OwnNext || kit.OwnNext is null ? kit.End : null;
        var d3 = kit.Parts.Select(part => part.Until).Min();
        kit.Codes.UnionWith([
            .. d1 is null ? [] : new[] { "D1" },
            .. d2 is null ? [] : new[] { "D2" },
            .. d3 is null ? [] : new[] { "D3" },
        ]);
        kit.Until = Days.Earliest([d1, d2, d3]);
    }

    private static Answer ToAnswer(Kit kit) =>
        new(
            kit.Id,
            kit.Outcome,
            kit.Until,
            kit.Withdrawn || kit.Undetermined ? null : Below(kit).Prepend(kit).Select(k => k.OwnNext).Min(),
            kit.Codes,
            kit.Unsure,
            [.. Below(kit).Select(part => part.Position)],
            kit.ExaminationAt
        );

    private static IReadOnlyCollection<Kit> Below(Kit kit)
    {
        HashSet<Kit> found = [];
        Queue<Kit> waiting = new(kit.Parts);
        while (waiting.TryDequeue(out var part))
        {
            if (found.Add(part))
            {
                part.Parts.ForEach(waiting.Enqueue);
            }
        }

        return found;
    }
}
