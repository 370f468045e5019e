using System.Text.Json;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Checking;

/// <summary>Whether documents are as they were issued, and whether the log and the list of documents agree.</summary>
internal sealed class DocumentsCheck(RegisterDatabase database, DocumentRows rows, ContentRows contents, LoggedEntries logged)
{
    /// <summary>Documents that are read with a few statements for all of them.</summary>
    private const int AtOnce = 200;

    private readonly ContentCheck _contents = new(database, contents);
    private readonly DocumentAsLogged _asLogged = new(database);
    private readonly List<(string Number, string Words)> _ofDocuments = [];

    /// <summary>Whether what a document says of its items is compared with what its visit decided.</summary>
    public bool ComparesOutcomes { get; init; }

    /// <summary>Every fault that was found of a document, with its number.</summary>
    public IReadOnlyList<(string Number, string Words)> OfDocuments => _ofDocuments;

    /// <param name="onlyLogged">Only the documents that entries of the log are here of; else every one that is listed.</param>
    public IEnumerable<string> Faults(bool onlyLogged)
    {
        foreach (var lot in onlyLogged ? Logged() : Listed())
        {
            var entries = logged.Take(lot.Select(d => d[0].Value ?? ""));
            var documents = Read([.. lot.Select(d => d[0].Value ?? "")]);
            foreach (var row in lot)
            {
                var number = row[0].Value ?? "";
                if (row.Length == 1)
                {
                    yield return NotListed(number);
                    continue;
                }
                if (!IsOfItsNumber(row))
                    yield return $"{number}: its letter, year and sequence are not those of its number.";
                foreach (var fault in Faults(number, documents, [.. entries[number]]))
                {
                    _ofDocuments.Add((number, fault));
                    yield return fault;
                }
            }
        }
        for (var left = logged.Next("", visits: false, AtOnce); left.Count > 0; left = logged.Next(left[^1], visits: false, AtOnce))
        {
            foreach (var number in left)
                yield return NotListed(number);
        }
    }

    /// <inheritdoc cref="ContentCheck.Missing"/>
    public IEnumerable<string> Missing()
    {
        foreach (var (number, words) in _contents.Missing())
        {
            if (number is not null)
                _ofDocuments.Add((number, words));
            yield return words;
        }
    }

    private static string NotListed(string number) => $"{number} is in the log and not among the documents.";

    /// <summary>Every document that is listed, by number.</summary>
    private IEnumerable<List<RawColumn[]>> Listed()
    {
        for (var (from, lot) = ("", Lot("")); lot.Count > 0; lot = Lot(from))
        {
            yield return lot;
            // Where the index is damaged, what follows may not follow.
            if (string.Equals(lot[^1][0].Value, from, StringComparison.Ordinal) || lot[^1][0].Value is not { } last)
                throw new InvalidDataException("The documents cannot be gone through by their numbers.");
            from = last;
        }
        List<RawColumn[]> Lot(string after) =>
            database.Connection.Raw(
                $"SELECT number, letter, year, sequence FROM document WHERE number > $1 ORDER BY number LIMIT {AtOnce}",
                after
            );
    }

    /// <summary>Every document of which entries are here; one that is not listed has its number alone.</summary>
    private IEnumerable<List<RawColumn[]>> Logged()
    {
        for (var numbers = logged.Next("", visits: false, AtOnce); numbers.Count > 0; numbers = logged.Next("", visits: false, AtOnce))
        {
            var there = database
                .Connection.Raw(
                    $"SELECT number, letter, year, sequence FROM document WHERE number {database.AmongTexts("$1")}",
                    JsonSerializer.Serialize(numbers)
                )
                .ToLookup(r => r[0].Value, StringComparer.Ordinal);
            yield return [.. numbers.Select(n => there[n].FirstOrDefault() ?? [new("number", n)])];
        }
    }

    private static bool IsOfItsNumber(RawColumn[] row) =>
        DocumentNumber.TryParse(row[0].Value ?? "", out var parsed)
        && row.Skip(1)
            .Select(c => c.Value)
            .SequenceEqual([$"{parsed.Letter}", RawRows.Written(parsed.Year), RawRows.Written(parsed.Sequence)], StringComparer.Ordinal);

    /// <returns>Null where a row of one of them cannot be read: then each is read by itself.</returns>
    private Dictionary<string, DocumentStatus>? Read(IReadOnlyList<string> numbers)
    {
        try
        {
            return rows.Find(database, numbers).ToDictionary(d => d.Number, StringComparer.Ordinal);
        }
        catch (RegisterDamagedException)
        {
            return null;
        }
    }

    private List<string> Faults(string number, Dictionary<string, DocumentStatus>? read, List<LogEntry> entries)
    {
        try
        {
            return (read is null ? rows.Find(number) : read.GetValueOrDefault(number)) is { } document
                ?
                [
                    .. _contents.Faults(document),
                    .. _asLogged
                        .Faults(document, entries)
                        .Concat(ComparesOutcomes ? _asLogged.NotDecided(document) : [])
                        .Select(f => $"{number}: {f}."),
                ]
                : [];
        }
        catch (RegisterDamagedException unreadable)
        {
            return [$"{number}: a row of {unreadable.Table} cannot be read."];
        }
    }
}
