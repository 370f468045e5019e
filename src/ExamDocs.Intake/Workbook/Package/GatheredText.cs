using System.Text;
using ExamDocs.Intake.Binding;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>Puts a text together of its pieces. Nearly every text is of one piece, and that is handed on uncopied.</summary>
internal sealed class GatheredText
{
    private readonly StringBuilder _pieces = new();
    private string _first = "";

    public void Clear()
    {
        _first = "";
        _pieces.Clear();
    }

    /// <exception cref="UnreadableWorkbookException">It has become longer than any cell can hold.</exception>
    public void Add(string piece)
    {
        if (_first.Length == 0)
            _first = piece;
        else if (_pieces.Length == 0)
            _pieces.Append(_first).Append(piece);
        else
            _pieces.Append(piece);
        if (Math.Max(_first.Length, _pieces.Length) > WorkbookLimits.TextLength)
            throw PartReader.TooLong();
    }

    public override string ToString() => _pieces.Length == 0 ? _first : _pieces.ToString();
}
