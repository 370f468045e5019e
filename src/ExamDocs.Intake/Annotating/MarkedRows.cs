namespace ExamDocs.Intake.Annotating;

/// <summary>The marks of one sheet, taken from top to bottom and from left to right as the sheet goes by.</summary>
internal sealed class MarkedRows
{
    private readonly Queue<(int Row, IReadOnlyList<Mark> Marks)> _rows;

    public MarkedRows(IReadOnlyList<Mark> marks)
    {
        All = marks;
        _rows = new(marks.GroupBy(m => m.Row).OrderBy(r => r.Key).Select(r => (r.Key, (IReadOnlyList<Mark>)[.. r.OrderBy(m => m.Column)])));
    }

    public IReadOnlyList<Mark> All { get; }

    /// <summary>The next row above the one given that is marked and has not been taken; null where there is none.</summary>
    public IReadOnlyList<Mark>? TakeAbove(int row) => _rows.TryPeek(out var next) && next.Row < row ? _rows.Dequeue().Marks : null;

    /// <summary>The marks of this very row; none where it has none.</summary>
    public Queue<Mark> Take(int row) => _rows.TryPeek(out var next) && next.Row == row ? new(_rows.Dequeue().Marks) : new();
}
