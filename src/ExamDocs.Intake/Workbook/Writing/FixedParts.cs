using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace ExamDocs.Intake.Workbook.Writing;

/// <summary>
/// Takes out of a workbook's package what changes each time it is written: times, and random names of the parts at its root. Then equal
/// content gives equal bytes.
/// </summary>
internal static partial class FixedParts
{
    private const string Roots = "_rels/.rels";

    private const string Facts = ".psmdcp";

    /// <summary>The first day that a ZIP can name.</summary>
    private static readonly DateTimeOffset Made = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <param name="workbook">A whole workbook, which is changed.</param>
    public static void Set(Stream workbook)
    {
        using var zip = new ZipArchive(workbook, ZipArchiveMode.Update, leaveOpen: true);
        var roots = Text(zip.GetEntry(Roots)!);
        if (zip.Entries.FirstOrDefault(e => e.FullName.EndsWith(Facts, StringComparison.Ordinal)) is { } facts)
        {
            var name = $"{facts.FullName[..(facts.FullName.LastIndexOf('/') + 1)]}facts{Facts}";
            roots = roots.Replace(facts.FullName, name, StringComparison.Ordinal);
            Replace(zip, facts, name, Text(facts));
        }
        var number = 0;
        Replace(
            zip,
            zip.GetEntry(Roots)!,
            Roots,
            Ids().Replace(roots, _ => string.Create(CultureInfo.InvariantCulture, $" Id=\"root{++number}\""))
        );
        foreach (var part in zip.Entries)
            part.LastWriteTime = Made;
    }

    private static string Text(ZipArchiveEntry part)
    {
        using var reader = new StreamReader(part.Open(), Encoding.UTF8);
        return reader.ReadToEnd();
    }

    private static void Replace(ZipArchive zip, ZipArchiveEntry part, string name, string text)
    {
        part.Delete();
        using var stream = zip.CreateEntry(name).Open();
        stream.Write(Encoding.UTF8.GetBytes(text));
    }

    [GeneratedRegex(" Id=\"[^\"]*\"", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Ids();
}
