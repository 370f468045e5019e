using System.Numerics;
using ExamDocs.Documents.Finishing;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>The path being drawn, for the part of the page that it may leave to be shown (ISO 32000-1, 8.5.4).</summary>
internal sealed class DrawnPath
{
    private PageArea _area = PageArea.Nothing;
    private bool _clips;

    /// <returns>False where the operator has nothing to do with a path.</returns>
    public bool Pass(in ContentOperators o, ref DrawingState state)
    {
        if (o.Is("re"u8))
            AddCorners(o.Number(0), o.Number(1), o.Number(2), o.Number(3), state);
        else if (o.Is("m"u8) || o.Is("l"u8) || o.Is("c"u8) || o.Is("v"u8) || o.Is("y"u8))
            AddPoints(o, state);
        else if (o.Is("W"u8) || o.Is("W*"u8))
            _clips = true;
        else if (o.Operator.Length <= 2 && "nfFBbSs"u8.IndexOf(o.Operator[0]) >= 0 && (o.Operator.Length == 1 || o.Operator[1] == '*'))
            End(ref state);
        else
            return false;
        return true;
    }

    private void AddCorners(double x, double y, double width, double height, in DrawingState state)
    {
        Add(x, y, state);
        Add(x + width, y, state);
        Add(x, y + height, state);
        Add(x + width, y + height, state);
    }

    private void AddPoints(in ContentOperators o, in DrawingState state)
    {
        for (var i = 0; i + 1 < o.Count; i += 2)
            Add(o.Number(i), o.Number(i + 1), state);
    }

    private void Add(double x, double y, in DrawingState state) => _area = _area.With(Vector2.Transform(new Vector2((float)x, (float)y), state.Place));

    private void End(ref DrawingState state)
    {
        if (_clips)
            state = state with { Clip = state.Clip.Within(_area) };
        (_area, _clips) = (PageArea.Nothing, false);
    }
}
