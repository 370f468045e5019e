using System.Security.Cryptography;
using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.ReadingCopies;

/// <summary>
/// Copies what the pages of one file draw with into another, under new numbers. What is the same in several files, for example a logo, is
/// written once.
/// </summary>
/// <param name="source">The file.</param>
/// <param name="target">Where it goes.</param>
/// <param name="shared">Objects written already that refer to no other, by their hash; filled as it goes.</param>
internal sealed class CopiedObjects(PdfSource source, StreamedPdf target, Dictionary<string, int> shared)
{
    /// <summary>What makes a page; notes, links, actions and tags belong to the single document.</summary>
    private static readonly string[] OfPages = ["MediaBox", "CropBox", "Rotate", "UserUnit", "Resources", "Contents", "Group"];

    private readonly Dictionary<int, int> _numbers = [];
    private readonly Queue<int> _open = [];

    /// <summary>The entries of a page that draw it, with all that they refer to copied.</summary>
    public string Page(PdfPage page) => Entries(page, OfPages);

    /// <summary>Some entries of a page, with all that they refer to copied.</summary>
    public string Entries(PdfPage page, params IEnumerable<string> names)
    {
        var dictionary = source.Object(page.Number).Dictionary();
        var entries = string.Concat(
            names
                .Select(name => (Name: name, Value: dictionary.Find(name)))
                .Where(e => e.Value is not null)
                .Select(e => $"/{e.Name} {System.Text.Encoding.Latin1.GetString(Renumbered(e.Value!.Value))}\n")
        );
        while (_open.TryDequeue(out var number))
            target.Put(_numbers[number], Renumbered(source.Object(number).Body));
        return entries;
    }

    /// <summary>A queue, no recursion: a stranger's file may refer as deeply as it likes.</summary>
    private int NumberOf(int number)
    {
        if (_numbers.TryGetValue(number, out var known))
            return known;
        var body = source.Object(number).Body;
        if (RefersTo(body))
        {
            _open.Enqueue(number);
            return _numbers[number] = target.Reserve();
        }
        var hash = Convert.ToHexString(SHA256.HashData(body.Span));
        if (!shared.TryGetValue(hash, out var there))
            shared[hash] = there = target.Add(body.Span);
        return _numbers[number] = there;
    }

    private static bool RefersTo(ReadOnlyMemory<byte> body)
    {
        var lexer = new PdfLexer(body.Span);
        while (lexer.Next() && !lexer.Is("stream"u8))
        {
            if (ReferenceAt(lexer) is not null)
                return true;
        }
        return false;
    }

    private byte[] Renumbered(ReadOnlyMemory<byte> body)
    {
        var lexer = new PdfLexer(body.Span);
        var copied = 0;
        using var renumbered = new MemoryStream(body.Length + 64);
        while (lexer.Next() && !lexer.Is("stream"u8))
        {
            if (ReferenceAt(lexer) is not var (number, end))
                continue;
            renumbered.Write(body.Span[copied..lexer.Start]);
            renumbered.Write(StreamedPdf.Latin(StreamedPdf.Reference(NumberOf(number))));
            copied = end;
            lexer = new PdfLexer(body.Span, end);
        }
        renumbered.Write(body.Span[copied..]);
        return renumbered.ToArray();
    }

    /// <returns>The object referred to, and where the reference ends; null where none begins at this token.</returns>
    private static (int Number, int End)? ReferenceAt(PdfLexer lexer)
    {
        if (lexer.Kind is not PdfToken.Number || PdfNumber.Whole(lexer.Token) is not { } number)
            return null;
        return lexer.Next() && lexer.Kind is PdfToken.Number && lexer.Next() && lexer.Is("R"u8) ? (number, lexer.End) : null;
    }
}
