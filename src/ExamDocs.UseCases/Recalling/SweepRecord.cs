using System.Text;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Json;
using NodaTime;

namespace ExamDocs.UseCases.Recalling;

/// <summary>A visit that records what a notice takes out of use.</summary>
/// <param name="Record">The record.</param>
/// <param name="Items">The items in the order of its rows.</param>
internal sealed record SweepVisit(ExaminationRecord Record, IReadOnlyList<PlannedItem> Items);

/// <summary>
/// Makes the records of a sweep: one for each employer, owner, premises and regime. Nobody has looked at the items, and the records say
/// so. What the notice names is withdrawn because its maker says that it is a danger; what may be named is left undetermined.
/// </summary>
/// <param name="notice">The notice.</param>
/// <param name="examiner">The competent person who takes the items out of use.</param>
/// <param name="today">The day of the sweep.</param>
/// <param name="language">The language of the notes.</param>
internal sealed class SweepRecord(SafetyNotice notice, Person examiner, LocalDate today, MessageLanguage language)
{
    /// <summary>Items in one record, inclusive: a record of very many would be refused for its size.</summary>
    internal const int Most = 200;

    /// <summary>Decisive in every category.</summary>
    private const string Identity = "identity";

    /// <param name="items">Those that the sweep takes out or holds.</param>
    /// <param name="byItself">Whether an item that is only fitted to something, or looks like something, needs a reason of its own.</param>
    public IReadOnlyList<SweepVisit> Of(IEnumerable<PlannedItem> items, Func<PlannedItem, bool> byItself) =>
        [
            .. items
                .GroupBy(i => Place(i.Item.LatestVisit), StringComparer.Ordinal)
                .SelectMany(WithoutDoubleIds)
                .Select(of => new SweepVisit(Record(of, byItself), of)),
        ];

    /// <summary>
    /// An item as it was recorded last. What it is fitted to is known from its own records. Whether it is still there is said only where
    /// it was lost: a row of its own would make it destroyed by this record.
    /// </summary>
    public static Item Row(Item item) => item with { FittedTo = null, Status = item.Status is ItemStatus.Lost ? ItemStatus.Lost : null };

    private static string Place(Visit visit) =>
        string.Join(
            '\n',
            FirmName.Fold(visit.Employer?.Name),
            FirmName.Fold(visit.HiredFrom?.Name),
            FirmName.Fold(visit.Premises?.Name),
            FirmName.Fold(visit.Premises?.Address),
            visit.Regime
        );

    /// <summary>Two things under one id go into two records.</summary>
    private static IEnumerable<IReadOnlyList<PlannedItem>> WithoutDoubleIds(IEnumerable<PlannedItem> items)
    {
        var records = new List<(List<PlannedItem> Items, HashSet<string> Keys)>();
        foreach (var item in items)
        {
            var keys = Folded.Keys(item.Item.Item.Id);
            var (of, taken) = records.Find(r => r.Items.Count < Most && !keys.Any(r.Keys.Contains));
            if (of is null)
                records.Add((of, taken) = ([], new(StringComparer.Ordinal)));
            of.Add(item);
            taken.UnionWith(keys);
        }
        return records.Select(r => r.Items);
    }

    private ExaminationRecord Record(IReadOnlyList<PlannedItem> items, Func<PlannedItem, bool> byItself)
    {
        var latest = items.MaxBy(i => i.Item.LatestVisit.ExaminedOn ?? LocalDate.MinIsoValue)!.Item.LatestVisit;
        var record = new ExaminationRecord
        {
            Format = ExaminationRecord.FormatName,
            Visit = latest with { Reference = null, Examiner = null, Basis = null, ExaminedOn = today, ReportedOn = today },
            People = [examiner],
            Items = [.. items.Select(i => Row(i.Item.Item))],
            // What the maker permits and how long it may serve must be known of it as before.
            Limits = [.. items.SelectMany(i => i.Item.Limits).DistinctBy(InWords, StringComparer.Ordinal)],
            Examinations =
            [
                .. items.Where(i => i.Item.Item.Id is not null).Select(i => ExaminationOf(i, byItself(i))).OfType<Examination>(),
            ],
        };
        return record with { Visit = record.Visit with { Reference = SweepReference.Of(notice, record).ToString() } };
    }

    /// <summary>Two records may have the same limits.</summary>
    private static string InWords(MakersLimits limits) =>
        Encoding.UTF8.GetString(JsonRecordWriter.Write(new ExaminationRecord { Limits = [limits] }));

    private Examination? ExaminationOf(PlannedItem item, bool byItself) =>
        (byItself ? item.Item.Verdict : item.Item.Alone) switch
        {
            RecallVerdict.Affected => NotLookedAt(item, $"nobody has looked at it; {Named} names it: {Why(item)}") with
            {
                Defects =
                [
                    new Defect
                    {
                        Part = Say($"the whole item"),
                        Description = Say($"{Named} names it; nobody has looked at it"),
                        Danger = Danger.Now,
                        Remedy = notice.Demands,
                    },
                ],
                Conclusion = Conclusion.Withdraw,
            },
            RecallVerdict.CannotTell => NotLookedAt(item, $"safety notice {notice.Reference} may name it: {Why(item)}"),
            _ => null,
        };

    private Examination NotLookedAt(PlannedItem item, Message why) =>
        new()
        {
            Item = item.Item.Item.Id,
            Examiner = examiner.Id,
            // The notice is no event in the item's service: some makers end that with the first one.
            Basis = Basis.Exceptional,
            Observations =
            [
                new Observation
                {
                    Criterion = Identity,
                    StateAsTyped = Words.States.WordFor(ObservedState.NotExamined),
                    State = ObservedState.NotExamined,
                    Note = Say(why),
                },
            ],
        };

    private Message Named => $"safety notice {notice.Reference} of {notice.Maker} of {notice.On}";

    private static Message Why(PlannedItem item) => Message.Join("; ", item.Item.Reasons);

    private string Say(Message message) => message.In(language);
}
