namespace ExamDocs.Documents.ReadingBack;

/// <summary>What of a page was drawn so far. Letters and shapes are counted together, so that it is known which lies above.</summary>
internal sealed class DrawnMarks
{
    private readonly List<PrintedLetter> _letters = [];
    private readonly List<PaintedShape> _shapes = [];
    private int _order;

    public PrintedPage Page => new(_letters, _shapes);

    /// <summary>The number of the letter or shape that is drawn next.</summary>
    public int Next() => _order++;

    public void Add(PrintedLetter letter) => _letters.Add(letter);

    public void Add(PaintedShape shape) => _shapes.Add(shape);
}
