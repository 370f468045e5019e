namespace ExamDocs.UseCases.Registered;

/// <summary>What was typed or scanned, taken apart: a label's code has the document's number and the item's id in its first line.</summary>
/// <param name="First">The first word of the first line, which can be a document's number.</param>
/// <param name="Markings">The ids that it can mean.</param>
internal sealed record ScannedText(string First, IReadOnlyList<string> Markings)
{
    public static ScannedText Of(string text)
    {
        var line = text.ReplaceLineEndings("\n").Split('\n', StringSplitOptions.RemoveEmptyEntries).FirstOrDefault()?.Trim() ?? "";
        var blank = line.IndexOf(' ', StringComparison.Ordinal);
        return new(blank < 0 ? line : line[..blank], line.Length == 0 ? [] : [line]);
    }
}
