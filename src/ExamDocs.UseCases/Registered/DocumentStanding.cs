using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Templates;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// Holds what a current document says may be used against what its register knows of the items today, as a search would show it. Most of
/// what ends a document is stored with it; this also finds what came in before the document did, what was only put aside, and items that
/// may be the same under another marking.
/// </summary>
/// <param name="register">The register.</param>
/// <param name="today">The day on which it is looked at.</param>
internal sealed class DocumentStanding(DocumentRegister register, LocalDate today)
{
    private readonly ItemsOnRecord _items = new(register, today) { WithoutObservations = true };

    /// <summary>True where a day that has passed counts too: for what is to be printed again.</summary>
    public bool PassedDaysCount { get; init; }

    private static readonly string[] SayMayBeUsed =
    [
        DocumentTypes.Report.Kind,
        DocumentTypes.Certificate.Kind,
        DocumentTypes.DueLabel.Kind,
    ];

    /// <summary>Whether documents of a kind say that something may be used.</summary>
    public static bool Says(DocumentStatus document) => SayMayBeUsed.Contains(document.Kind, StringComparer.Ordinal);

    /// <summary>Items that a current document says may be used, and that may not be, each with the reason.</summary>
    public IEnumerable<(string Item, Message Why)> Against(DocumentStatus document) =>
        document is { IsCurrent: true, Visit: { } visit } && Says(document) ? Against(visit, [.. Usable(document)]) : [];

    /// <summary>Items that a visit says may be used, and that may not be by what is known today, each with the reason.</summary>
    /// <remarks>That a day has passed is no reason otherwise: the visit itself gave the day.</remarks>
    public IEnumerable<(string Item, Message Why)> Against(int visit, IReadOnlyCollection<string> items) =>
        from found in items.Count == 0 ? [] : _items.Of(visit, items)
        let why = found switch
        {
            { Shown: { Standing: Standing.Withdrawn or Standing.Held } shown } when PassedDaysCount || !shown.IsByDate => shown.Why,
            { Correction: { } later } when IsStricter(later, found.Own) => (Message)
                $"a later version of its record gives it {later.Outcome.Outcome}{Until(later.Outcome)}",
            _ => null,
        }
        where why is not null
        select (found.Own.Item.Id!, why);

    private static IEnumerable<string> Usable(DocumentStatus document)
    {
        var ended = document.EndedLines.Select(l => l.Item).ToHashSet(StringComparer.Ordinal);
        return (document.Usable()?.Select(u => u.Item) ?? document.Items).Where(i => !ended.Contains(i));
    }

    private static bool IsStricter(ItemEntry later, ItemEntry own) =>
        later.Badness > own.Badness
        || (later.Outcome.Until ?? LocalDate.MaxIsoValue) < (own.Outcome.Until ?? LocalDate.MaxIsoValue)
        || (later.Outcome.NextBy ?? LocalDate.MaxIsoValue) < (own.Outcome.NextBy ?? LocalDate.MaxIsoValue);

    private static Message Until(RememberedOutcome outcome) =>
        new[] { outcome.Until, outcome.NextBy }.Min() is { } day ? $", until {day} at the latest" : Message.None;
}
