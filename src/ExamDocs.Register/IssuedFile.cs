using ExamDocs.Register.Files;
using ExamDocs.Register.Model;

namespace ExamDocs.Register;

/// <summary>The files of issued documents in the folders that they were written to.</summary>
public static class IssuedFile
{
    /// <summary>Whether a folder holds a document byte for byte as issued.</summary>
    public static bool IsIn(string folder, IssuedDocument document) => IsIn(folder, document, document?.FileName!);

    /// <summary>The same under another name.</summary>
    public static bool IsIn(string folder, IssuedDocument document, string name)
    {
        ArgumentNullException.ThrowIfNull(document);
        return DurableFile.HasHash(Path.Combine(folder, name), document.Sha256);
    }

    /// <summary>Gives a document's file another name in its folder; its bytes stay.</summary>
    /// <param name="document">What is in the folder under its name and is something else stays.</param>
    /// <param name="folder">The folder.</param>
    /// <param name="name">The name that it has.</param>
    /// <param name="to">The name that it gets.</param>
    /// <returns>False where another file has that name already; both are then as they were.</returns>
    /// <exception cref="IOException">It cannot be renamed.</exception>
    public static bool Rename(IssuedDocument document, string folder, string name, string to)
    {
        ArgumentNullException.ThrowIfNull(document);
        return DurableFile.Rename(folder, name, to, document.Sha256);
    }

    /// <summary>Moves a document that is issued, current or not, into a subfolder of its folder, byte for byte.</summary>
    /// <param name="document">What is in the folder under its name and is something else stays.</param>
    /// <param name="folder">The folder in which it may be.</param>
    /// <param name="subfolder">Name of the subfolder; made where it is missing.</param>
    /// <param name="name">Its name there; left out, that by its number.</param>
    /// <returns>True where it was moved; false where it was not there.</returns>
    /// <exception cref="DocumentFileConflictException">A different file of that name is there already; both stay.</exception>
    public static bool SetApart(IssuedDocument document, string folder, string subfolder, string? name = null)
    {
        ArgumentNullException.ThrowIfNull(document);
        return DurableFile.MoveInto(folder, subfolder, name ?? document.FileName, document.Sha256);
    }

    /// <summary>Full path of a folder, made where it is missing; empty for none.</summary>
    internal static string Folder(string? folder) => folder is null ? "" : Directory.CreateDirectory(folder).FullName;
}
