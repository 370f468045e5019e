using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;

namespace ExamDocs.UseCases.Recording;

/// <summary>How far the recording of an item has come.</summary>
/// <param name="Item">The item.</param>
/// <param name="Category">Null where it names none that is known.</param>
/// <param name="Answered">Criteria with an answer.</param>
/// <param name="Unanswered">Required criteria without one.</param>
/// <param name="IsConcluded">Whether the examiner's conclusion is there.</param>
public sealed record ItemProgress(Item Item, Category? Category, int Answered, int Unanswered, bool IsConcluded)
{
    /// <summary>Nothing was recorded yet.</summary>
    public bool IsUntouched => Answered == 0 && !IsConcluded;

    /// <summary>An item that was not there to be examined needs no answers.</summary>
    public bool IsAway => Item.Status is ItemStatus.NotPresented or ItemStatus.Lost or ItemStatus.Destroyed;

    public bool IsDone => Category is not null && Unanswered == 0 && IsConcluded;

    /// <summary>Of every item of a record, in its order.</summary>
    public static IReadOnlyList<ItemProgress> Of(ExaminationRecord record, KnownRules rules)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(rules);
        return [.. record.Items.Select(item => Of(record, item, rules.FindCategory(item.Category)))];
    }

    private static ItemProgress Of(ExaminationRecord record, Item item, Category? category)
    {
        var now = record.Examinations.FirstOrDefault(e =>
            item.Id is not null
            && string.Equals(e.Item, item.Id, StringComparison.Ordinal)
            && e is { ExaminedOn: null, ExaminedOnUnreadable: false }
        );
        var criteria = category?.Criteria ?? [];
        bool IsAnswered(Criterion criterion) => now is not null && criterion.AnswersIn(now).Any();
        return new ItemProgress(
            item,
            category,
            criteria.Count(IsAnswered),
            criteria.Count(c => c.Required && !IsAnswered(c)),
            now?.Conclusion is not null
        );
    }
}
