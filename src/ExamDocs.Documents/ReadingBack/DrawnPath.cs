using System.Numerics;
using ExamDocs.Documents.Finishing;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>The path being drawn: what it paints, and how it narrows the part of the page that is shown (ISO 32000-1, 8.5).</summary>
internal sealed class DrawnPath
{
    /// <summary>A curve is read as so many straight lines.</summary>
    private const int Straights = 6;

    /// <summary>
    /// Points, half the width of the thinnest line that is looked for. A width of 0 means as thin as can be drawn (ISO 32000-1,
    /// 8.4.3.2), and such a line strikes a letter out all the same. No source for the figure.
    /// </summary>
    private const float LeastHalfWidth = 0.1f;

    private readonly List<List<Vector2>> _lines = [];
    private PageArea _area = PageArea.Nothing;
    private bool _clips;

    /// <param name="o">An operator of the page.</param>
    /// <param name="state">What holds where it stands.</param>
    /// <param name="paint">Takes the closed lines that are painted, and whether they are painted as a line.</param>
    /// <returns>False where the operator has nothing to do with a path.</returns>
    public bool Pass(in ContentOperators o, ref DrawingState state, Action<IReadOnlyList<Vector2[]>, bool> paint)
    {
        if (o.Is("re"u8))
            AddRectangle((float)o.Number(0), (float)o.Number(1), (float)o.Number(2), (float)o.Number(3), state);
        else if (o.Is("m"u8))
            _lines.Add([At(o, 0, state)]);
        else if (o.Is("l"u8))
            Add(At(o, 0, state));
        else if (o.Is("c"u8))
            AddCurve(At(o, 0, state), At(o, 2, state), At(o, 4, state));
        else if (o.Is("v"u8))
            AddCurve(Last, At(o, 0, state), At(o, 2, state));
        else if (o.Is("y"u8))
            AddCurve(At(o, 0, state), At(o, 2, state), At(o, 2, state));
        else if (o.Is("h"u8))
            Close();
        else if (o.Is("W"u8) || o.Is("W*"u8))
            _clips = true;
        else if (o.Operator.Length <= 2 && "nfFBbSs"u8.IndexOf(o.Operator[0]) >= 0 && (o.Operator.Length == 1 || o.Operator[1] == '*'))
            End(o, ref state, paint);
        else
            return false;
        return true;
    }

    private Vector2 Last => _lines is [.., [.., var last]] ? last : default;

    private static Vector2 At(in ContentOperators o, int index, in DrawingState state) =>
        Vector2.Transform(new Vector2((float)o.Number(index), (float)o.Number(index + 1)), state.Place);

    /// <summary>Each corner is moved by itself: the sides of a rectangle that is turned are not upright any more.</summary>
    private void AddRectangle(float x, float y, float width, float height, in DrawingState state)
    {
        Vector2[] corners = [new(x, y), new(x + width, y), new(x + width, y + height), new(x, y + height), new(x, y)];
        var place = state.Place;
        _lines.Add([.. corners.Select(c => Vector2.Transform(c, place))]);
    }

    private void Add(Vector2 point)
    {
        if (_lines.Count == 0)
            _lines.Add([]);
        _lines[^1].Add(point);
    }

    private void AddCurve(Vector2 first, Vector2 second, Vector2 to)
    {
        var from = Last;
        for (var n = 1; n <= Straights; n++)
        {
            var (t, u) = (n / (float)Straights, 1 - (n / (float)Straights));
            Add((u * u * u * from) + (3 * u * u * t * first) + (3 * u * t * t * second) + (t * t * t * to));
        }
    }

    private void Close()
    {
        if (_lines is [.., [var first, _, ..]])
            _lines[^1].Add(first);
    }

    private void End(in ContentOperators o, ref DrawingState state, Action<IReadOnlyList<Vector2[]>, bool> paint)
    {
        foreach (var point in _lines.SelectMany(l => l))
            _area = _area.With(point);
        if ("fFBb"u8.IndexOf(o.Operator[0]) >= 0)
            paint([.. _lines.Select(l => l.ToArray())], false);
        if ("BbSs"u8.IndexOf(o.Operator[0]) >= 0)
        {
            if (o.Operator[0] is (byte)'b' or (byte)'s')
                Close();
            var half = Math.Max(LeastHalfWidth, 0.5f * state.LineWidth * MathF.Sqrt(MathF.Abs(state.Place.GetDeterminant())));
            paint([.. _lines.SelectMany(l => Strokes(l, half))], true);
        }
        // The least rectangle around the path: the pages clip by rectangles. For another shape it is too large, never too small, so
        // that no letter is called cut that is not.
        if (_clips)
            state = state with { Clip = state.Clip.Within(_area) };
        _lines.Clear();
        (_area, _clips) = (PageArea.Nothing, false);
    }

    /// <summary>Each straight piece of a line as the rectangle that it covers.</summary>
    private static IEnumerable<Vector2[]> Strokes(List<Vector2> line, float half)
    {
        for (var i = 1; i < line.Count; i++)
        {
            var along = line[i] - line[i - 1];
            if (along.Length() < 0.001f)
                continue;
            var across = half * Vector2.Normalize(new Vector2(-along.Y, along.X));
            yield return [line[i - 1] + across, line[i - 1] - across, line[i] - across, line[i] + across];
        }
    }
}
