using System.Text;
using ExamDocs.Core;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Known;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Json;
using NodaTime;

namespace ExamDocs.Proof.Tests.Histories;

/// <summary>The programme without a register: what was decided is kept in memory.</summary>
internal sealed class Programme : IHistoryRunner, IKnownVisits
{
    private readonly List<(string Json, KnownVisit Visit)> _known = [];

    private int _count;

    public RegisterConsulted? Asked => null;

    public static IHistoryRunner InMemory() => new Programme();

    public IReadOnlyList<KnownVisit> Touching(VisitToDecide visit) =>
        [.. _known.Where(known => !string.Equals(known.Json, visit.Key, StringComparison.Ordinal)).Select(known => known.Visit)];

    public IReadOnlyList<IReadOnlyList<Said>> Run(Run run)
    {
        var visits = run.Records.Select(Read).ToList();
        var decided = DetermineVisits.Of(visits, this, new LocalDate(run.LookedAtOn.Year, run.LookedAtOn.Month, run.LookedAtOn.Day));
        for (var at = 0; at < visits.Count; at++)
        {
            _known.RemoveAll(known => known.Json == visits[at].Key);
            var labels = run.Labels?[at];
            var outcomes = KnownOutcomes
                .Of(decided[at].Visit)
                .Select(
                    (outcome, item) =>
                        labels is null || outcome.Outcome != Outcome.Withdraw || item >= decided[at].Visit.Items.Count
                            ? outcome
                            : outcome with
                            {
                                Documents = [new KnownDocument($"{labels}{item:00}", "quarantine-label")],
                            }
                )
                .ToList();
            _known.Add((visits[at].Key, new KnownVisit(++_count, visits[at].Record, outcomes)));
        }

        return [.. decided.Select(d => d.Visit.Items.Select(FromProgramme.Said).ToList())];
    }

    public void Dispose() => _known.Clear();

    private static VisitToDecide Read(string json)
    {
        var read = JsonRecordReader.Read(Encoding.UTF8.GetBytes(json), "record.json");
        return new VisitToDecide(read.Record!, read.Findings, json);
    }
}
