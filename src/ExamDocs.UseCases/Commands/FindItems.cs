using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;
using ExamDocs.Register;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>Finds items in a register, each with what is known of it today and its whole history.</summary>
public static class FindItems
{
    /// <summary>The most items that a search by words shows.</summary>
    public const int Most = 200;

    private const int MostAlike = 5;

    /// <summary>
    /// Every item whose id, serial number or owner's mark this is, however it is spelt, the worst first. Where it is the number of a
    /// document, or the text of a label's code, the items of that document.
    /// </summary>
    /// <param name="place">The register.</param>
    /// <param name="marking">What was typed or scanned.</param>
    /// <param name="today">The day on which it is looked at.</param>
    /// <exception cref="FileNotFoundException">There is no register at that place.</exception>
    /// <exception cref="Register.Model.RegisterAlteredException">What is stored differs from the log.</exception>
    public static IReadOnlyList<FoundItem> ByMarking(string place, string marking, LocalDate today) =>
        ByMarkings(place, [marking], today)[0];

    /// <summary>As <see cref="ByMarking"/>, for many at once: the register is opened, and each of its records read, once.</summary>
    /// <param name="place">The register.</param>
    /// <param name="markings">What was typed or scanned.</param>
    /// <param name="today">The day on which it is looked at.</param>
    /// <param name="memory">What was found before of a list that grows; null for none.</param>
    /// <returns>One list for each marking, in their order.</returns>
    public static IReadOnlyList<IReadOnlyList<FoundItem>> ByMarkings(
        string place,
        IReadOnlyList<string> markings,
        LocalDate today,
        FoundMemory? memory = null
    )
    {
        ArgumentNullException.ThrowIfNull(markings);
        using var register = DocumentRegister.OpenToRead(place, today);
        var state = memory?.StateOf(register, today);
        var items = new ItemsOnRecord(register, today, state?.Marks(register));
        return [.. markings.Select(m => state is null ? Found(m) : state.Of(m, Found))];

        IReadOnlyList<FoundItem> Found(string marking) => InOrder(Markings(register, marking).SelectMany(items.Bearing));
    }

    /// <summary>What somebody looks for: by its marking where an item has it, else by its words.</summary>
    /// <param name="place">The register.</param>
    /// <param name="asked">What was typed or scanned.</param>
    /// <param name="today">The day on which it is looked at.</param>
    public static SearchResult Of(string place, string asked, LocalDate today)
    {
        if (ByMarking(place, asked, today) is { Count: > 0 } exact)
            return new(exact, exact.Count, IsMarked: true);
        var (items, inAll) = ByWords(place, asked, today);
        return new(items, inAll, IsMarked: false);
    }

    /// <summary>
    /// Items that have every word of the text in their id, serial number, owner's mark, maker, model, description or owner.
    /// </summary>
    /// <param name="place">The register.</param>
    /// <param name="words">Words in any order; letter case makes no difference.</param>
    /// <param name="today">The day on which it is looked at.</param>
    /// <returns>At most <see cref="Most"/>, and how many there are in all.</returns>
    /// <exception cref="FileNotFoundException">There is no register at that place.</exception>
    /// <exception cref="Register.Model.RegisterAlteredException">What is stored differs from the log.</exception>
    public static (IReadOnlyList<FoundItem> Items, int InAll) ByWords(string place, string words, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(words);
        using var register = DocumentRegister.OpenToRead(place, today);
        var (items, inAll) = new ItemsOnRecord(register, today).WithWords(
            words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries),
            Most
        );
        return (InOrder(items), Math.Max(items.Count, inAll));
    }

    /// <summary>
    /// Items whose ids are spelt much like a marking that none bears: what was withdrawn may have been typed with a slip, here or in its
    /// record. Ids with other digits are left out: those are the neighbours on every list.
    /// </summary>
    public static IReadOnlyList<FoundItem> SpeltLike(string place, string marking, LocalDate today, FoundMemory? memory = null)
    {
        ArgumentNullException.ThrowIfNull(marking);
        using var register = DocumentRegister.OpenToRead(place, today);
        return memory is null ? Like(marking) : memory.StateOf(register, today).Like(marking, Like);

        IReadOnlyList<FoundItem> Like(string asked) => SpeltLike(register, asked, today);
    }

    private static IReadOnlyList<FoundItem> SpeltLike(DocumentRegister register, string marking, LocalDate today)
    {
        var ids = register.Visits.Outcomes().Select(o => o.Outcome.Item).OfType<string>().Distinct(StringComparer.Ordinal).ToList();
        var like = ids.Where(id => ConfusableIds.Of(id, marking))
            .Concat(SpellingSuggestion.AllOf(marking, ids.Where(id => Digits(id).SequenceEqual(Digits(marking)))))
            .Distinct(StringComparer.Ordinal)
            .Take(MostAlike);
        var items = new ItemsOnRecord(register, today);
        return InOrder(like.SelectMany(items.Bearing));
    }

    private static IEnumerable<char> Digits(string text) => text.Where(char.IsDigit);

    private static IEnumerable<string> Markings(DocumentRegister register, string scanned)
    {
        var line = scanned
            .ReplaceLineEndings("\n")
            .Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Take(1)
            .ToList();
        if (CodeLine.Read(scanned) is not { } code)
            return line;
        // Another register may have given that number to another item: then the document here is none of the item in the hand. Some
        // firms number their kit like documents.
        return line.Concat(
                code.Item is null
                    ? register.Find(code.Number)?.Items ?? []
                    : (register.Find(code.Number)?.Items ?? []).Where(i => IsWithoutLines(code.Item, i)).Prepend(code.Item)
            )
            .Distinct(StringComparer.Ordinal);
    }

    /// <summary>True where a code's lines were run together, as a text field of a page does: the item's id with words behind it.</summary>
    private static bool IsWithoutLines(string text, string item) =>
        text.Length > item.Length
        && text.StartsWith(item, StringComparison.Ordinal)
        && char.IsLetter(text[item.Length])
        && text[item.Length..].Contains(' ', StringComparison.Ordinal);

    private static IReadOnlyList<FoundItem> InOrder(IEnumerable<FoundItem> items) =>
        [
            .. items
                .OrderBy(i => i.Standing)
                .ThenBy(i => i.Id, StringComparer.OrdinalIgnoreCase)
                // One thing may be found by two markings.
                .DistinctBy(i => (i.Id, i.Owner, i.Item.Serial, i.History[0].Visit)),
        ];
}

/// <summary>What a search found.</summary>
/// <param name="Items">The worst first.</param>
/// <param name="InAll">How many there are, with those that are not shown.</param>
/// <param name="IsMarked">True where they bear what was asked for; false where they only have its words.</param>
public sealed record SearchResult(IReadOnlyList<FoundItem> Items, int InAll, bool IsMarked);
