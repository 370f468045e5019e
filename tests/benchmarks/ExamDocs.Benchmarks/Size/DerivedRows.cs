using System.Globalization;
using ExamDocs.Intake.Json;
using ExamDocs.Register.Rows;
using Npgsql;

namespace ExamDocs.Benchmarks.Size;

/// <summary>
/// The rows that follow from records and outcomes. One firm's are copied; the server makes those of all others from them, which is
/// quicker than to send them.
/// </summary>
internal static class DerivedRows
{
    public static readonly IReadOnlyList<string> Tables = [.. VisitRows.OfRecord.Select(t => t.Table), "outcome"];

    /// <returns>The statements that make them again.</returns>
    public static IReadOnlyList<string> DropIndexes(string connection)
    {
        using var opened = CopiedTable.Open(connection);
        const string others = """
            SELECT indexname, indexdef FROM pg_indexes WHERE schemaname = 'examdocs'
            AND NOT EXISTS (SELECT 1 FROM pg_constraint WHERE conname = indexname)
            """;
        var found = new List<(string Name, string Statement)>();
        using (var command = new NpgsqlCommand(others, opened))
        using (var reader = command.ExecuteReader())
        {
            while (reader.Read())
                found.Add((reader.GetString(0), reader.GetString(1)));
        }
        foreach (var (name, _) in found)
            Execute(connection, $"DROP INDEX {name}");
        return [.. found.Select(f => f.Statement)];
    }

    /// <summary>The firm's own rows go into a table of their own, and from there to every firm, visit after visit.</summary>
    public static void Multiply(string connection, string table, IReadOnlyList<DecidedOnce> template, int firms)
    {
        var rows = template.SelectMany((once, half) => Rows(once, half).Where(r => r.Table == table)).Select(r => r.Values).ToList();
        if (rows.Count == 0)
            return;
        Execute(connection, $"CREATE UNLOGGED TABLE public.firm_{table} (LIKE {table}); CREATE INDEX ON public.firm_{table} (visit)");
        var columns = Columns(connection, table);
        using (var copied = new CopiedTable(connection, $"public.firm_{table}", string.Join(", ", columns.Select(c => c.Name))))
        {
            foreach (var row in rows)
                copied.Row(row);
            copied.Complete();
        }
        var token = string.Create(CultureInfo.InvariantCulture, $"(10000 + firm)::text");
        var values = columns
            .Skip(1)
            .Select(c => c.IsText ? $"replace(replace({c.Name}, 'K10000', 'K' || {token}), 'k10000', 'k' || {token})" : c.Name);
        Execute(
            connection,
            FormattableString.Invariant(
                $"""
                INSERT INTO {table} SELECT half * {firms} + firm + 1, {string.Join(", ", values)}
                FROM generate_series(0, {TenYears.Visits - 1}) half CROSS JOIN generate_series(0, {firms - 1}) firm
                CROSS JOIN LATERAL (SELECT * FROM public.firm_{table} WHERE visit = half ORDER BY ctid) rows;
                DROP TABLE public.firm_{table}
                """
            )
        );
    }

    public static void Execute(string connection, string statement)
    {
        using var opened = CopiedTable.Open(connection);
        using var command = new NpgsqlCommand(statement, opened) { CommandTimeout = 0 };
        command.ExecuteNonQuery();
    }

    private static IEnumerable<VisitRow> Rows(DecidedOnce once, int half) =>
        VisitRows.Of(half, EmbeddedRecord.Read(once.Record, "generated").Record!).Concat(VisitRows.Outcomes(half, once.Outcomes));

    private static List<(string Name, bool IsText)> Columns(string connection, string table)
    {
        using var opened = CopiedTable.Open(connection);
        using var command = new NpgsqlCommand(
            "SELECT column_name::text, data_type::text FROM information_schema.columns WHERE table_schema = 'examdocs' AND "
                + "table_name = $1 ORDER BY ordinal_position",
            opened
        )
        {
            Parameters = { new() { Value = table } },
        };
        using var reader = command.ExecuteReader();
        var columns = new List<(string, bool)>();
        while (reader.Read())
            columns.Add((reader.GetString(0), reader.GetString(1) == "text"));
        return columns;
    }
}
