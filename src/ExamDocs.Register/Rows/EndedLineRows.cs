using System.Data.Common;
using ExamDocs.Core.Identity;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Rows;

/// <summary>Reads what later visits ended of what documents say.</summary>
internal sealed class EndedLineRows(DbConnection connection, DocumentRows documents)
{
    /// <summary>What was ended of what the documents of a visit say, in the order in which it was.</summary>
    public IReadOnlyList<(LineEnd End, int ByVisit)> Of(int visit) =>
        connection.Rows(
            row => (new LineEnd(row.GetInt32(0), row.GetString(1), StoredDay.Read(row.GetString(2)), row.GetString(3)), row.GetInt32(4)),
            "SELECT visit, item, ended_on, reason, by_visit FROM line_end WHERE visit = $1 ORDER BY by_visit, position",
            visit
        );

    /// <summary>The lines of a document that were ended, in the order in which they were.</summary>
    public IReadOnlyList<EndedLine> In(string number) =>
        connection
            .Rows(
                row =>
                    (
                        Item: row.GetString(0),
                        On: StoredDay.Read(row.GetString(1)),
                        Why: row.GetString(2),
                        By: row.GetInt32(3),
                        Visit: row.Integer(4)
                    ),
                """
                SELECT ended_line.item, ended_line.ended_on, ended_line.reason, ended_line.by_visit, document.visit
                FROM ended_line JOIN document ON document.number = ended_line.number
                WHERE ended_line.number = $1 ORDER BY ended_line.position
                """,
                number
            )
            .ConvertAll(line => new EndedLine(line.Item, line.On, line.Why, line.By, NoticesOf(line.By, line.Item, line.Visit)));

    /// <summary>Labels and notices that a visit gave about an item, which it may have under another id than the document.</summary>
    private List<string> NoticesOf(int byVisit, string item, int? visit)
    {
        var notices = documents.Of(byVisit).Where(d => d.Kind is "quarantine-label" or "notice").ToList();
        var alike = notices.Where(d => d.Items.Any(i => Folded.Same(i, item))).ToList();
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
            alike = [.. notices.Where(d => d.Items.Any(i => others.Contains(i, StringComparer.Ordinal)))];
        }
        return alike.ConvertAll(d => d.Number);
    }
}
