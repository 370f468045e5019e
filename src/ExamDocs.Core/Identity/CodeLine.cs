using System.Text.RegularExpressions;

namespace ExamDocs.Core.Identity;

/// <summary>
/// The first line of the code on a label or sheet: the document's number and the item's id, with a blank between them. The lines
/// below it are for whoever holds a phone over it, and mean nothing to a program.
/// </summary>
/// <param name="Number">For example D-2026-000123.</param>
/// <param name="Item">The item's id; null where the item has none, or a number was read alone.</param>
public sealed partial record CodeLine(string Number, string? Item)
{
    /// <summary>Reads a number that was typed, or what a scanner gives of a code, also of an earlier version's.</summary>
    /// <returns>Null where it does not begin with a document's number.</returns>
    public static CodeLine? Read(string scanned)
    {
        var line = scanned.AsSpan().TrimStart();
        var end = line.IndexOfAny('\r', '\n');
        var read = Form().Match((end < 0 ? line : line[..end]).TrimEnd().ToString());
        if (!read.Success)
            return null;
        var item = read.Groups["item"].Value;
        return new(read.Groups["number"].Value, item.Length == 0 ? null : item);
    }

    public override string ToString() => string.IsNullOrWhiteSpace(Item) ? Number : $"{Number} {Item}";

    // Codes of earlier versions said EXAMDOCS:number:item.
    [GeneratedRegex(
        @"\A(EXAMDOCS:(?<number>[A-Z]-[0-9]{4}-[0-9]{6,9}):(?<item>.*)|(?<number>[A-Z]-[0-9]{4}-[0-9]{6,9})( (?<item>.*))?)\z",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Form();
}
