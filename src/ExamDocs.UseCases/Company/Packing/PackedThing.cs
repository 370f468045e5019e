using ExamDocs.Core.Records;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Company.Packing;

/// <summary>An item of a pack, with all that is on record of it.</summary>
/// <param name="Thing">What the records say of it.</param>
/// <param name="Shown">How it stands.</param>
/// <param name="Documents">What is issued and current about it, the latest first.</param>
internal sealed record PackedThing(ThingOnRecord Thing, FoundItem Shown, IReadOnlyList<DocumentStatus> Documents)
{
    private const string NotExamined = "U0";

    /// <summary>The latest decision: what was only named since, without an examination, is none.</summary>
    public ItemEntry Decided => Thing.Counting.FirstOrDefault(e => e.Outcome.Codes is not [NotExamined]) ?? Thing.Counting[0];

    /// <summary>Why it stands so, in the pack's language.</summary>
    public string Why(PackQuestion asked) => asked.Say(Shown.Why);

    /// <summary>The examinations of the latest decision.</summary>
    public IEnumerable<Examination> Examined => ExaminationsIn(Decided);

    /// <summary>The first day of the time for which it has not been allowed to be used, by its records.</summary>
    public LocalDate OutSince =>
        Thing
            .Counting.SkipWhile(e => e != Decided)
            .TakeWhile(e => e.IsOf(Outcome.Withdraw))
            .Select(e => e.Day)
            .DefaultIfEmpty(Decided.Day)
            .Min();

    /// <summary>Whether something that is said of it in a record is about this item.</summary>
    public static bool Is(string? id, ItemEntry entry) => string.Equals(id, entry.Item.Id, StringComparison.Ordinal);

    public static IEnumerable<Examination> ExaminationsIn(ItemEntry entry) => entry.Record.Examinations.Where(e => Is(e.Item, entry));
}

/// <summary>An item that records name and no visit decided about.</summary>
/// <param name="Item">As recorded last.</param>
/// <param name="Premises">Where.</param>
internal sealed record UndecidedThing(Item Item, string? Premises);
