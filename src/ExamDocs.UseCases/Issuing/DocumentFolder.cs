using ExamDocs.Register;
using ExamDocs.Register.Model;

namespace ExamDocs.UseCases.Issuing;

/// <summary>
/// The documents that a folder holds, told by the register: a file counts by its number and its bytes. What was replaced lies apart, so
/// that nobody takes it for current.
/// </summary>
internal sealed class DocumentFolder(DocumentRegister register, string folder)
{
    /// <summary>Name of the subfolder for documents that others took the place of.</summary>
    public const string Replaced = "replaced";

    /// <summary>Moves what was replaced apart, also what an interrupted run left.</summary>
    /// <returns>One sentence for each document.</returns>
    public IReadOnlyList<string> SetReplacedApart() =>
        [.. from held in In(folder) where held.Status.Ended is DocumentEnd.Replaced select SetApart(held.Status, held.File)];

    /// <summary>Names documents that this run replaced and whose files lie in other folders.</summary>
    /// <param name="issued">What this run issued.</param>
    public IEnumerable<string> ReplacedElsewhere(IEnumerable<string> issued) =>
        from number in issued
        from replaced in register.Find(number)?.Replaces ?? []
        let old = register.Find(replaced.Number)
        where old is { Folder.Length: > 0 } && !IsThis(old.Folder) && Path.Exists(old.Folder) && IsNamedIn(old.Folder, old.Number)
        select $"{old.Number} is replaced by {number}; its file is in {old.Folder}: put it away.";

    /// <summary>What the folder holds, by number, and below it what lies apart.</summary>
    public IReadOnlyList<HeldDocument> Documents() =>
        [
            .. In(folder)
                .Select(d => new HeldDocument(d.Status, d.File))
                .Concat(In(Path.Combine(folder, Replaced)).Select(d => new HeldDocument(d.Status, $"{Replaced}/{d.File}")))
                .DistinctBy(d => d.Document.Number, StringComparer.Ordinal),
        ];

    /// <summary>Names of every file that can be a document, to see whether any was added or removed meanwhile.</summary>
    public IReadOnlyList<string> Names() =>
        [
            .. new[] { folder, Path.Combine(folder, Replaced) }.SelectMany(place =>
                PdfNames.In(place).Select(name => Path.Combine(place, name))
            ),
        ];

    private string SetApart(DocumentStatus old, string file)
    {
        var by = $"{old.Number} is replaced by {string.Join(", ", old.ReplacedBy)}";
        try
        {
            return IssuedFile.SetApart(register.FindByNumber(old.Number)!, folder, Replaced, file)
                ? $"{by} and was moved into {Replaced}."
                : $"{by}.";
        }
        catch (DocumentFileConflictException)
        {
            return $"{by}; it stays where it is, because another file of that name is in {Replaced}.";
        }
    }

    private bool IsThis(string other) => string.Equals(Path.GetFullPath(folder), other, StringComparison.Ordinal);

    /// <summary>Every name of a document's file has its number; which of several numbers in a name is its own, the bytes tell.</summary>
    private IEnumerable<(DocumentStatus Status, string File)> In(string place) =>
        (
            from name in PdfNames.In(place)
            from number in DocumentNumber.In(Path.GetFileNameWithoutExtension(name))
            let document = register.FindByNumber(number)
            where document is not null && IssuedFile.IsIn(place, document, name)
            select (Status: register.Find(number)!, File: name)
        )
            .OrderBy(d => d.Status.Number, StringComparer.Ordinal)
            .ThenByDescending(d => d.File.Length);

    private static bool IsNamedIn(string place, string number) =>
        PdfNames.In(place).Any(f => DocumentNumber.In(Path.GetFileNameWithoutExtension(f)).Contains(number, StringComparer.Ordinal));
}

/// <summary>A document that a folder holds.</summary>
/// <param name="Document">As the register has it.</param>
/// <param name="File">Its place within the folder.</param>
internal sealed record HeldDocument(DocumentStatus Document, string File);
