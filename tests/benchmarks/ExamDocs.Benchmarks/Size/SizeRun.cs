using System.Diagnostics;
using System.Globalization;
using ExamDocs.Intake.Json;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;
using ExamDocs.UseCases.Commands;
using NodaTime;

namespace ExamDocs.Benchmarks.Size;

/// <summary>Times what one client waits for at a generated register: the first answer, and the median of the warm ones.</summary>
internal static class SizeRun
{
    private const int Rounds = 15;

    private static readonly LocalDate Today = new(2027, 1, 11);

    private static int s_job;

    private static string[] s_only = [];

    /// <param name="address">Of a register that <see cref="GeneratedRegister.Make"/> made; some documents are issued into it.</param>
    /// <param name="only">Words of those to time; none for all.</param>
    public static void All(string address, string[] only)
    {
        s_only = only;
        Print("open to write", n => DocumentRegister.Open(address, Today).Dispose());
        Print("open to read", n => DocumentRegister.OpenToRead(address, Today).Dispose());
        int firms;
        using (var register = DocumentRegister.Open(address, Today))
        {
            firms = register.Visits.Latest / TenYears.Visits;
            Print("what runs left", n => register.Recover());
            Print("a number", n => register.Take(Request()));
            Print("a document: number, bytes, issued", n => register.Publish(register.Take(Request()), [.. "%PDF-1.7"u8], 1, "{}"));
            var ids = Enumerable.Range(0, Rounds + 1).Select(Firm).ToList();
            Print("a document by its number", n => register.Find(FormattableString.Invariant($"D-2026-{1 + ids[n]:000000}")));
            Print("what is known of one item", n => Known(register, ids[n], 1));
            Print("what is known of twenty items", n => Known(register, (ids[n] + (firms / 2)) % firms, TenYears.Items));
        }
        using (var again = DocumentRegister.Open(address, Today))
            Print("in another run, its first document", n => again.Publish(again.Take(Request()), [.. "%PDF-1.7"u8], 1, "{}"), 1);
        Print("find an item by its id", n => FindItems.ByMarking(address, $"{TenYears.TokenOf(Firm(n + 3))}-07", Today), 3);
        Print("find the items of a document", n => FindItems.ByMarking(address, "D-2026-000007", Today), 1);

        int Firm(int n) => (int)((n * 7919L) % firms);
    }

    /// <summary>Lists what falls due, which goes through all items.</summary>
    public static void Due(string address) => Print("due", n => ListDue.In(new DueRequest(address, Today, Today.PlusMonths(12), Today)), 1);

    /// <summary>As a check of a visit asks for it: every visit is compared with the log before it is given.</summary>
    private static void Known(DocumentRegister register, int firm, int items)
    {
        var record = EmbeddedRecord.Read(TenYears.RecordOf(TenYears.TokenOf(firm), TenYears.Visits), "generated").Record!;
        var some = record with { Items = [.. record.Items.Take(items)], Examinations = [.. record.Examinations.Take(items)] };
        var found = register.Visits.AsLogged((_, json) => EmbeddedRecord.Read(json, "register").Record).Touching(some);
        if (found.Count != TenYears.Visits)
            throw new InvalidOperationException(FormattableString.Invariant($"{found.Count} visits were found."));
    }

    private static DocumentRequest Request() =>
        new(
            'R',
            2027,
            "report",
            FormattableString.Invariant($"size/{Environment.ProcessId}/{Interlocked.Increment(ref s_job)}"),
            ["K10000-01"],
            null
        );

    private static void Print(string what, Action<int> act, int rounds = Rounds)
    {
        if (s_only.Length > 0 && !s_only.Any(o => what.Contains(o, StringComparison.Ordinal)))
            return;
        var first = Milliseconds(() => act(0));
        var before = Environment.CpuUsage.TotalTime;
        var warm = Enumerable.Range(1, rounds).Select(n => Milliseconds(() => act(n))).Order().ToList();
        var own = (Environment.CpuUsage.TotalTime - before).TotalMilliseconds / rounds;
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{what, -40} first {first, 9:0.0} ms, then {warm[warm.Count / 2], 9:0.0} ms, own processor {own, 7:0.0} ms"
            )
        );
    }

    private static double Milliseconds(Action act)
    {
        var clock = Stopwatch.StartNew();
        act();
        return clock.Elapsed.TotalMilliseconds;
    }
}
