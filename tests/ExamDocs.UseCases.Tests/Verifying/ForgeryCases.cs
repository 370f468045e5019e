using System.Globalization;
using System.Text;
using ExamDocs.Documents.PdfSyntax;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Tests.Verifying;

/// <summary>Ways to make a page show something else than the data within say, or hold more than it shows.</summary>
internal static class ForgeryCases
{
    private const string Whole = "0 0 2000 2000 re";

    /// <summary>By name: what is done, and whether the drawn page looks otherwise after it.</summary>
    public static IReadOnlyDictionary<string, (Action<Forgery> Do, bool IsSeen)> All { get; } =
        new Dictionary<string, (Action<Forgery>, bool)>(StringComparer.Ordinal)
        {
            ["page covered and lettered anew"] = (
                f => f.Draw($"1 1 1 rg\n{Whole}\nf\n0 0 0 rg\nBT\n/F4 40 Tf\n1 0 0 1 40 200 Tm\n<0029> Tj\nET"),
                true
            ),
            ["page covered and lettered anew in lines"] = (
                f => f.Draw($"1 1 1 rg\n{Whole}\nf\n0 0 0 RG\n40 200 m\n40 260 l\n80 260 l\nS"),
                true
            ),
            ["page lettered anew before the text, which is made white"] = (
                f => f.Content(c => c.Replace("BT\n", "1 1 1 rg\nBT\n", StringComparison.Ordinal)),
                true
            ),
            ["letters drawn as lines on free paper"] = (f => f.Draw("0 0 0 RG\n4 4 m\n4 14 l\n10 14 l\nS"), true),

            ["white rectangle over a word"] = (f => f.Draw($"1 1 1 rg\n{f.Over("CON-07")}\nf"), true),
            ["white rectangle over a word, marked as decoration"] = (
                f => f.Draw($"/Artifact BMC\n1 1 1 rg\n{f.Over("CON-07")}\nf*\nEMC"),
                true
            ),
            ["thick white line over a word"] = (f => f.Draw($"1 1 1 RG\n{Line(f.Over("CON-07"))}"), true),
            ["white rectangle under other letters"] = (
                f => f.Draw($"1 1 1 rg\n{f.Over("CON-07")}\nf\n0 0 0 rg\nBT\n/F4 8 Tf\n1 0 0 1 40 200 Tm\n<0029> Tj\nET"),
                true
            ),

            ["picture over a word"] = (f => Picture(f, ""), true),
            ["stencil over a word"] = (f => Picture(f, "/ImageMask true\n"), true),
            ["picture within the text"] = (f => f.Draw("q\n200 0 0 200 20 100 cm\nBI /W 1 /H 1 /CS /G /BPC 8 ID \u00ff EI\nQ"), true),
            ["drawing kept apart over a word"] = (Drawing, true),

            ["letters not drawn"] = (f => f.Content(c => c.Replace("BT\n", "BT\n3 Tr\n", StringComparison.Ordinal)), true),
            ["letters that only clip"] = (f => f.Content(c => c.Replace("BT\n", "BT\n7 Tr\n", StringComparison.Ordinal)), true),
            ["letters without width"] = (f => f.Content(c => c.Replace("BT\n", "BT\n0 Tz\n", StringComparison.Ordinal)), true),
            ["letters too small"] = (
                f => f.Content(c => System.Text.RegularExpressions.Regex.Replace(c, "(/F[0-9]+) [0-9.]+ Tf", "$1 .01 Tf")),
                true
            ),
            ["letters moved off the page"] = (f => f.Content(c => $"1 0 0 1 4000 0 cm\n{c}"), true),

            ["smaller box shown"] = (f => f.Page(p => p.Set("CropBox", "[0 0 50 50]")), true),
            ["smaller box shown, of all pages"] = (
                f => f.Objects("/Kids", p => p.Word("Type") == "/Pages" ? p.Set("CropBox", "[0 0 50 50]") : p),
                true
            ),
            ["smaller box shown, spelt otherwise"] = (f => f.Page(p => p.Set("Crop#42ox", "[0 0 50 50]")), true),
            ["smaller page"] = (f => f.Page(p => p.Set("MediaBox", "[0 0 50 50]")), true),
            ["page turned"] = (f => f.Page(p => p.Set("Rotate", "180")), true),
            ["page of other units"] = (f => f.Page(p => p.Set("UserUnit", "4")), false),

            ["stamp"] = (f => Note(f, "/Subtype /Stamp\n"), true),
            ["free text"] = (f => Note(f, "/Subtype /FreeText\n/DA (/Helv 20 Tf 1 0 0 rg)\n/Contents (FIT FOR USE)\n"), true),
            ["square"] = (f => Note(f, "/Subtype /Square\n/IC [1 1 1]\n"), true),
            ["field with a look"] = (f => Note(f, "/Subtype /Widget\n/FT /Sig\n/T (Signature)\n/TU (Signature)\n"), true),

            ["letters that stand for none"] = (
                f =>
                    f.LetterTables(t =>
                        System.Text.RegularExpressions.Regex.Replace(t, "<(0[0-9A-F]{3})> <00(4[0-9A-F]|6[0-9A-F])>", "<$1> <200B>")
                    ),
                false
            ),
            ["letters that stand for nothing"] = (
                f =>
                    f.LetterTables(t =>
                        System.Text.RegularExpressions.Regex.Replace(t, "<(0[0-9A-F]{3})> <00(4[0-9A-F]|6[0-9A-F])>", "<$1> <>")
                    ),
                false
            ),
            ["letters without a table"] = (f => f.Objects("/ToUnicode", p => Without(p, "ToUnicode")), false),
            ["letters that stand for a blank"] = (
                f =>
                    f.LetterTables(t =>
                        System.Text.RegularExpressions.Regex.Replace(t, "<(0[0-9A-F]{3})> <00(4[0-9A-F]|6[0-9A-F])>", "<$1> <0020>")
                    ),
                false
            ),

            ["tag that says nothing"] = (
                f =>
                    f.Content(c =>
                        c.Replace("BT\n", "/Span <</ActualText ()>>BDC\nBT\n", StringComparison.Ordinal)
                            .Replace("ET\n", "ET\nEMC\n", StringComparison.Ordinal)
                    ),
                false
            ),
            ["tag that says something else"] = (
                f =>
                    f.Content(c =>
                        c.Replace("BT\n", "/Span <</ActualText (fit for use)>>BDC\nBT\n", StringComparison.Ordinal)
                            .Replace("ET\n", "ET\nEMC\n", StringComparison.Ordinal)
                    ),
                false
            ),
            ["tag in the tree that says something else"] = (f => f.Objects("/S /NonStruct", t => t.Set("ActualText", "(fit)")), false),
            ["tag whose words are kept elsewhere"] = (
                f =>
                    f.Content(c =>
                        c.Replace("BT\n", "/Span /P0 BDC\nBT\n", StringComparison.Ordinal)
                            .Replace("ET\n", "ET\nEMC\n", StringComparison.Ordinal)
                    ),
                false
            ),

            ["older data beside the data"] = (f => OlderData(f), false),
            ["data of two versions under one name"] = (
                f =>
                    f.Catalog(c =>
                        c.Set(
                            "Names",
                            Latin(c, "Names")
                                .Replace("/Names [", $"/Names [(document.json) {Specification(f)} 0 R ", StringComparison.Ordinal)
                        )
                    ),
                false
            ),
            ["data that nothing names"] = (f => _ = Specification(f), false),
            ["object that nothing names"] = (f => f.Add("<</Type /Page\n/MediaBox [0 0 100 100]>>"), false),

            ["program on opening"] = (f => f.Catalog(c => c.Set("OpenAction", "<</S /JavaScript\n/JS (app.alert\\(1\\))>>")), false),
            ["program on a page"] = (f => f.Page(p => p.Set("AA", "<</O <</S /JavaScript\n/JS (1)>>>>")), false),
            ["program by name"] = (
                f =>
                    f.Catalog(c =>
                        c.Set(
                            "Names",
                            Latin(c, "Names")
                                .Replace("<</EmbeddedFiles", "<</JavaScript <</Names []>> /EmbeddedFiles", StringComparison.Ordinal)
                        )
                    ),
                false
            ),
            ["layers"] = (f => f.Catalog(c => c.Set("OCProperties", "<</OCGs [] /D <<>>>>")), false),
            ["text in a layer"] = (
                f =>
                    f.Content(c =>
                        c.Replace("BT\n", "/OC /L0 BDC\nBT\n", StringComparison.Ordinal)
                            .Replace("ET\n", "ET\nEMC\n", StringComparison.Ordinal)
                    ),
                false
            ),
            ["second content of a page"] = (
                f => f.Page(p => p.Set("Contents", $"[{p.Word("Contents")} {f.AddStream("", $"1 1 1 rg\n{Whole}\nf")} 0 R]")),
                true
            ),
            ["see-through settings"] = (f => f.Objects("/ca 1", g => g.Set("ca", "0")), true),
            ["entry said twice"] = (f => f.Add("<</Type /MCR\n/MCID 1\n/MCID 2>>"), false),
        };

    private static string Latin(PdfDictionary dictionary, string name) => Encoding.Latin1.GetString(dictionary.Find(name)!.Value.Span);

    private static PdfDictionary Without(PdfDictionary dictionary, string name)
    {
        var kept = PdfDictionary.Read("<<>>"u8.ToArray());
        foreach (var (entry, value) in dictionary.Entries.Where(e => e.Name != name))
            kept.Set(entry, Encoding.Latin1.GetString(value.Span));
        return kept;
    }

    private static string Line(string rectangle)
    {
        var n = rectangle.Split(' ').Take(4).Select(v => double.Parse(v, CultureInfo.InvariantCulture)).ToArray();
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{n[3]:0.##} w\n{n[0]:0.##} {n[1] + (n[3] / 2):0.##} m\n{n[0] + n[2]:0.##} {n[1] + (n[3] / 2):0.##} l\nS"
        );
    }

    private static void Picture(Forgery f, string entries)
    {
        var mask = entries.Length > 0;
        var picture = f.AddStream(
            "/Type /XObject\n/Subtype /Image\n/Width 1\n/Height 1\n/BitsPerComponent "
                + $"{(mask ? 1 : 8)}\n{(mask ? entries : "/ColorSpace /DeviceGray\n")}",
            mask ? "\0" : "\u00ff"
        );
        f.Page(p => p.Set("Resources", Latin(p, "Resources").Insert(2, $"/XObject <</X99 {picture} 0 R>>\n")));
        f.Draw("1 1 1 rg\nq\n200 0 0 200 20 100 cm\n/X99 Do\nQ");
    }

    private static void Drawing(Forgery f)
    {
        var drawing = f.AddStream("/Type /XObject\n/Subtype /Form\n/BBox [0 0 2000 2000]\n", $"1 1 1 rg\n{f.Over("CON-07")}\nf");
        f.Page(p => p.Set("Resources", Latin(p, "Resources").Insert(2, $"/XObject <</X99 {drawing} 0 R>>\n")));
        f.Draw("/X99 Do");
    }

    private static void Note(Forgery f, string entries)
    {
        var look = f.AddStream("/Type /XObject\n/Subtype /Form\n/BBox [0 0 200 200]\n", "1 1 1 rg\n0 0 200 200 re\nf");
        var note = f.Add($"<</Type /Annot\n{entries}/Rect [20 100 220 300]\n/F 4\n/AP <</N {look} 0 R>>>>");
        f.Page(p => p.Set("Annots", $"[{note} 0 R]"));
    }

    private static int Specification(Forgery f)
    {
        var data = f.AddStream(
            "/Type /EmbeddedFile\n/Subtype /application#2Fjson\n/Params <</Size 2\n/ModDate (D:20260101000000Z)\n/CheckSum <00>>>\n",
            "{}"
        );
        return f.Add(
            $"<</Type /Filespec\n/F (document.json)\n/UF (document.json)\n/Desc (x)\n/AFRelationship /Data\n/EF <</F {data} 0 "
                + $"R\n/UF {data} 0 R>>>>"
        );
    }

    private static void OlderData(Forgery f)
    {
        var specification = Specification(f);
        f.Catalog(c => c.Set("AF", Latin(c, "AF").Replace("]", $" {specification} 0 R]", StringComparison.Ordinal)));
    }
}
