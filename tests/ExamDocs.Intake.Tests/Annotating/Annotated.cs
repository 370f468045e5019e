using System.Globalization;
using ExamDocs.Core.Findings;
using ExamDocs.Intake.Annotating;

namespace ExamDocs.Intake.Tests.Annotating;

/// <summary>Findings on chosen cells of a workbook, and the copy annotated with them.</summary>
internal sealed class Annotated
{
    private readonly Dictionary<string, string> _cells = new(StringComparer.Ordinal);
    private readonly List<Finding> _findings = [];

    public IReadOnlyList<Finding> Findings => _findings;

    public IReadOnlyCollection<(string Sheet, string Cell)> Cells =>
        [.. _cells.Values.Distinct(StringComparer.Ordinal).Select(c => (c[..c.LastIndexOf('!')], c[(c.LastIndexOf('!') + 1)..]))];

    public SourceMap Places => SourceMap.ForWorkbook("kit.xlsx", _cells);

    public Annotated At(
        string sheet,
        string cell,
        Severity severity = Severity.Error,
        string message = "something is wrong",
        string? item = "BRG-1"
    )
    {
        var pointer = string.Create(CultureInfo.InvariantCulture, $"/at/{_findings.Count}");
        _cells[pointer] = $"{sheet}!{cell}";
        _findings.Add(
            new("TST001", severity, pointer, Message.AsIs(message), $"put {cell} right.", "common practice, no source") { Item = item }
        );
        return this;
    }

    public Annotated Nowhere(string message)
    {
        _findings.Add(new("TST002", Severity.Warning, "/nowhere", Message.AsIs(message), $"put it right.", "common practice, no source"));
        return this;
    }

    /// <summary>All but that there are formulas, which a copy has no more.</summary>
    public static List<Finding> WithoutFormulas(IEnumerable<Finding> findings) => [.. findings.Where(f => f.Code is not "INT035")];

    public byte[] Copy(byte[] workbook)
    {
        using var source = new MemoryStream(workbook);
        using var target = new MemoryStream();
        Assert.Null(AnnotatedWorkbook.Write(source, target, _findings, Places));
        return target.ToArray();
    }
}
