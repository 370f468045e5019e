using ExamDocs.Register.Files;
using ExamDocs.Register.Model;

namespace ExamDocs.Register;

/// <summary>The files of issued documents in the folders that they were written to.</summary>
public static class IssuedFile
{
    /// <summary>Whether a folder holds a document byte for byte as issued.</summary>
    public static bool IsIn(string folder, IssuedDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        return DurableFile.HasHash(Path.Combine(folder, document.FileName), document.Sha256);
    }

    /// <summary>Moves a document that is issued, current or not, into a subfolder of its folder, byte for byte.</summary>
    /// <param name="document">What is in the folder under its name and is something else stays.</param>
    /// <param name="folder">The folder in which it may be.</param>
    /// <param name="subfolder">Name of the subfolder; made where it is missing.</param>
    /// <returns>True where it was moved; false where it was not there.</returns>
    /// <exception cref="DocumentFileConflictException">A different file of that name is there already; both stay.</exception>
    public static bool SetApart(IssuedDocument document, string folder, string subfolder)
    {
        ArgumentNullException.ThrowIfNull(document);
        return DurableFile.MoveInto(folder, subfolder, document.FileName, document.Sha256);
    }

    /// <summary>Full path of a folder, made where it is missing; empty for none.</summary>
    internal static string Folder(string? folder) => folder is null ? "" : Directory.CreateDirectory(folder).FullName;
}
