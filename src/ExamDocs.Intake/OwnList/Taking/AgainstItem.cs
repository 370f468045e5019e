using ExamDocs.Core.Records;
using ExamDocs.Intake.OwnList.Words;
using NodaTime;

namespace ExamDocs.Intake.OwnList.Taking;

/// <summary>What in a row says that its item is out of use.</summary>
/// <param name="Means">Lost, withdrawn or destroyed.</param>
/// <param name="Why">In words, with the heading and what stands there.</param>
/// <param name="On">The day of it, where the list gives one.</param>
internal sealed record AgainstItem(UseMeaning Means, string Why, PartialDate? On)
{
    /// <summary>The list's day for it, the last that a month or year can mean; null where it gives none, or one to come.</summary>
    public LocalDate? Day(LocalDate asOf) => On is { Latest: var last } && last <= asOf ? last : null;
}
