using System.Globalization;
using System.Text;
using ExamDocs.Documents.PdfSyntax;
using ExamDocs.Documents.Signing;

namespace ExamDocs.Documents.Finishing;

/// <summary>
/// Makes of the browser's PDF one that can be kept and read aloud, with its data in it: PDF/A-3 and PDF/UA-1 as far as
/// docs/pdf-profile.md says. The same file and data give the same bytes.
/// </summary>
public static class Finisher
{
    private const string Creator = "ExamDocs";

    /// <param name="printed">As the browser gave it.</param>
    /// <param name="attached">What the document was made from; names differ.</param>
    /// <exception cref="PdfSyntaxException">The browser's file is of a kind that is not known.</exception>
    public static byte[] Finish(byte[] printed, IReadOnlyList<AttachedData> attached) =>
        Write(printed, attached, static (_, _, _, _) => 0).File;

    /// <summary>The same, electronically signed: all but the signature itself is the same each time.</summary>
    /// <param name="printed">As the browser gave it.</param>
    /// <param name="attached">What the document was made from; names differ.</param>
    /// <param name="signer">Who signs.</param>
    /// <param name="description">What a reading program calls the signature, in the document's language.</param>
    /// <exception cref="PdfSyntaxException">The browser's file is of a kind that is not known.</exception>
    /// <exception cref="TimestampMissing">A timestamp is asked for and cannot be had.</exception>
    public static async Task<byte[]> FinishSignedAsync(
        byte[] printed,
        IReadOnlyList<AttachedData> attached,
        DocumentSigner signer,
        string description,
        CancellationToken cancellation = default
    )
    {
        var (file, at) = Write(printed, attached, (source, target, catalog, date) =>
            new SignatureField(source, target, catalog).Add(signer.Key.Name, signer.Room, date, description)
        );
        var place = SignaturePlace.After(file, at);
        place.WriteRange(file);
        var signature = await signer.SignAsync(place.DigestOf(file, signer.Digest), cancellation);
        if (!place.TryWrite(file, signature))
            throw new PdfSyntaxException("its signature takes more room than there is");
        // What goes out signed holds in the eyes of whoever checks it.
        return SignatureCheck.IsIntact(file) ? file : throw new PdfSyntaxException("its signature does not hold");
    }

    /// <summary>The same with all that a signature needs and no signature: what a signed document is compared with.</summary>
    /// <param name="printed">As the browser gave it.</param>
    /// <param name="attached">What the document was made from; names differ.</param>
    /// <param name="signer">Name of who signed.</param>
    /// <param name="description">What a reading program calls the signature, in the document's language.</param>
    /// <exception cref="PdfSyntaxException">The browser's file is of a kind that is not known.</exception>
    public static byte[] FinishForSignature(byte[] printed, IReadOnlyList<AttachedData> attached, string signer, string description) =>
        Write(printed, attached, (source, target, catalog, date) =>
            new SignatureField(source, target, catalog).Add(signer, 1, date, description)
        ).File;

    /// <returns>The file, and where in it the object begins that was added last of all.</returns>
    private static (byte[] File, int At) Write(
        byte[] printed,
        IReadOnlyList<AttachedData> attached,
        Func<PdfSource, PdfTarget, PdfDictionary, string, int> addLast
    )
    {
        var source = PdfSource.Read(printed);
        var target = new PdfTarget(source);
        var info = source.Object(source.Trailer.Reference("Info"));
        var facts = info.Dictionary();
        var catalog = source.Catalog.Dictionary();
        var isMarked = MarkArtifacts(source, target);
        BookmarkTitles.Tidy(source, target, catalog);
        var xmp = Packet(facts, catalog, isMarked && TagTree.IsAccessible(source, catalog));
        catalog.Set("Metadata", Reference(target.Add(PdfTarget.PlainStream("/Type /Metadata\n/Subtype /XML\n", xmp.Bytes()))));
        catalog.Set("OutputIntents", $"[{Reference(OutputIntent.AddTo(target))}]");
        if (attached.Count > 0)
            Attach(target, catalog, attached, Date(facts));
        var last = addLast(source, target, catalog, Date(facts));
        target.Replace(source.Catalog.Number, catalog.Bytes());
        target.Replace(info.Number, facts.Set("Creator", PdfText.Write(Creator)).Set("ModDate", Date(facts)).Bytes());
        var file = target.Write(source.Catalog.Number, info.Number);
        return (file, last > 0 ? target.PlaceOf(last) : 0);
    }

    private static bool MarkArtifacts(PdfSource source, PdfTarget target)
    {
        var whole = true;
        foreach (var page in PageTree.Of(source))
        {
            var (content, isWhole) = ArtifactMarks.On(page.Content(), page.Resources.IsPicture);
            target.Replace(page.ContentNumber, PdfTarget.Stream("", content));
            whole &= isWhole;
        }
        return whole;
    }

    private static XmpPacket Packet(PdfDictionary facts, PdfDictionary catalog, bool isAccessible)
    {
        var (title, language) = (Text(facts, "Title"), Text(catalog, "Lang"));
        return new XmpPacket(
            title,
            language,
            Creator,
            Text(facts, "Producer"),
            PdfText.XmpDate(Text(facts, "CreationDate")) ?? throw new PdfSyntaxException("it does not say when it was made"),
            isAccessible && title.Length > 0 && language.Length > 0
        );
    }

    private static void Attach(PdfTarget target, PdfDictionary catalog, IReadOnlyList<AttachedData> attached, string date)
    {
        if (catalog.Has("Names"))
            throw new PdfSyntaxException("it lists names of its own");
        var files = attached
            .OrderBy(a => a.Name, StringComparer.Ordinal)
            .Select(a => (a.Name, At: Reference(a.AddTo(target, date))))
            .ToList();
        catalog.Set("AF", $"[{string.Join(' ', files.Select(f => f.At))}]");
        catalog.Set("Names", $"<</EmbeddedFiles <</Names [{string.Join(' ', files.Select(f => $"{PdfText.Write(f.Name)} {f.At}"))}]>>>>");
    }

    private static string Date(PdfDictionary facts) => Encoding.Latin1.GetString((facts.Find("CreationDate") ?? default).Span);

    private static string Text(PdfDictionary dictionary, string name) => PdfText.Read((dictionary.Find(name) ?? default).Span);

    private static string Reference(int number) => string.Create(CultureInfo.InvariantCulture, $"{number} 0 R");
}
