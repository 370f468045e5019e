using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using ExamDocs.Core.Statistics;
using ExamDocs.Templates.Lessons;
using NodaTime;

namespace ExamDocs.UseCases.Teaching;

/// <summary>
/// How far two examiners who looked at the same item soon after each other saw the same. Of whom the answers are is not kept: it is
/// about the criteria, not about persons.
/// </summary>
internal static class CountAgreement
{
    /// <summary>Our own choice: within so many days two examinations count as of one state of the item.</summary>
    private const int MostDays = 31;

    private static readonly ObservedState[] Seen = [ObservedState.Noted, ObservedState.Doubt, ObservedState.Defect];

    public static IReadOnlyList<AgreementRow> Of(IReadOnlyList<ItemHistory> items)
    {
        var answers = items.SelectMany(Answers).ToList();
        if (answers.Count == 0)
            return [];
        return
        [
            new AgreementRow(null, Kappa(answers)),
            .. answers
                .GroupBy(a => a.Criterion, StringComparer.Ordinal)
                .OrderBy(g => g.Key, StringComparer.Ordinal)
                .Select(g => new AgreementRow(g.Key, Kappa([.. g]))),
        ];
    }

    private static IEnumerable<(string Criterion, bool First, bool Second)> Answers(ItemHistory item) =>
        item
            .Examined.Zip(item.Examined.Skip(1))
            .Where(pair => IsPair(pair.First, pair.Second))
            .SelectMany(pair => Answers(pair.First.Recorded!, pair.Second.Recorded!));

    private static bool IsPair(LookedAt first, LookedAt second) =>
        first.Recorded is not null
        && second.Recorded is not null
        && Folded.Differ(first.Examiner, second.Examiner)
        && second.Day <= first.Day.PlusDays(MostDays);

    private static IEnumerable<(string Criterion, bool First, bool Second)> Answers(Examination one, Examination other)
    {
        var (first, second) = (Answers(one), Answers(other));
        return first.Keys.Intersect(second.Keys, StringComparer.Ordinal).Select(c => (c, first[c], second[c]));
    }

    /// <summary>Whether something was seen, for each criterion answered; of two answers to one the worse counts.</summary>
    private static Dictionary<string, bool> Answers(Examination examination) =>
        examination
            .Observations.Where(o => o.Criterion is not null && IsAnswer(o))
            .GroupBy(o => o.Criterion!, StringComparer.Ordinal)
            .ToDictionary(c => c.Key, c => c.Any(IsSeen), StringComparer.Ordinal);

    private static bool IsAnswer(Observation o) => o.State is ObservedState.Clear or ObservedState.NoSign || IsSeen(o);

    private static bool IsSeen(Observation o) => o.State is { } state && Seen.Contains(state);

    private static CohenKappa Kappa(IReadOnlyList<(string Criterion, bool First, bool Second)> answers) =>
        new(
            answers.Count(a => a is { First: true, Second: true }),
            answers.Count(a => a is { First: true, Second: false }),
            answers.Count(a => a is { First: false, Second: true }),
            answers.Count(a => a is { First: false, Second: false })
        );
}
