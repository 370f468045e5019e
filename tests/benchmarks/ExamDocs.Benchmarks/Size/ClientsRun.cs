using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;
using NodaTime;

namespace ExamDocs.Benchmarks.Size;

/// <summary>
/// Many clients at once, each with a session of its own, take numbers of one sequence for some seconds. At the end each number has to
/// have been given to one of them, and none left out.
/// </summary>
internal static class ClientsRun
{
    private static readonly LocalDate Today = new(2027, 1, 11);

    public static int All(string address, int clients, int seconds)
    {
        var (numbers, waits) = (new ConcurrentBag<int>(), new ConcurrentBag<double>());
        using var ready = new Barrier(clients + 1);
        var end = long.MaxValue;
        var threads = Enumerable.Range(0, clients).Select(n => new Thread(() => Client(n), 256 * 1024)).ToList();
        threads.ForEach(t => t.Start());
        ready.SignalAndWait();
        var clock = Stopwatch.StartNew();
        Volatile.Write(ref end, Stopwatch.GetTimestamp() + (seconds * Stopwatch.Frequency));
        ready.SignalAndWait();
        threads.ForEach(t => t.Join());
        var taken = numbers.Order().ToList();
        var isWhole = taken.Count == 0 || (taken.Distinct().Count() == taken.Count && taken[^1] - taken[0] + 1 == taken.Count);
        var sorted = waits.Order().ToList();
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{clients} clients: {taken.Count / clock.Elapsed.TotalSeconds:0} numbers a second, a wait {sorted[sorted.Count / 2]:0} ms "
                    + $"(median), {sorted[sorted.Count * 95 / 100]:0} ms (19 of 20); {(isWhole ? "no gap, none twice" : "GAPS OR DOUBLES")}"
            )
        );
        return isWhole ? 0 : 1;

        void Client(int client)
        {
            using var register = DocumentRegister.Open(address, Today);
            ready.SignalAndWait();
            ready.SignalAndWait();
            for (var job = 0; Stopwatch.GetTimestamp() < Volatile.Read(ref end); job++)
            {
                var before = Stopwatch.GetTimestamp();
                var key = string.Create(CultureInfo.InvariantCulture, $"clients/{Environment.ProcessId}/{client}/{job}");
                var pending = register.Take(new DocumentRequest('S', 2027, "check-sheet", key, ["K10000-01"], null));
                waits.Add(Stopwatch.GetElapsedTime(before).TotalMilliseconds);
                numbers.Add(DocumentNumber.TryParse(pending.Number, out var number) ? number.Sequence : 0);
            }
        }
    }
}
