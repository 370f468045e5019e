using ExamDocs.Register.Model;

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

    /// <summary>A document as an entry names it.</summary>
    internal static LoggedDocument Of(DocumentStatus document) => new(document.Number, document.Kind, document.Items);

    /// <summary>SHA-256 of what the register lists of a document, except whether it has ended.</summary>
    internal static string RowOf(DocumentStatus document) =>
        Sha256Hex.Of(
            new CanonicalObject()
                .Text("job", document.JobKey)
                .Text("folder", document.Folder)
                .Number("pages", document.Pages)
                .Text("outcomes", document.OutcomesJson)
                .Text("sha256", document.Sha256)
                .Text("voidReason", document.VoidReason)
                .Day("issuedOn", document.IssuedOn)
                .Text("language", document.Language)
                .Number("visit", document.Visit)
                .Text("copyOf", document.CopyOf)
                .Text("origin", document.Origin)
                .Objects("replaces", document.Replaces.Select(r => new CanonicalObject().Text("number", r.Number).Text("reason", r.Reason)))
                .Bytes()
        );
}
