using System.Collections.Frozen;
using System.Text;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.PdfSyntax;
using ExamDocs.Documents.ReadingBack;

namespace ExamDocs.Documents.Comparing;

/// <summary>
/// What may stand in the content of a page of ours: plain drawing of text, lines, areas and photos, and nothing that hides a text.
/// </summary>
internal static class KnownContent
{
    private static readonly FrozenSet<string> Operators =
        "q Q cm gs re m l c h f f* S W W* n RG rg CS cs SCN scn BT ET Tf Tm Td Tj BDC BMC EMC Do"
            .Split(' ')
            .ToFrozenSet(StringComparer.Ordinal);

    public static IEnumerable<string> Faults(PdfSource source, PdfPage page)
    {
        var foreign = Foreign(page).Distinct(StringComparer.Ordinal).ToList();
        if (foreign.Count > 0)
            return foreign;
        var printed = PrintedText.Page(source, page);
        return
        [
            .. printed.Letters.Where(l => IsHidden(l)).Take(1).Select(_ => "a sign on it stands for no letter"),
            .. printed.Letters.Where(l => l.IsCut && !l.IsBlank).Select(l => l.Text).DefaultIfEmpty("").Aggregate(string.Concat)
                is { Length: > 0 } cut
                ? [$"\"{Short(cut)}\" is cut off"]
                : (string[])[],
            .. ObscuredLetters
                .On(printed)
                .GroupBy(o => o.Why, StringComparer.Ordinal)
                .Select(g => $"\"{Short(string.Concat(g.Select(o => o.Letter.Text)))}\" {g.Key}"),
        ];
    }

    private static IEnumerable<string> Foreign(PdfPage page)
    {
        var found = new List<string>();
        for (var o = new ContentOperators(page.Content()); o.Next(); )
        {
            var name = Encoding.Latin1.GetString(o.Operator);
            if (!Operators.Contains(name))
                found.Add($"it is drawn with an operator that this program does not use ({name})");
            else if (o.Is("Do"u8) && !page.Resources.IsPicture(o.Name()))
                found.Add("it draws something that is neither text nor a picture");
            else if (o.Is("BDC"u8) && o.Count > 1 && !IsKnownTag(o))
                found.Add("a tag on it says what no tag of ours says");
        }
        return found;
    }

    /// <summary>A tag names its place in the tree, or the letters that a joined sign stands for.</summary>
    private static bool IsKnownTag(in ContentOperators o)
    {
        if (o.KindOf(1) is not PdfToken.DictionaryOpen)
            return false;
        var properties = PdfDictionary.Read(o.Operand(1).ToArray());
        return properties.Entries.All(e =>
            e.Name is "MCID" or "Type" || (e.Name is "ActualText" && PdfText.Read(e.Value.Span) is { Length: > 0 and <= LongestJoined })
        );
    }

    /// <summary>Letters that one sign may stand for: ffi is the longest in Latin.</summary>
    private const int LongestJoined = 4;

    /// <summary>It draws something and says nothing, or a blank.</summary>
    private static bool IsHidden(PrintedLetter letter) =>
        letter.Drawn switch
        {
            "" or "\uFFFD" => !letter.IsSaid,
            var drawn when string.IsNullOrWhiteSpace(drawn) => letter.HasShape,
            var drawn => letter.Width > 0 && !letter.IsBlank && FoldedText.Of(drawn).Length == 0,
        };

    private static string Short(string text) => text.Length <= 40 ? text : text[..40] + "…";
}
