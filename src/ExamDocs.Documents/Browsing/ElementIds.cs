using System.Buffers;
using System.Buffers.Text;
using System.Globalization;
using System.Text;

namespace ExamDocs.Documents.Browsing;

/// <summary>
/// The ids by which the cells of a table name their headings (ISO 32000-1, 14.8.5.7). The browser counts them over all documents that
/// one of its pages showed; here they count from 1 in each, so that a document is printed alike whatever was printed before it.
/// </summary>
internal static class ElementIds
{
    private const int Digits = 8;

    private static readonly SearchValues<byte> Delimiters = SearchValues.Create(" \n\r<>[]()/"u8);

    /// <summary>Gives them new numbers in the same order, in place: they stay as long as they were, and the list of them sorted.</summary>
    public static void Renumber(byte[] pdf)
    {
        var places = Places(pdf);
        var numbers = places.ConvertAll(at => NumberAt(pdf, at)).Distinct().Order().Index().ToDictionary(n => n.Item, n => n.Index + 1);
        foreach (var at in places)
            Encoding.ASCII.GetBytes(numbers[NumberAt(pdf, at)].ToString("D8", CultureInfo.InvariantCulture)).CopyTo(pdf, at);
    }

    private static int NumberAt(ReadOnlySpan<byte> pdf, int at) =>
        Utf8Parser.TryParse(pdf.Slice(at, Digits), out int number, out _) ? number : 0;

    /// <summary>Where the digits of each id stand.</summary>
    private static List<int> Places(ReadOnlySpan<byte> pdf)
    {
        var before = "(node"u8;
        var places = new List<int>();
        for (var at = 0; pdf[at..].IndexOf(before) is >= 0 and var next; )
        {
            at += next + before.Length;
            if (
                at + Digits < pdf.Length
                && pdf[at + Digits] == ')'
                && !pdf.Slice(at, Digits).ContainsAnyExceptInRange((byte)'0', (byte)'9')
                && IsId(pdf[..(at - before.Length)])
            )
                places.Add(at);
        }
        return places;
    }

    /// <summary>A text of the document, as what a picture shows, stands after a name of its own and is left as it is.</summary>
    private static bool IsId(ReadOnlySpan<byte> before)
    {
        var word = before.TrimEnd(" \n\r"u8);
        word = word[(word.LastIndexOfAny(Delimiters) is >= 0 and var from ? from : 0)..];
        return !word.StartsWith("/"u8) || word.SequenceEqual("/ID"u8);
    }
}
