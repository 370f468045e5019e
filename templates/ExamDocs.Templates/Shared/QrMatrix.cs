using System.Collections;
using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using QRCoder;

namespace ExamDocs.Templates.Shared;

/// <summary>A QR code, error correction M, as a path of unit squares with its quiet zone of four modules.</summary>
public sealed class QrMatrix
{
    /// <summary>The most codes that are remembered: a label is composed some times, with the same code each time.</summary>
    private const int MostRemembered = 256;

    private static readonly ConcurrentDictionary<string, QrMatrix> Lately = new(StringComparer.Ordinal);

    /// <summary>The code of a text.</summary>
    /// <exception cref="QRCoder.Exceptions.DataTooLongException">The text holds more than a QR code can.</exception>
    public static QrMatrix Of(string text)
    {
        if (Lately.TryGetValue(text, out var known))
            return known;
        if (Lately.Count >= MostRemembered)
            Lately.Clear();
        return Lately[text] = new QrMatrix(text);
    }

    private QrMatrix(string text)
    {
        var isPlain = !HasNonAscii(text);
        // Without the mark that says UTF-8, readers guess, and some take accents for Japanese.
        using var data = QRCodeGenerator.GenerateQrCode(
            text,
            QRCodeGenerator.ECCLevel.M,
            forceUtf8: !isPlain,
            eciMode: isPlain ? QRCodeGenerator.EciMode.Default : QRCodeGenerator.EciMode.Utf8
        );
        Modules = data.ModuleMatrix.Count;
        Path = Draw(data.ModuleMatrix);
    }

    /// <summary>Modules along one side, the quiet zone of four on either side included.</summary>
    public int Modules { get; }

    /// <summary>SVG path data; one unit is one module.</summary>
    public string Path { get; }

    private static bool HasNonAscii(string text) => text.Any(c => c > 127);

    private static string Draw(List<BitArray> rows)
    {
        var path = new StringBuilder();
        for (var y = 0; y < rows.Count; y++)
        {
            for (var x = 0; x < rows[y].Count; x++)
            {
                if (!rows[y][x])
                    continue;
                var start = x;
                while (x < rows[y].Count && rows[y][x])
                    x++;
                path.Append(CultureInfo.InvariantCulture, $"M{start} {y}h{x - start}v1h-{x - start}z");
            }
        }
        return path.ToString();
    }
}
