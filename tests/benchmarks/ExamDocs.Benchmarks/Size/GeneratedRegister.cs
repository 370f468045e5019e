using System.Diagnostics;
using System.Globalization;
using System.Text;
using ExamDocs.Intake.Json;
using ExamDocs.Register;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;
using Npgsql;

namespace ExamDocs.Benchmarks.Size;

/// <summary>
/// Makes a register of many documents on a server, with the rows and the log that the program itself would have written, many times
/// faster. The user of the address has to be a superuser, so that references and guards can be left aside meanwhile.
/// </summary>
internal static class GeneratedRegister
{
    private const int Seed = 20261130;

    private const string Document =
        "number, letter, year, sequence, kind, job_key, folder, state, sha256, pages, outcomes, issued_on, language, visit, ended, "
        + "ended_on, ended_reason";

    /// <param name="address">Of an empty database.</param>
    /// <param name="documents">How many; rounded up to whole firms of twenty visits.</param>
    public static void Make(string address, int documents)
    {
        var clock = Stopwatch.StartNew();
        var template = TenYears.Decided();
        Expect(template);
        string identity;
        using (var made = DocumentRegister.Create(address, TenYears.DayOf(0)))
            identity = made.Identity;
        var perFirm = TenYears.Visits * GeneratedDocuments.ForEachVisit;
        var firms = (documents + perFirm - 1) / perFirm;
        var connection = PostgresAddress.Read(address).ToString();
        var indexes = DerivedRows.DropIndexes(connection);
        Task[] derived = [.. DerivedRows.Tables.Select(t => Task.Run(() => DerivedRows.Multiply(connection, t, template, firms)))];
        var entries = Copy(connection, template, firms, identity);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{clock.Elapsed.TotalSeconds:0} s: {entries} entries"));
        Task.WaitAll(derived);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{clock.Elapsed.TotalSeconds:0} s: rows of visits"));
        DerivedRows.Execute(connection, FormattableString.Invariant($"UPDATE register SET log_size = {entries}"));
        using (var opened = CopiedTable.Open(connection))
            new LogRows(opened).MakeNodes();
        Parallel.ForEach(indexes, new ParallelOptions { MaxDegreeOfParallelism = 4 }, i => DerivedRows.Execute(connection, i));
        DerivedRows.Execute(connection, "VACUUM ANALYZE");
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{clock.Elapsed.TotalSeconds:0} s: indexes"));
    }

    /// <summary>What is put in the token's place has to give the very rows that the program takes from the record.</summary>
    private static void Expect(IReadOnlyList<DecidedOnce> template)
    {
        foreach (var firm in (int[])[1, 20_000])
        {
            var record = EmbeddedRecord.Read(Renamed(template[^1].Record, firm), "generated").Record!;
            var expected = VisitRows.Of(1, record).ToList();
            var renamed = VisitRows
                .Of(1, EmbeddedRecord.Read(template[^1].Record, "generated").Record!)
                .Select(r => r.Values.Select(v => v is string text ? Renamed(text, firm) : v).ToArray());
            if (!expected.Select(e => e.Values).Zip(renamed, (e, r) => e.SequenceEqual(r)).All(same => same))
                throw new InvalidOperationException("Another token gives other rows.");
        }
    }

    public static string Renamed(string text, int firm)
    {
        var token = TenYears.TokenOf(firm);
        return text.Replace(TenYears.Token, token, StringComparison.Ordinal)
            .Replace(TenYears.Token.ToLowerInvariant(), token.ToLowerInvariant(), StringComparison.Ordinal);
    }

    private static byte[] Renamed(byte[] record, int firm)
    {
        var (renamed, token) = (record.ToArray(), Encoding.ASCII.GetBytes(TenYears.TokenOf(firm)));
        var old = Encoding.ASCII.GetBytes(TenYears.Token);
        for (var at = 0; renamed.AsSpan(at).IndexOf(old) is >= 0 and var next; at += next + token.Length)
            token.CopyTo(renamed, at + next);
        return renamed;
    }

    private static long Copy(string connection, IReadOnlyList<DecidedOnce> template, int firms, string identity)
    {
        DerivedRows.Execute(connection, "DELETE FROM checkpoint; DELETE FROM log");
        using var visits = new CopiedTable(
            connection,
            "visit",
            "visit, sha256, reference, regime, employer, premises, examined_on, stored_on, record, seen, version, as_of"
        );
        using var documents = new CopiedTable(connection, "document", Document);
        using var items = new CopiedTable(connection, "document_item", "number, position, item");
        using var contents = new CopiedTable(connection, "content", "number, bytes");
        using var replacements = new CopiedTable(connection, "replacement", "number, replaced, reason");
        using var log = new CopiedLog(connection);
        var generated = new GeneratedDocuments(Seed);
        log.Append(at => LogEntry.Of(at, identity, TenYears.DayOf(0)));
        for (var (half, number) = (0, 1); half < TenYears.Visits; half++)
        {
            for (var firm = 0; firm < firms; firm++, number++)
                Visit(template[half], half, firm, number);
        }
        foreach (var table in (CopiedTable[])[visits, documents, items, contents, replacements])
            table.Complete();
        log.Complete();
        using var counters = new CopiedTable(connection, "counter", "letter, year, last");
        foreach (var ((letter, year), last) in generated.Last)
            counters.Row($"{letter}", year, last);
        counters.Complete();
        return log.Size;

        void Visit(DecidedOnce once, int half, int firm, int number)
        {
            var record = Renamed(once.Record, firm);
            var (sha256, day) = (Sha256Hex.Of(record), TenYears.DayOf(half));
            var (examined, stored, stored1) = (StoredDay.Of(day), StoredDay.Of(day.PlusDays(1)), once.Stored);
            visits.Row(
                number,
                sha256,
                Renamed(stored1.Reference!, firm),
                stored1.Regime,
                Renamed(stored1.Employer!, firm),
                $"Yard {TenYears.TokenOf(firm)}",
                examined,
                stored,
                record,
                number,
                stored1.Version,
                StoredDay.Of(stored1.AsOf)
            );
            IReadOnlyList<RememberedOutcome> outcomes = [.. once.Outcomes.Select(o => o with { Item = Renamed(o.Item!, firm) })];
            log.Append(at =>
                LogEntry.Remembered(
                    at,
                    new LoggedVisit(number, sha256)
                    {
                        Seen = number,
                        Version = stored1.Version,
                        AsOf = stored1.AsOf,
                        Outcomes = outcomes,
                    },
                    day.PlusDays(1)
                )
            );
            var made = generated.Of(number, [.. outcomes.Select(o => o.Item!)], day.PlusDays(1));
            foreach (var document in made)
            {
                Write(document);
                foreach (var entry in GeneratedDocuments.Entries(document, made))
                    log.Append(entry);
            }
        }

        void Write(GeneratedDocument document)
        {
            var (s, n) = (document.Status, document.Number);
            documents.Row(
                s.Number,
                $"{n.Letter}",
                n.Year,
                n.Sequence,
                s.Kind,
                s.JobKey,
                s.Folder,
                "issued",
                s.Sha256,
                s.Pages,
                s.OutcomesJson,
                StoredDay.Of(s.IssuedOn),
                s.Language,
                s.Visit,
                s.Ended is { } ended ? DocumentWords.Of(ended) : null,
                StoredDay.Of(s.EndedOn),
                s.EndedReason
            );
            for (var position = 0; position < s.Items.Count; position++)
                items.Row(s.Number, position, s.Items[position]);
            contents.Row(s.Number, document.Bytes);
            foreach (var replaced in s.Replaces)
                replacements.Row(s.Number, replaced.Number, replaced.Reason);
        }
    }
}
