using System.Diagnostics;
using System.Text;
using System.Text.Json.Nodes;
using SkiaSharp;

namespace ExamDocs.Documents.Tests.Printing;

/// <summary>The independent programs that look at what was printed.</summary>
internal static class Tool
{
    public static string PdfText(byte[] pdf) => OnFile(pdf, file => Run("pdftotext", "-raw", "-enc", "UTF-8", file, "-"));

    public static string PdfFonts(byte[] pdf) => OnFile(pdf, file => Run("pdffonts", file));

    public static string PdfInfo(byte[] pdf, params string[] options) => OnFile(pdf, file => Run("pdfinfo", [.. options, file]));

    /// <summary>The tags, with the text in each.</summary>
    public static string Structure(byte[] pdf) => OnFile(pdf, file => Run("pdfinfo", "-struct-text", file));

    /// <summary>The files within, by name.</summary>
    public static Dictionary<string, byte[]> Attachments(byte[] pdf) => OnFile(pdf, file =>
        {
            var folder = Directory.CreateTempSubdirectory("attached-");
            Run("pdfdetach", "-saveall", "-o", folder.FullName, file);
            var found = folder.GetFiles().ToDictionary(f => f.Name, f => File.ReadAllBytes(f.FullName), StringComparer.Ordinal);
            folder.Delete(recursive: true);
            return found;
        });

    /// <summary>Every dictionary of the file, and the dictionary of every stream, by object, as qpdf sees them.</summary>
    public static Dictionary<string, JsonObject> QpdfJson(byte[] pdf) => OnFile(pdf, file =>
        {
            var objects = JsonNode.Parse(Run("qpdf", "--json=2", "--json-key=qpdf", file))!["qpdf"]![1]!.AsObject();
            return objects
                .Select(o => (o.Key, Value: (o.Value!["stream"]?["dict"] ?? o.Value["value"]) as JsonObject))
                .Where(o => o.Value is not null)
                .ToDictionary(o => o.Key, o => o.Value!, StringComparer.Ordinal);
        });

    /// <summary>Throws where qpdf finds an error or a warning.</summary>
    public static string QpdfCheck(byte[] pdf) => OnFile(pdf, file => Run("qpdf", "--check", file));

    /// <summary>The file as qpdf writes it anew.</summary>
    public static byte[] WithQpdf(byte[] pdf, params string[] how) => OnFile(pdf, file =>
        {
            Run("qpdf", [.. how, file, $"{file}.new"]);
            var written = File.ReadAllBytes($"{file}.new");
            File.Delete($"{file}.new");
            return written;
        });

    /// <summary>The first page as a grey PNG at this resolution.</summary>
    public static byte[] Raster(byte[] pdf, int dpi) => Raster(pdf, dpi, "-gray");

    /// <summary>A part of the first page, in dots of this resolution.</summary>
    public static byte[] Raster(byte[] pdf, int dpi, SKRectI part) =>
        Raster(pdf, dpi, "-gray", "-x", $"{part.Left}", "-y", $"{part.Top}", "-W", $"{part.Width}", "-H", $"{part.Height}");

    /// <summary>The first page as a PNG in colours at this resolution; hard edges where there is no smoothing.</summary>
    public static byte[] ColourRaster(byte[] pdf, int dpi, bool smooth = true) =>
        smooth ? Raster(pdf, dpi, []) : Raster(pdf, dpi, "-aa", "no", "-aaVector", "no");

    private static byte[] Raster(byte[] pdf, int dpi, params string[] how) => OnFile(pdf, file =>
        {
            Run("pdftoppm", [.. how, "-r", dpi.ToString(), "-singlefile", "-png", file, file]);
            var png = File.ReadAllBytes(file + ".png");
            File.Delete(file + ".png");
            return png;
        });

    /// <summary>
    /// What a phone would show of the code on the page, printed by a printer of 203 dots to the inch: every dot is black or white. Of a
    /// small label a camera is near enough to see each dot as a square of several pixels.
    /// </summary>
    public static string PhoneView(byte[] pdf)
    {
        using var dots = SKBitmap.Decode(Raster(pdf, 203));
        var tones = dots.Pixels;
        var size = dots.Width < 250 ? 4 : 1;
        using var seen = new SKBitmap(dots.Width * size, dots.Height * size);
        var pixels = new SKColor[seen.Width * seen.Height];
        for (var at = 0; at < pixels.Length; at++)
            pixels[at] =
                tones[(at / seen.Width / size * dots.Width) + (at % seen.Width / size)].Red < 128 ? SKColors.Black : SKColors.White;
        seen.Pixels = pixels;
        using var png = seen.Encode(SKEncodedImageFormat.Png, 100);
        return OnFile(png.ToArray(), file => Run("zbarimg", "--nodbus", "-q", "--raw", $"png:{file}")).TrimEnd('\n');
    }

    /// <summary>Text without any white space, so that a line break in the wrong place hides nothing.</summary>
    public static string Squeeze(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    private static T OnFile<T>(byte[] pdf, Func<string, T> look)
    {
        var file = Path.GetTempFileName();
        try
        {
            File.WriteAllBytes(file, pdf);
            return look(file);
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static string Run(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
        };
        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0
            ? output
            : throw new InvalidOperationException($"{program} ended with {process.ExitCode}: {errors.Result}{output}");
    }
}
