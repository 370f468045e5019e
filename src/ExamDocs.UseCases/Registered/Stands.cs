using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>How an item stands by one of the things known of it.</summary>
/// <param name="Standing">How it stands.</param>
/// <param name="Why">Since when, until when or why.</param>
/// <param name="IsByDate">Only because a day has passed, or none is recorded.</param>
internal sealed record Stands(Standing Standing, Message Why, bool IsByDate = false)
{
    /// <summary>By a part that is fitted to it; null where nothing is against that.</summary>
    public static Stands? Of(PartElsewhere part, LocalDate today)
    {
        var document = Message.AsIs(part.Document is null ? "" : $" ({part.Document})");
        if (part.Outcome is Outcome.Withdraw)
            return new(Standing.Held, $"{part.Id}, which is fitted to it, is withdrawn{document}");
        if (part.Outcome is Outcome.Undetermined)
            return new(Standing.Held, $"{part.Id}, which is fitted to it, is not determined{document}");
        if (part.Until < today)
            return new(Standing.Held, $"{part.Id}, which is fitted to it, was not to be used after {part.Until.Value}", IsByDate: true);
        return part.NextBy < today
            ? new(
                Standing.Overdue,
                $"{part.Id}, which is fitted to it, was due for its next examination by {part.NextBy.Value}",
                IsByDate: true
            )
            : null;
    }
}
