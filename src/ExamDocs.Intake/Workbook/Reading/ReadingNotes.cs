using ExamDocs.Core.Findings;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>What reading notes down on the way: where everything stood, and what was wrong.</summary>
internal sealed class ReadingNotes
{
    private readonly PlaceMap _cells = new();
    private readonly List<Finding> _findings = [];

    public IReadOnlyDictionary<string, string> Cells => _cells;

    /// <summary>What stands above the cell of a place, as typed; null where nothing does.</summary>
    public string? HeadingOf(string pointer) => _cells.HeadingOf(pointer);

    public IReadOnlyList<Finding> Findings => _findings;

    /// <summary>Sheet and number of each row that something stands on, and of which nothing is read.</summary>
    public List<(string Sheet, int Row)> UnreadRows { get; } = [];

    /// <summary>Notes where a place of the record stood; of two cells the first counts.</summary>
    /// <param name="pointer">The place.</param>
    /// <param name="address">Its cell.</param>
    /// <param name="heading">What stands beside the cell as its heading; null where nothing does.</param>
    public void Place(string pointer, string address, string? heading = null) => _cells.Add(pointer, address, heading);

    /// <inheritdoc cref="Place(string, string, string?)"/>
    public void Place(string pointer, RowView row, int column) => _cells.Add(pointer, row.Stands, column);

    /// <summary>Notes the row that an object was read from, and with it the places of its members.</summary>
    public void PlaceRow(string pointer, RowView row) => _cells.AddRow(pointer, row.Stands);

    /// <summary>Reports at a place that is noted already, or lies within one that is.</summary>
    public void Report(RuleInfo rule, string pointer, Message message)
    {
        _findings.Add(rule.At(pointer, message));
        RefuseTooMany();
    }

    public void Report(RuleInfo rule, string pointer, string address, Message message, string? item = null, Message? hint = null) =>
        Report(rule.At(pointer, message, hint, item), address);

    /// <param name="finding">What was found, with what would explain it.</param>
    /// <param name="address">The cell.</param>
    public void Report(Finding finding, string address)
    {
        if (!_cells.ContainsKey(finding.Path))
            Place(finding.Path, address);
        _findings.Add(finding);
        RefuseTooMany();
    }

    /// <summary>A pointer for a place outside the record: the sheet, or a cell on it.</summary>
    public static string Outside(string sheet, string? cell = null) => cell is null ? $"/{Escape(sheet)}" : $"/{Escape(sheet)}/{cell}";

    /// <summary>RFC 6901: ~ and / within a member's name.</summary>
    public static string Escape(string name) =>
        name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal);

    private void RefuseTooMany()
    {
        if (_findings.Count > WorkbookLimits.Findings)
            throw new UnreadableWorkbookException("The workbook has more than 5,000 faults. Begin again from a fresh capture workbook.");
    }
}
