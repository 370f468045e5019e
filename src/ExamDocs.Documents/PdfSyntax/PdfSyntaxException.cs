using ExamDocs.Documents.Browsing;

namespace ExamDocs.Documents.PdfSyntax;

/// <summary>The file is not as the browser is known to write one: it is not finished, and nothing is made of it.</summary>
public sealed class PdfSyntaxException(string why) : PrintException($"the printed file cannot be finished: {why}")
{
    /// <summary>What is wrong with it, a few words.</summary>
    public string Why => why;
}
