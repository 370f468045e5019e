using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.ReadingCopies;

/// <summary>
/// A PDF that is written object by object, so that nothing of it stays in memory but where each object begins. The same objects in the
/// same order give the same bytes.
/// </summary>
internal sealed class StreamedPdf : IDisposable
{
    /// <summary>A table has ten digits for a place in the file (ISO 32000-1, 7.5.4).</summary>
    private const long Longest = 9_999_999_999;

    private readonly Stream _to;
    private readonly IncrementalHash _all = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
    private readonly List<long> _places = [0];
    private long _length;

    public StreamedPdf(Stream to)
    {
        _to = to;
        Write(Latin("%PDF-1.7\n%\u00E2\u00E3\u00CF\u00D3\n"));
    }

    /// <summary>The number of an object that is written later.</summary>
    public int Reserve()
    {
        _places.Add(0);
        return _places.Count - 1;
    }

    public void Put(int number, ReadOnlySpan<byte> body)
    {
        if (_length > Longest)
            throw new IOException("The file grows longer than a PDF can be.");
        _places[number] = _length;
        Write(Latin(string.Create(CultureInfo.InvariantCulture, $"{number} 0 obj\n")));
        Write(body);
        Write("\nendobj\n"u8);
    }

    public void Put(int number, string body) => Put(number, Latin(body));

    public int Add(ReadOnlySpan<byte> body)
    {
        var number = Reserve();
        Put(number, body);
        return number;
    }

    public int Add(string body) => Add(Latin(body));

    /// <summary>Writes the table and the end; the identifier is made of all that is in the file (ISO 32000-1, 14.4).</summary>
    public void Finish(int catalog, int info)
    {
        var (table, size) = (_length, _places.Count);
        var id = Convert.ToHexString(_all.GetCurrentHash().AsSpan(0, 16));
        Write(Latin(string.Create(CultureInfo.InvariantCulture, $"xref\n0 {size}\n0000000000 65535 f \n")));
        foreach (var place in _places.Skip(1))
            Write(Latin(place.ToString("0000000000", CultureInfo.InvariantCulture) + " 00000 n \n"));
        Write(
            Latin(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"trailer\n<</Size {size}\n/Root {catalog} 0 R\n/Info {info} 0 R\n/ID [<{id}> <{id}>]>>\nstartxref\n{table}\n%%EOF\n"
                )
            )
        );
    }

    public void Dispose() => _all.Dispose();

    public static string Reference(int number) => string.Create(CultureInfo.InvariantCulture, $"{number} 0 R");

    public static byte[] Latin(string text) => Encoding.Latin1.GetBytes(text);

    private void Write(ReadOnlySpan<byte> bytes)
    {
        _to.Write(bytes);
        _all.AppendData(bytes);
        _length += bytes.Length;
    }
}
