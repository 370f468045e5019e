using ExamDocs.Core.Findings;
using ExamDocs.Intake.Photos;

namespace ExamDocs.Intake.Merging;

/// <summary>One of several inputs of a visit, with all that it says as a tree, which is built once.</summary>
internal sealed class SourceInput
{
    private static readonly HashSet<string> OfPhotos = PhotoRules.All.Select(r => r.Code).ToHashSet(StringComparer.Ordinal);

    private readonly int _number;
    private readonly ObjectNode _tree;
    private readonly HashSet<RecordPointer> _flawed;

    /// <param name="number">Which input, counted from 0.</param>
    /// <param name="read">That input, readable.</param>
    public SourceInput(int number, ReadResult read)
    {
        (_number, Read, _tree) = (number, read, RecordTree.Of(read.Record!));
        _flawed =
        [
            .. read.Findings.Where(f => !OfPhotos.Contains(f.Code)).Select(f => RecordPointer.ToRow(f.Path)).OfType<RecordPointer>(),
        ];
    }

    public ReadResult Read { get; }

    /// <summary>The particulars of its visit, as a row without a list.</summary>
    public SourceRow Visit => new(_number, Read, "visit", 0, (ObjectNode)Member("visit"), flawed: false);

    /// <summary>
    /// The rows of a list. One that reading had something to say about is flawed; a photo that is missing makes no typed
    /// value doubtful.
    /// </summary>
    public IEnumerable<SourceRow> Rows(string list) =>
        ((ListNode)Member(list)).Elements.Select(
            (node, index) => new SourceRow(_number, Read, list, index, (ObjectNode)node, _flawed.Contains(new(list, index)))
        );

    private SourceNode Member(string name) => _tree.Find(name)!;
}
