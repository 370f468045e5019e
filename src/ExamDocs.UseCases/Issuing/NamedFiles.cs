using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Outputs;

namespace ExamDocs.UseCases.Issuing;

/// <summary>
/// The files of documents in the folder of a run. A document is put in place under its number, and then named for people where that is
/// asked for: killed in between, it is whole under its number, and the next run names it.
/// </summary>
/// <param name="register">Where the documents are.</param>
/// <param name="folder">The folder.</param>
/// <param name="pattern">How files are named; null to leave them as they are.</param>
internal sealed class NamedFiles(DocumentRegister register, string folder, FileNamePattern? pattern)
{
    private readonly DocumentNames? _names = pattern is null ? null : new(pattern);
    private readonly List<string> _remarks = [];
    private Dictionary<string, List<string>>? _byNumber;

    /// <summary>Sentences about files that could not be named as asked.</summary>
    public IReadOnlyList<string> Remarks => _remarks;

    /// <summary>Puts an issued document into the folder where it is missing, and names its file.</summary>
    /// <returns>The name that it has now.</returns>
    public string Put(IssuedDocument document, DocumentJob job)
    {
        var name = NameOf(document);
        if (name is null)
        {
            register.Restore(document, folder);
            name = document.FileName;
        }
        return _names is null ? name : Name(document, name, _names.Of(document.Number, job, register.Find(document.Number)?.IssuedOn));
    }

    private string Name(IssuedDocument document, string name, string wanted)
    {
        if (string.Equals(name, wanted, StringComparison.Ordinal))
            return name;
        try
        {
            if (IssuedFile.Rename(document, folder, name, wanted))
                return wanted;
            _remarks.Add($"{name} keeps its name: there is another file named {wanted}.");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            _remarks.Add($"{name} keeps its name: it cannot be renamed ({e.Message.TrimEnd('.')}).");
        }
        return name;
    }

    /// <summary>Name of a document's file in the folder, as this or an earlier run left it; null where it is not there as issued.</summary>
    private string? NameOf(IssuedDocument document) =>
        NamesWith(document.Number).Prepend(document.FileName).FirstOrDefault(n => IssuedFile.IsIn(folder, document, n));

    private IReadOnlyList<string> NamesWith(string number)
    {
        _byNumber ??= Index();
        return _byNumber.TryGetValue(number, out var names) ? names : [];
    }

    private Dictionary<string, List<string>> Index()
    {
        var index = new Dictionary<string, List<string>>(StringComparer.Ordinal);
        foreach (var name in PdfNames.In(folder))
        {
            foreach (var number in DocumentNumber.In(name))
            {
                if (!index.TryGetValue(number, out var names))
                    index[number] = names = [];
                names.Add(name);
            }
        }
        return index;
    }
}
