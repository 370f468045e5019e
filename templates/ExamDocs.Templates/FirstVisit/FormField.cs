using ExamDocs.Templates.FirstVisit.Wording;

namespace ExamDocs.Templates.FirstVisit;

/// <summary>A line to write on, or boxes to tick.</summary>
/// <param name="Asks">What the workbook calls it: the sheet and the heading, for example Visit/reference.</param>
/// <param name="Line">What it is.</param>
/// <param name="Width">Twelfths of the sheet's width.</param>
public sealed record FormField(string Asks, FormLine Line, int Width)
{
    /// <summary>No item comes out fit, or no report is made, without it.</summary>
    public bool IsNeeded { get; init; }

    /// <summary>Words beside boxes to tick; empty for a line to write on.</summary>
    public IReadOnlyList<string> Choices { get; init; } = [];

    public string Label => FirstVisitPhrases.Current.Label(Line);
}
