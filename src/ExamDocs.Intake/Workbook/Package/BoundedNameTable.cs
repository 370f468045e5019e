using System.Xml;
using ExamDocs.Intake.Binding;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>Keeps a part made of ever new element names from filling memory.</summary>
internal sealed class BoundedNameTable : NameTable
{
    /// <summary>Names of one letter, of which every cell has half a dozen: found without a search.</summary>
    private readonly string?[] _letters = new string?['z' + 1];
    private int _count;

    public BoundedNameTable()
    {
        // Who asks for one of these by the same string need not compare letter by letter.
        foreach (var name in (ReadOnlySpan<string>)["row", "c", "v", "r", "s", "t", "si", "f", "is"])
        {
            base.Add(name);
            if (name.Length == 1)
                _letters[name[0]] = name;
        }
    }

    public override string Add(string key) => Get(key) ?? Counted(base.Add(key));

    public override string Add(char[] key, int start, int len) =>
        Letter(key, start, len) ?? Get(key, start, len) ?? Counted(base.Add(key, start, len));

    private string? Letter(char[] key, int start, int len) => len == 1 && key[start] < _letters.Length ? _letters[key[start]] : null;

    private string Counted(string name) =>
        ++_count <= WorkbookLimits.Names
            ? name
            : throw new UnreadableWorkbookException("The workbook's parts use more different names than any workbook does.");
}
