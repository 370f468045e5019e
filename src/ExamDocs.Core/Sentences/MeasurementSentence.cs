namespace ExamDocs.Core.Sentences;

/// <summary>
/// A sentence for the case that an examiner argues, without a full stop, with what it rests on.
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
