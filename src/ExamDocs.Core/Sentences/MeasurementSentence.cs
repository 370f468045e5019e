namespace ExamDocs.Core.Sentences;

/// <summary>
/// A sentence about measurements for the argument for service, without a full stop, with its source.
/// </summary>
/// <param name="Said">Begins with a small letter.</param>
/// <param name="Source">The publication, the maker's document, or the words common practice, no source.</param>
public sealed record MeasurementSentence(Sentence Said, string Source)
{
    internal MeasurementSentence(Func<SentenceBook, string> say, string source)
        : this(new Sentence(say), source) { }

    /// <summary>In English.</summary>
    public string Text => Said.Text;
}
