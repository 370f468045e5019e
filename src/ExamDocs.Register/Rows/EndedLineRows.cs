using System.Data.Common;
using ExamDocs.Core.Identity;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Rows;

/// <summary>Reads what later visits ended of what documents say.</summary>
internal sealed class EndedLineRows(DbConnection connection)
{
    /// <summary>What was ended of what the documents of a visit say, in the order in which it was.</summary>
    public IReadOnlyList<(LineEnd End, int ByVisit)> Of(int visit) =>
        connection.Rows(
            row => (new LineEnd(row.GetInt32(0), row.GetString(1), StoredDay.Read(row.GetString(2)), row.GetString(3)), row.GetInt32(4)),
            "SELECT visit, item, ended_on, reason, by_visit FROM line_end WHERE visit = $1 ORDER BY by_visit, position",
            visit
        );

    /// <summary>The lines of a document that were ended, in the order in which they were.</summary>
    public IReadOnlyList<EndedLine> In(string number) => [.. In("= $1", [number])[number]];

    /// <summary>The same of many documents, by their numbers.</summary>
    /// <param name="these">The condition that their numbers meet.</param>
    /// <param name="values">The values in it.</param>
    public ILookup<string, EndedLine> In(string these, object[] values) =>
        connection
            .Rows(
                row =>
                    (
                        Number: row.GetString(5),
                        Item: row.GetString(0),
                        On: StoredDay.Read(row.GetString(1)),
                        Why: row.GetString(2),
                        By: row.GetInt32(3),
                        Visit: row.Integer(4)
                    ),
                $"""
                SELECT ended_line.item, ended_line.ended_on, ended_line.reason, ended_line.by_visit, document.visit, document.number
                FROM ended_line JOIN document ON document.number = ended_line.number
                WHERE ended_line.number {these} ORDER BY ended_line.number, ended_line.position
                """,
                values
            )
            .ToLookup(
                line => line.Number,
                line => new EndedLine(line.Item, line.On, line.Why, line.By, NoticesOf(line.By, line.Item, line.Visit)),
                StringComparer.Ordinal
            );

    /// <summary>Labels and notices that a visit gave about an item, which it may have under another id than the document.</summary>
    /// <remarks>Read without their own ended lines: two visits may each have ended a line of the other.</remarks>
    private List<string> NoticesOf(int byVisit, string item, int? visit)
    {
        var notices = connection
            .Rows(
                row => (Number: row.GetString(0), Item: row.GetString(1)),
                """
                SELECT document.number, document_item.item FROM document JOIN document_item ON document_item.number = document.number
                WHERE document.state = 'issued' AND document.visit = $1 AND document.kind IN ('quarantine-label', 'notice')
                ORDER BY document.letter, document.year, document.sequence
                """,
                byVisit
            )
            .ToList();
        var alike = notices.FindAll(n => Folded.Same(n.Item, item));
        if (alike.Count == 0 && visit is { } ended && notices.Count > 0)
        {
            var others = connection.Rows(
                row => row.GetString(0),
                "SELECT DISTINCT b.item FROM item_key a JOIN item_key b ON b.key = a.key AND b.visit = $1 WHERE a.visit = $2 "
                    + "AND a.item = $3",
                byVisit,
                ended,
                item
            );
            alike = notices.FindAll(n => others.Contains(n.Item, StringComparer.Ordinal));
        }
        return [.. alike.Select(n => n.Number).Distinct(StringComparer.Ordinal)];
    }
}
