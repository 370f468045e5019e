using System.Xml;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>Keeps a part made of ever new element names from filling memory.</summary>
internal sealed class BoundedNameTable : NameTable
{
    private int _count;

    /// <summary>Names asked for in every cell are the same string then, and need not be compared letter by letter.</summary>
    public BoundedNameTable()
    {
        foreach (var name in (ReadOnlySpan<string>)["row", "c", "v", "r", "s", "t", "si", "f", "is"])
            base.Add(name);
    }

    public override string Add(string key) => Get(key) ?? Counted(base.Add(key));

    public override string Add(char[] key, int start, int len) => Get(key, start, len) ?? Counted(base.Add(key, start, len));

    private string Counted(string name) => ++_count <= WorkbookLimits.Names
        ? name
        : throw new UnreadableWorkbookException("The workbook's parts use more different names than any workbook does.");
}
