using System.Globalization;
using System.Text;
using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Binding;

/// <summary>Refuses characters that would print as something else than what was typed.</summary>
internal static class TextGuard
{
    public const int MaxText = 2_000;

    public const int MaxIdentity = 80;

    /// <summary>Longer ones are refused before they are kept, in whatever file: what a cell of a workbook may hold.</summary>
    public const int MaxReadable = 32_767;

    /// <summary>Of an answer that is not one of the words, so many characters are kept as they were typed.</summary>
    public const int MaxAnswer = 200;

    /// <summary>The beginning of a text that is too long, with a mark that it goes on.</summary>
    public static string Cut(string text, int most) =>
        text.Length <= most ? text : text[..(char.IsHighSurrogate(text[most - 2]) ? most - 2 : most - 1)] + "…";

    /// <summary>Names the first character that cannot be printed as typed; null where all can.</summary>
    public static Message? Objection(string text)
    {
        if (!text.AsSpan().ContainsAnyExceptInRange(' ', '~'))
            return null;
        for (var i = 0; i < text.Length; i++)
        {
            if (!Rune.TryGetRuneAt(text, i, out var rune))
                return $"the text holds half of a character pair";
            if (IsRefused(rune))
                return $"the text holds the hidden or unprintable character {Name(rune)}";
            i += rune.Utf16SequenceLength - 1;
        }
        return null;
    }

    private static string Name(Rune rune) => string.Create(CultureInfo.InvariantCulture, $"U+{rune.Value:X4}");

    private static bool IsRefused(Rune rune) =>
        rune.Value switch
        {
            '\n' or '\r' or '\t' => false,
            0xFFFD or 0xFFFC => true,
            // Zero-width joiners shape some scripts; the other format characters only hide.
            0x200C or 0x200D => false,
            _ => Rune.GetUnicodeCategory(rune)
                is UnicodeCategory.Control
                    or UnicodeCategory.Format
                    or UnicodeCategory.PrivateUse
                    or UnicodeCategory.OtherNotAssigned
                    or UnicodeCategory.Surrogate
                    or UnicodeCategory.LineSeparator
                    or UnicodeCategory.ParagraphSeparator,
        };
}
