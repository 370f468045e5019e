using ExamDocs.Intake.Workbook;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Annotating;

/// <summary>The words of a note.</summary>
internal static class NoteText
{
    /// <summary>A little less than a cell's text may hold, so that no program cuts a note.</summary>
    public const int Longest = 32_000;

    private const string Cut = "\n… The sheet of findings says the rest.";

    /// <summary>What to add below a note, as the format stores it; empty where nothing is to be added.</summary>
    /// <param name="said">What the note says already, as stored.</param>
    /// <param name="texts">What it is to say.</param>
    public static string Below(string said, IReadOnlyList<string> texts)
    {
        var heard = said.ReplaceLineEndings("\n");
        var fresh = texts.Select(StoredText.Of).Where(t => !heard.Contains(t, StringComparison.Ordinal)).ToList();
        if (fresh.Count == 0)
            return "";
        var text = (said.Length > 0 ? "\n\n" : "") + string.Join("\n\n", fresh);
        var room = Longest - said.Length - Seal.Line("").Length - 1;
        if (text.Length > room)
            text = room <= Cut.Length ? "" : Shorten(text, room - Cut.Length) + Cut;
        return text.Length == 0 ? "" : $"{text}\n{Seal.Line(CellText.Clean(text))}";
    }

    /// <summary>Cuts where no pair of characters and no escape is torn.</summary>
    public static string Shorten(string stored, int length)
    {
        var end = Math.Min(stored.Length, length);
        if (end == stored.Length)
            return stored;
        var escape = stored.LastIndexOf("_x", end - 1, Math.Min(7, end), StringComparison.Ordinal);
        if (escape >= 0 && escape + 7 > end)
            end = escape;
        return char.IsHighSurrogate(stored[Math.Max(0, end - 1)]) ? stored[..(end - 1)] : stored[..end];
    }
}
