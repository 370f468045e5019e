using System.IO.Compression;
using System.Text;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>Tells from its first bytes, not from its name, what a file is that is not a workbook we read.</summary>
internal static class FileKind
{
    private static readonly byte[] CompoundFile = [0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1];

    /// <summary>Whether the bytes begin as an archive, which a workbook is, or as an older Office file.</summary>
    /// <param name="first">Four at least, where the file has so many.</param>
    public static bool IsPackage(ReadOnlySpan<byte> first) =>
        first.StartsWith("PK\x03\x04"u8) || first.StartsWith(CompoundFile.AsSpan(0, 4));

    /// <summary>Why these bytes cannot be opened as a zip archive; null where they may be one.</summary>
    public static string? WhyNotZip(ReadOnlySpan<byte> file)
    {
        if (file.IsEmpty)
            return "The file is empty.";
        if (file.StartsWith("PK\x03\x04"u8))
            return null;
        if (!file.StartsWith(CompoundFile))
            return "The file is not a workbook (.xlsx): it does not begin as one does.";
        return file.IndexOf(Encoding.Unicode.GetBytes("EncryptedPackage")) >= 0
            ? "The workbook is protected with a password to open it. Take the password off and save it again."
            : "The file is in an older binary format (such as .xls). Save it as an .xlsx workbook.";
    }

    /// <summary>Why this archive is not a workbook that we read; null where it may be one.</summary>
    public static string? WhyNotWorkbook(ZipArchive archive)
    {
        if (archive.GetEntry("xl/workbook.bin") is not null)
            return "The file is a binary workbook (.xlsb). Save it as an .xlsx workbook.";
        if (archive.GetEntry("content.xml") is not null && archive.GetEntry("mimetype") is not null)
            return "The file is an OpenDocument file (such as .ods). Save it as an .xlsx workbook.";
        return archive.GetEntry("[Content_Types].xml") is null || archive.GetEntry("_rels/.rels") is null
            ? "The file is a zip archive, but not a workbook (.xlsx)."
            : null;
    }
}
