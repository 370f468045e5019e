using System.Reflection;
using System.Text;

namespace ExamDocs.Documents.Browsing;

/// <summary>
/// The fonts that documents are set in. A packaged program brings them for systems that have none; where the system has them they
/// stay unused, so that a document prints the same as ever.
/// </summary>
internal sealed class DocumentFonts(IReadOnlyList<FontFace> faces)
{
    /// <summary>As the style sheets of documents ask for it.</summary>
    private const string Asked = "\"Noto Sans\"";

    /// <summary>As the policy of a document begins, which stands before its sheets.</summary>
    private const string Policy = "default-src 'none';";

    private const string Folder = "fonts/";

    private static readonly Lazy<DocumentFonts> Read = new(ReadOwn);

    private readonly Lazy<string> _sheet = new(() => Sheet(faces));

    /// <summary>Those within this program; none in one that was not packaged.</summary>
    public static DocumentFonts Within => Read.Value;

    public bool AreThere => faces.Count > 0;

    /// <summary>True where the page asks for the documents' type.</summary>
    public static bool AreAskedForBy(string html) => html.Contains(Asked, StringComparison.Ordinal);

    /// <summary>True where the PDF holds them: another font in their place has another name.</summary>
    // A browser writes the name plainly, after six letters and a plus: ISO 32000-1, 9.6.4.
    public static bool AreIn(ReadOnlySpan<byte> pdf) => pdf.IndexOf("+NotoSans-"u8) >= 0;

    /// <summary>
    /// The page with the fonts in it, and a policy that lets it use them. Nothing is fetched: they are data of the page itself.
    /// </summary>
    public string EmbeddedIn(string html)
    {
        var sheets = Math.Max(html.IndexOf("<style", StringComparison.Ordinal), 0);
        return html[..sheets].Replace(Policy, $"{Policy} font-src data:;", StringComparison.Ordinal) + _sheet.Value + html[sheets..];
    }

    // The page is hidden on the screen, so it has to be laid out there once: else the print would not wait for its fonts.
    private static string Sheet(IReadOnlyList<FontFace> faces)
    {
        var sheet = new StringBuilder("<style>@media screen { body { display: block !important; visibility: hidden; } }\n");
        foreach (var face in faces)
            sheet.Append(face.Rule).Append('\n');
        return sheet.Append("</style>").ToString();
    }

    private static DocumentFonts ReadOwn()
    {
        var program = Assembly.GetExecutingAssembly();
        return new DocumentFonts([
            .. program
                .GetManifestResourceNames()
                .Where(name => name.StartsWith(Folder, StringComparison.Ordinal))
                .Order(StringComparer.Ordinal)
                .Select(name => FontFace.Of(name[Folder.Length..], Bytes(program, name))),
        ]);
    }

    private static byte[] Bytes(Assembly program, string name)
    {
        using var stream = program.GetManifestResourceStream(name)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
