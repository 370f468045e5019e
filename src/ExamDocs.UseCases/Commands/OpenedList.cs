using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.OwnList.Mapping;
using ExamDocs.Intake.OwnList.Sheets;
using ExamDocs.Intake.OwnList.Taking;
using ExamDocs.Intake.Workbook;
using ExamDocs.UseCases.Reading;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>A firm's own list of kit, opened, with what is settled so far about how it is read. The file is only read.</summary>
public sealed class OpenedList
{
    /// <summary>Common practice, no source: a larger list is no workbook to type in.</summary>
    private const int MostRows = 10_000;

    private OpenedList(ListMapping mapping) => Mapping = mapping;

    /// <summary>What each column and word is taken for.</summary>
    public ListMapping Mapping { get; }

    /// <summary>What has to be settled before the list can be taken, a sentence each.</summary>
    public IReadOnlyList<string> ToSettle => ListToSettle.Necessary(Mapping);

    /// <summary>Whether a file that was brought in as a visit may be a list: a workbook or a table of which no sheet is known.</summary>
    public static bool MayBe(string path, KnownRules rules) => ReadInput.From(path, rules).HasNoKnownSheet;

    /// <param name="path">A workbook or a file of separated values.</param>
    /// <param name="settled">What was settled before; null for nothing.</param>
    /// <param name="rules">The categories there are.</param>
    /// <returns>The list, or why it is none.</returns>
    public static (OpenedList? List, string? Refused) Open(string path, ListMap? settled, KnownRules rules)
    {
        var book = ReadList.From(path);
        return book.Unreadable is { } why ? (null, $"unreadable: {why}")
            : book.FilledRows > MostRows ? (null, "it has more than 10,000 rows; give it in parts")
            : (new OpenedList(new ListMapping(book, rules, settled)), null);
    }

    /// <summary>Takes the list as it is settled; only where nothing is left to settle.</summary>
    /// <param name="asOf">The day taken for what the list has as out of use without a day.</param>
    public AdoptedList Take(LocalDate asOf)
    {
        var taken = TakeList.Of(Mapping, asOf);
        return new AdoptedList(
            taken.Record,
            Count(taken.Record),
            taken.LeftOut,
            [
                .. Mapping.UnknownHeadings.Select(h => $"the map names a column '{h}' that the list does not have"),
                .. ListToSettle.Other(Mapping),
                .. taken.Remarks,
            ]
        );
    }

    /// <summary>A capture workbook with the items of a list, to record a visit in.</summary>
    public byte[] Workbook(AdoptedList adopted)
    {
        ArgumentNullException.ThrowIfNull(adopted);
        using var buffer = new MemoryStream();
        CaptureWorkbook.Write(buffer, [], adopted.Record, forNextVisit: true, Mapping.Rules);
        return buffer.ToArray();
    }

    private static List<(string Kind, int Items)> Count(ExaminationRecord record) =>
        [
            .. record
                .Items.GroupBy(i => i.Category ?? "of no known kind", StringComparer.Ordinal)
                .Select(g => (g.Key, g.Count()))
                .OrderByDescending(g => g.Item2)
                .ThenBy(g => g.Key, StringComparer.Ordinal),
        ];
}

/// <summary>What became of a firm's own list.</summary>
/// <param name="Record">Its items, and what it has as out of use as earlier withdrawals. Nothing in it is examined.</param>
/// <param name="Kinds">How many items of each kind, most first; the kind's id, or the list's own word for an unknown one.</param>
/// <param name="LeftOut">Every filled row that became no item.</param>
/// <param name="Remarks">What has to be known about the items, a sentence each.</param>
public sealed record AdoptedList(
    ExaminationRecord Record,
    IReadOnlyList<(string Kind, int Items)> Kinds,
    IReadOnlyList<RowLeftOut> LeftOut,
    IReadOnlyList<string> Remarks
);
