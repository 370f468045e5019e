using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>Which tags the letters stand in, and what a sign stands for where the tag says so (ISO 32000-1, 14.6 and 14.9.4).</summary>
internal sealed class MarkedContent
{
    /// <summary>What holds within each open tag, those around it included.</summary>
    private readonly Stack<(bool IsText, string? Actual)> _open = new();
    private bool _wasSaid;

    /// <summary>True outside of every tag of the text.</summary>
    public bool IsMargin => !Now.IsText;

    /// <summary>True within a tag that says what its signs stand for.</summary>
    public bool IsSaid => Now.Actual is not null;

    private (bool IsText, string? Actual) Now => _open.TryPeek(out var top) ? top : default;

    /// <returns>False where the operator opens and closes no tag.</returns>
    public bool Pass(in ContentOperators o)
    {
        if (o.Is("BDC"u8))
            Open(o);
        else if (o.Is("BMC"u8))
            _open.Push(Now);
        else if (o.Is("EMC"u8))
            _open.TryPop(out _);
        else
            return false;
        return true;
    }

    /// <summary>What a letter says: the tag's own word once for all the signs in it.</summary>
    public string Said(string letter)
    {
        if (Now.Actual is not { } actual)
            return letter;
        var said = _wasSaid ? "" : actual;
        _wasSaid = true;
        return said;
    }

    private void Open(in ContentOperators o)
    {
        var properties = o.Count > 1 && o.KindOf(1) is PdfToken.DictionaryOpen ? PdfDictionary.Read(o.Operand(1).ToArray()) : null;
        var actual = properties?.Find("ActualText") is { } text ? PdfText.Read(text.Span) : null;
        if (actual is not null)
            _wasSaid = false;
        _open.Push((Now.IsText || properties?.Has("MCID") is true, actual ?? Now.Actual));
    }
}
