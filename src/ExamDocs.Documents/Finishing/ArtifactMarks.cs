namespace ExamDocs.Documents.Finishing;

/// <summary>
/// Marks what belongs to no part of the text as decoration: page margins, lines, backgrounds. The browser leaves it
/// unmarked, and a reading program then cannot tell it from the text (ISO 14289-1, 7.1).
/// </summary>
internal sealed class ArtifactMarks
{
    private readonly List<(int At, byte[] Mark)> _marks = [];
    private int _depth;
    private int _path = -1;
    private bool _inMargin;

    private ArtifactMarks() { }

    /// <summary>False where something is left that cannot be told apart here.</summary>
    private bool IsWhole { get; set; } = true;

    /// <param name="content">A page's content, unpacked.</param>
    /// <param name="isPicture">Whether the object drawn under this name is a picture.</param>
    /// <returns>The content marked, and whether all of it now is either text or decoration.</returns>
    public static (byte[] Content, bool IsWhole) On(ReadOnlySpan<byte> content, Func<string, bool> isPicture)
    {
        var marks = new ArtifactMarks();
        for (var operators = new ContentOperators(content); operators.Next(); )
            marks.Pass(operators, isPicture);
        return (marks.Applied(content), marks.IsWhole && marks._depth == 0);
    }

    private void Pass(in ContentOperators o, Func<string, bool> isPicture)
    {
        if (o.Is("BDC"u8) || o.Is("BMC"u8))
            Open(o);
        else if (o.Is("EMC"u8))
            _depth--;
        else if (_depth == 0 || _inMargin)
            PassUnmarked(o, isPicture);
    }

    private void Open(in ContentOperators o)
    {
        _depth++;
        // Tagged text within what was taken for a margin: then it is not a margin.
        if (_inMargin && o.Count > 1 && o.Operand(1).IndexOf("/MCID"u8) >= 0)
            IsWhole = false;
    }

    private void PassUnmarked(in ContentOperators o, Func<string, bool> isPicture)
    {
        if (o.Is("BT"u8))
        {
            _marks.Add((o.Start, "/Artifact <</Type /Pagination>> BDC\n"u8.ToArray()));
            _inMargin = true;
        }
        else if (o.Is("ET"u8) && _inMargin)
        {
            _marks.Add((o.End, "\nEMC"u8.ToArray()));
            _inMargin = false;
        }
        else if (o.Is("Do"u8))
        {
            PassObject(o, isPicture);
        }
        else if (o.Is("sh"u8))
        {
            Decorate(o.Start, o.End);
        }
        else
        {
            PassPath(o);
        }
    }

    private void PassObject(in ContentOperators o, Func<string, bool> isPicture)
    {
        if (isPicture(o.Name()))
            Decorate(o.Start, o.End);
        else
            IsWhole = false;
    }

    private void PassPath(in ContentOperators o)
    {
        if ((o.Is("m"u8) || o.Is("re"u8)) && _path < 0)
        {
            _path = o.Start;
        }
        else if (o.Is("n"u8))
        {
            _path = -1;
        }
        else if (Paints(o) && _path >= 0)
        {
            Decorate(_path, o.End);
            _path = -1;
        }
    }

    private void Decorate(int from, int to)
    {
        _marks.Add((from, "/Artifact BMC\n"u8.ToArray()));
        _marks.Add((to, "\nEMC"u8.ToArray()));
    }

    private static bool Paints(in ContentOperators o) =>
        o.Operator.Length <= 2 && "fFBbSs"u8.IndexOf(o.Operator[0]) >= 0 && (o.Operator.Length == 1 || o.Operator[1] == '*');

    private byte[] Applied(ReadOnlySpan<byte> content)
    {
        using var marked = new MemoryStream(content.Length + (_marks.Count * 24));
        var done = 0;
        foreach (var (at, mark) in _marks)
        {
            marked.Write(content[done..at]);
            marked.Write(mark);
            done = at;
        }
        marked.Write(content[done..]);
        return marked.ToArray();
    }
}
