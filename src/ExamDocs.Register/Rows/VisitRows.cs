using System.Text.Json;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Rows;

/// <summary>A row of a table that belongs to a visit.</summary>
/// <param name="Table">Its name.</param>
/// <param name="Values">Its columns in their order: texts, whole numbers, bytes and nulls.</param>
internal sealed record VisitRow(string Table, object?[] Values);

/// <summary>
/// A visit taken apart into rows, so that it can be searched by item, person, criterion and day. The rows follow from the record,
/// and a check of the register compares them with those that it gives now.
/// </summary>
internal static class VisitRows
{
    /// <summary>A key longer than this is kept by its hash: a server takes no text of any length into an index.</summary>
    private const int LongestKey = 200;

    /// <summary>The tables whose rows follow from a record, with what they are ordered by.</summary>
    public static readonly IReadOnlyList<(string Table, string Order)> OfRecord =
    [
        ("person", "position"),
        ("item", "position"),
        ("makers_limits", "position"),
        ("examination", "position"),
        ("observation", "examination, position"),
        ("renewal", "position"),
        ("item_key", "position"),
        ("visit_key", "position"),
    ];

    /// <summary>Columns of a visit that follow from its record.</summary>
    public static object?[] Visit(ExaminationRecord record) =>
        [
            record.Visit.Reference,
            record.Visit.Regime,
            record.Visit.Employer?.Name,
            record.Visit.Premises?.Name,
            StoredDay.Of(record.Visit.ExaminedOn),
        ];

    /// <summary>All rows that follow from the record, in the order of <see cref="OfRecord"/>.</summary>
    public static IEnumerable<VisitRow> Of(int visit, ExaminationRecord record) =>
        [
            .. record.People.Select((p, i) => new VisitRow("person", [visit, i, p.Id, p.Name, p.Address, p.Qualifications])),
            .. record.Items.Select((item, i) => Of(visit, i, item)),
            .. record.Limits.Select(
                (l, i) =>
                    new VisitRow(
                        "makers_limits",
                        [visit, i, l.Maker, l.Model, l.PartNumber, l.Source?.Title, l.Source?.Revision, l.Source?.Page]
                    )
            ),
            .. record.Examinations.Select(
                (e, i) =>
                    new VisitRow(
                        "examination",
                        [
                            visit,
                            i,
                            e.Item,
                            e.Examiner,
                            Word(Words.Bases, e.Basis),
                            StoredDay.Of(e.DayAt(record.Visit)),
                            Word(Words.Conclusions, e.Conclusion),
                        ]
                    )
            ),
            .. record.Examinations.SelectMany(
                (e, i) =>
                    e.Observations.Select(
                        (o, j) => new VisitRow("observation", [visit, i, j, o.Criterion, o.StateAsTyped, o.Note, o.Photo])
                    )
            ),
            .. record.Renewals.Select(
                (r, i) => new VisitRow("renewal", [visit, i, r.Item, r.RemovedPart, r.FittedPart, StoredDay.Of(r.DoneOn)])
            ),
            .. Keys(visit, ItemKeys.Of(record)),
            .. Keys(visit, record.Visit.Reference),
        ];

    private static VisitRow Of(int visit, int position, Item item) =>
        new(
            "item",
            [
                visit,
                position,
                item.Id,
                item.Category,
                item.Description,
                item.Maker,
                item.Model,
                item.PartNumber,
                item.Serial,
                item.OwnersMark,
                item.Manufactured?.ToString(),
                item.FirstUsed?.ToString(),
                item.FittedTo,
                Word(Words.Statuses, item.Status),
            ]
        );

    public static IEnumerable<VisitRow> Keys(int visit, IEnumerable<ItemKey> keys) =>
        keys.Select((k, i) => new VisitRow("item_key", [visit, i, k.Item, Stored(k.Key)]));

    /// <summary>The keys by which the versions of a visit find each other; none where its reference has no letter or digit.</summary>
    public static IEnumerable<VisitRow> Keys(int visit, string? reference) =>
        KeysOf(reference).Select((key, i) => new VisitRow("visit_key", [visit, i, key]));

    /// <summary>The keys of a reference, as they are stored and searched by.</summary>
    public static IEnumerable<string> KeysOf(string? reference) => Folded.Keys(reference).Select(Stored);

    /// <summary>A key as it is stored and searched by.</summary>
    public static string Stored(string key) => key.Length <= LongestKey ? key : $"#{Sha256Hex.Of(System.Text.Encoding.UTF8.GetBytes(key))}";

    public static IEnumerable<VisitRow> Outcomes(int visit, IEnumerable<RememberedOutcome> outcomes) =>
        outcomes.Select(
            (o, i) =>
                new VisitRow(
                    "outcome",
                    [
                        visit,
                        i,
                        o.Item,
                        StoredDay.Of(o.ExaminedOn),
                        o.Outcome,
                        StoredDay.Of(o.Until),
                        StoredDay.Of(o.NextBy),
                        Json(o.Codes),
                        Json(o.Parts),
                        o.NeverReleasable ? 1 : 0,
                    ]
                )
        );

    private static string Json(IEnumerable<string> texts) => JsonSerializer.Serialize(texts.Select(StorableText.Of));

    private static string? Word<T>(WordTable<T> words, T? value)
        where T : struct, Enum => value is { } known ? words.WordFor(known) : null;
}
