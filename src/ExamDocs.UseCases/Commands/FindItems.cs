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
    public static IReadOnlyList<FoundItem> ByMarking(string place, string marking, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(marking);
        using var register = DocumentRegister.OpenToRead(place, today);
        var scanned = ScannedText.Of(marking);
        var markings = register.Find(scanned.First) is { } document ? document.Items : scanned.Markings;
        return InOrder(markings.SelectMany(m => new ItemsOnRecord(register, today).Bearing(m)));
    }

    /// <summary>Items of which every word of the text stands in id, serial number, owner's mark, maker, model, description or owner.</summary>
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

    private static IReadOnlyList<FoundItem> InOrder(IEnumerable<FoundItem> items) =>
        [
            .. items
                .DistinctBy(i => (Id: FoldedKey(i.Id), Owner: FirmName.Fold(i.Owner)))
                .OrderBy(i => i.Standing)
                .ThenBy(i => i.Id, StringComparer.OrdinalIgnoreCase),
        ];

    private static string FoldedKey(string id) => Folded.Keys(id) is [var key, ..] ? key : id;
}
