using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Templates.Enclosures;

/// <summary>A document in a folder that is sent.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Kind">A kind of <see cref="DocumentTypes"/>.</param>
/// <param name="IsCopy">Whether it is the copy of a report for the enforcing authority.</param>
/// <param name="Items">Ids of its items, in the order printed.</param>
/// <param name="Pages">Number of pages.</param>
/// <param name="Sha256">Of its file; lower-case hexadecimal.</param>
public sealed record EnclosedDocument(string Number, string Kind, bool IsCopy, IReadOnlyList<string> Items, int Pages, string Sha256)
{
    private const int ShortDigits = 16;

    /// <summary>The first sixteen digits in groups of four: enough to tell files apart by eye, not to prove anything.</summary>
    public string ShortSha256 => string.Join(' ', Sha256.Chunk(4).Take(ShortDigits / 4).Select(g => new string(g)));
}

/// <summary>
/// The list on top of a folder that is sent: for whom, from whom, and which documents are in it. It is no document of the register and has
/// no number: it says nothing of an item that is not in a document itself.
/// </summary>
public sealed class EnclosuresModel
{
    /// <param name="visit">The visit that all of them are of.</param>
    /// <param name="to">Whom the folder is for.</param>
    /// <param name="documents">What is in it, at least one.</param>
    /// <param name="on">The day on which it is put together.</param>
    /// <param name="softwareVersion">Version of the software that printed it.</param>
    /// <param name="letterhead">The issuer's; null for none.</param>
    /// <exception cref="ArgumentException">There is no document.</exception>
    public EnclosuresModel(
        DeterminedVisit visit,
        Party to,
        IReadOnlyList<EnclosedDocument> documents,
        LocalDate on,
        string softwareVersion,
        Letterhead? letterhead
    )
    {
        ArgumentNullException.ThrowIfNull(visit);
        if (documents.Count == 0)
            throw new ArgumentException("a folder that is sent has a document", nameof(documents));
        (Visit, To, Documents, On, SoftwareVersion, Letterhead) = (visit.Record.Visit, to, documents, on, softwareVersion, letterhead);
        From = visit.Items.Select(i => visit.Person(i.Examination?.Author ?? i.Examination?.Examiner)).FirstOrDefault(p => p is not null);
        var reported = documents
            .Where(d => string.Equals(d.Kind, DocumentTypes.Report.Kind, StringComparison.Ordinal))
            .SelectMany(d => d.Items)
            .ToHashSet(StringComparer.Ordinal);
        NotReported = [.. visit.Everything.Select(i => i.Item.Id ?? "").Where(i => !reported.Contains(i)).Distinct(StringComparer.Ordinal)];
    }

    public Visit Visit { get; }

    public Party To { get; }

    /// <summary>Who made the first of the reports; null where the record names nobody.</summary>
    public Person? From { get; }

    public IReadOnlyList<EnclosedDocument> Documents { get; }

    public LocalDate On { get; }

    public string SoftwareVersion { get; }

    public Letterhead? Letterhead { get; }

    /// <summary>Ids of the visit's items of which no report is in the folder.</summary>
    public IReadOnlyList<string> NotReported { get; }

    public int Pages => Documents.Sum(d => d.Pages);
}
