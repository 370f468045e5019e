using System.Text;
using ExamDocs.Core.Findings;
using ExamDocs.Intake.Workbook;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Annotating;

/// <summary>One copy in the making: plans which parts change and which are new, then writes them all in their order.</summary>
internal sealed class AnnotatedCopy
{
    private readonly WorkbookPackage _package;
    private readonly MessageLanguage _language;
    private readonly WorkbookDirectory _directory;
    private readonly FormatNames _names;
    private readonly StylePlan _styles;
    private readonly PartChanges _changes;
    private readonly List<PlacedFinding> _findings;
    private readonly List<PlacedFinding> _marked;

    public AnnotatedCopy(WorkbookPackage package, IReadOnlyList<Finding> findings, SourceMap places, MessageLanguage language)
    {
        (_package, _language) = (package, language);
        _directory = WorkbookDirectory.Read(package);
        _names = FormatNames.Of(RootNamespace(package, _directory.Main));
        _styles = new StylePlan(StyleCounts.Read(package, _directory.Styles));
        _changes = new PartChanges(package);
        _findings = [.. findings.Select(f => Place(f, places))];
        _marked =
        [
            .. findings
                .SelectMany(f => f.Also.Count == 0 ? [f] : f.Also.Select(a => f with { Path = a.Path, Message = a.Message }))
                .Select(f => Place(f, places)),
        ];
        PlanSheets();
        PlanStyles();
        PlanFindings();
        LiveParts.Plan(package, _changes, _directory.Main);
    }

    /// <summary>Nodes that were read in the parts that changed.</summary>
    public long Nodes => _changes.Nodes;

    public void Write(Stream target) => _changes.Write(target);

    private PlacedFinding Place(Finding finding, SourceMap places) =>
        places.CellOf(finding.Path) is var (sheet, cell)
        && CellAddress.Parse(cell) is { } at
        && _directory.Sheets.Any(s => string.Equals(s.Name, sheet, StringComparison.Ordinal))
            ? new(finding, sheet, at)
            : new(finding, null, null);

    private void PlanSheets()
    {
        foreach (var marked in _marked.Where(f => f.Cell is not null).GroupBy(f => f.Sheet!, StringComparer.Ordinal))
        {
            var at = _directory.Sheets.ToList().FindIndex(s => string.Equals(s.Name, marked.Key, StringComparison.Ordinal));
            var marks = marked
                .GroupBy(f => f.Cell!.Value)
                .Select(c => Mark.Of(c.Key, c.Select(f => f.Finding), _language))
                .OrderBy(m => m.Row)
                .ThenBy(m => m.Column)
                .ToList();
            new SheetNotes(_package, _changes, _names, _styles).Plan(_directory.Sheets[at].Part, at, marks);
        }
    }

    private void PlanStyles()
    {
        if (_directory.Styles is { } part)
        {
            // After the sheets, which say on their way which styles they need.
            _changes.PatchLast(part, new StylesPatch(_styles));
            return;
        }
        var fresh = _changes.FreshPart(Folder(_directory.Main) + "styles", ".xml");
        _changes.Link(_directory.Main, _names.Link("styles"), fresh);
        _changes.Add(fresh, ContentTypes.Styles, target =>
            new StylesPatch(_styles).Run(new MemoryStream(Encoding.UTF8.GetBytes($"<styleSheet xmlns=\"{_names.Main}\"/>")), target)
        );
    }

    private void PlanFindings()
    {
        var known = WorkbookNames.Read(_package, _directory.Main);
        var part = _changes.FreshPart(Folder(_directory.Main) + "worksheets/findings", ".xml");
        var link = _changes.Link(_directory.Main, _names.Link("worksheet"), part);
        _changes.Patch(
            _directory.Main,
            new WorkbookPatch(known.Fresh(FindingsSheet.Name.In(_language)), known.LastSheetId + 1, link, _names.Links)
        );
        _changes.Add(part, ContentTypes.Sheet, target => new FindingsSheetWriter(_names, _styles, _language).Write(target, _findings));
    }

    private static string Folder(string part) => part[..(part.LastIndexOf('/') + 1)];

    private static string RootNamespace(WorkbookPackage package, string part)
    {
        using var xml = GuardedXml.Open(package.Open(part), keepAll: false);
        xml.MoveToContent();
        return xml.NamespaceURI;
    }
}
