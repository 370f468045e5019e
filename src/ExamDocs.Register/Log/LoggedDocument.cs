namespace ExamDocs.Register.Log;

/// <summary>The document that a log entry is about.</summary>
public sealed class LoggedDocument
{
    /// <param name="number">For example R-2026-000123.</param>
    /// <param name="kind">For example report.</param>
    /// <param name="items">Ids of the items it is about, in the order of the document.</param>
    /// <exception cref="ArgumentException">No number of a document, no kind, or text with half a character.</exception>
    public LoggedDocument(string number, string kind, IReadOnlyList<string> items)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(kind);
        ArgumentNullException.ThrowIfNull(items);
        if (!DocumentNumber.TryParse(number, out _))
            throw new ArgumentException("A document number is needed.", nameof(number));
        (Number, Kind) = (number, CanonicalText.Sound(kind, nameof(kind)));
        Items = [.. items.Select(item => CanonicalText.Sound(item, nameof(items)))];
    }

    public string Number { get; }

    public string Kind { get; }

    public IReadOnlyList<string> Items { get; }
}
