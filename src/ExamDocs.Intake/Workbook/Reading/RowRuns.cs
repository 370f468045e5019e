namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>
/// The rows that the elements of one list were read from, top to bottom: those that follow each other on a sheet, as nearly
/// all do, are kept as one.
/// </summary>
internal sealed class RowRuns
{
    private readonly List<Run> _runs = [];

    /// <summary>First index, counted from 0, that nothing is noted for yet.</summary>
    private int _next;

    /// <param name="index">Index of the element, counted from 0.</param>
    /// <returns>False where it comes after one of a higher index, and is not noted.</returns>
    public bool Add(int index, RowPlace row)
    {
        if (index < _next)
            return false;
        if (_runs.Count == 0 || index != _next || !_runs[^1].First.IsFollowedBy(row, index - _runs[^1].Index))
            _runs.Add(new Run(index, row));
        _runs[^1] = _runs[^1] with { Count = index - _runs[^1].Index + 1 };
        _next = index + 1;
        return true;
    }

    /// <returns>Null where none is noted.</returns>
    public RowPlace? Find(int index)
    {
        var (low, high) = (0, _runs.Count - 1);
        while (low <= high)
        {
            var middle = (low + high) / 2;
            var run = _runs[middle];
            if (index < run.Index)
                high = middle - 1;
            else if (index - run.Index < run.Count)
                return run.First.Below(index - run.Index);
            else
                low = middle + 1;
        }
        return null;
    }

    /// <summary>Every index noted, with its row.</summary>
    public IEnumerable<(int Index, RowPlace Row)> All =>
        _runs.SelectMany(run => Enumerable.Range(0, run.Count).Select(n => (run.Index + n, run.First.Below(n))));

    private readonly record struct Run(int Index, RowPlace First, int Count = 0);
}
