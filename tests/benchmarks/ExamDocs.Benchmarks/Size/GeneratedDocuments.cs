using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using NodaTime;

namespace ExamDocs.Benchmarks.Size;

/// <summary>A document of the generated register.</summary>
/// <param name="Status">All that is listed of it.</param>
/// <param name="Bytes">What is kept as its bytes: a few octets that are no PDF.</param>
/// <param name="Number">Its number, taken apart.</param>
internal sealed record GeneratedDocument(DocumentStatus Status, byte[] Bytes, DocumentNumber Number);

/// <summary>
/// Numbers and makes the documents of visits: a report, which a second one replaces, a label for each of twenty items and three
/// certificates.
/// </summary>
internal sealed class GeneratedDocuments(int seed)
{
    public const int ForEachVisit = 25;

    private readonly Dictionary<(char Letter, int Year), int> _last = [];

    /// <summary>The last number of each letter and year.</summary>
    public IReadOnlyDictionary<(char Letter, int Year), int> Last => _last;

    /// <param name="visit">Its number in the register.</param>
    /// <param name="items">The ids of its items.</param>
    /// <param name="issued">The day of issue.</param>
    public IReadOnlyList<GeneratedDocument> Of(int visit, IReadOnlyList<string> items, LocalDate issued)
    {
        var first = Made('R', "report", visit, items, issued);
        var second = Made('R', "report", visit, items, issued, first.Status.Number);
        return
        [
            first with
            {
                Status = first.Status with { Ended = DocumentEnd.Replaced, EndedOn = issued, EndedReason = "letterhead" },
            },
            second,
            .. items.Select(i => Made('D', "due-label", visit, [i], issued)),
            .. items.Take(3).Select(i => Made('C', "certificate", visit, [i], issued)),
        ];
    }

    private GeneratedDocument Made(
        char letter,
        string kind,
        int visit,
        IReadOnlyList<string> items,
        LocalDate issued,
        string? replaces = null
    )
    {
        var sequence = _last[(letter, issued.Year)] = _last.GetValueOrDefault((letter, issued.Year)) + 1;
        var number = new DocumentNumber(letter, issued.Year, sequence);
        var bytes = Encoding.ASCII.GetBytes(number.ToString());
        return new(
            new DocumentStatus
            {
                Number = number.ToString(),
                Kind = kind,
                JobKey = Hash(Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{seed}/{number}"))),
                Items = items,
                Folder = "/srv/kit/documents",
                State = DocumentState.Issued,
                Sha256 = Hash(bytes),
                Pages = items.Count == 1 ? 1 : 9,
                OutcomesJson = $"{{{string.Join(',', items.Select(i => $"\"{i}\":\"fit\""))}}}",
                IssuedOn = issued,
                Language = "en",
                Visit = visit,
                Replaces = replaces is null ? [] : [new Replacement(replaces, "letterhead")],
            },
            bytes,
            number
        );
    }

    /// <summary>The entries of the log that a document makes when it comes out.</summary>
    public static IEnumerable<Func<long, LogEntry>> Entries(GeneratedDocument document, IReadOnlyList<GeneratedDocument> ofVisit)
    {
        var status = document.Status;
        yield return at =>
            LogEntry.Issued(at, LoggedDocument.Of(status), status.Sha256!, status.IssuedOn!.Value, LoggedDocument.RowOf(status));
        foreach (var replaced in status.Replaces)
        {
            var other = ofVisit.First(d => string.Equals(d.Status.Number, replaced.Number, StringComparison.Ordinal)).Status;
            yield return at => LogEntry.Replaced(at, LoggedDocument.Of(other), status.Number, replaced.Reason, status.IssuedOn!.Value);
        }
    }

    private static string Hash(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));
}
