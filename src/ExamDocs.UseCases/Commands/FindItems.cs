using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using ExamDocs.Register;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>Finds items in a register, each with what is known of it today and its whole history.</summary>
public static class FindItems
{
    /// <summary>The most items that a search by words shows.</summary>
    public const int Most = 200;

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
    /// <returns>One list for each marking, in their order.</returns>
    public static IReadOnlyList<IReadOnlyList<FoundItem>> ByMarkings(string place, IReadOnlyList<string> markings, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(markings);
        using var register = DocumentRegister.OpenToRead(place, today);
        var items = new ItemsOnRecord(register, today);
        return [.. markings.Select(m => InOrder(Markings(register, m).SelectMany(items.Bearing)))];
    }

    /// <summary>What somebody looks for: by its marking where an item has it, else by its words.</summary>
    /// <param name="place">The register.</param>
    /// <param name="asked">What was typed or scanned.</param>
    /// <param name="today">The day on which it is looked at.</param>
    /// <returns>The items, and how many there are in all.</returns>
    public static (IReadOnlyList<FoundItem> Items, int InAll) Of(string place, string asked, LocalDate today) =>
        ByMarking(place, asked, today) is { Count: > 0 } exact ? (exact, exact.Count) : ByWords(place, asked, today);

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
        var found = new ItemsOnRecord(register, today).WithWords(
            words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
        );
        return (InOrder(found.Take(Most)), found.Count);
    }

    private static IEnumerable<string> Markings(DocumentRegister register, string scanned)
    {
        if (CodeLine.Read(scanned) is not { } code)
            return scanned
                .ReplaceLineEndings("\n")
                .Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
                .Take(1);
        // The code of a label from another register still says which item it hangs on.
        return new[] { code.Item }.OfType<string>().Concat(register.Find(code.Number)?.Items ?? []).Distinct(StringComparer.Ordinal);
    }

    private static IReadOnlyList<FoundItem> InOrder(IEnumerable<FoundItem> items) =>
        [
            .. items
                .OrderBy(i => i.Standing)
                .ThenBy(i => i.Id, StringComparer.OrdinalIgnoreCase)
                .DistinctBy(i => (Id: FoldedKey(i.Id), Owner: FirmName.Fold(i.Owner))),
        ];

    private static string FoldedKey(string id) => Folded.Keys(id) is [var key, ..] ? key : id;
}
