using System.Collections.Concurrent;
using ExamDocs.Proof.Tests.Histories.Making;

namespace ExamDocs.Proof.Tests.Histories;

public sealed class ScratchTests
{
    [Fact]
    public void Stats()
    {
        ConcurrentDictionary<string, int> seen = new();
        var clock = System.Diagnostics.Stopwatch.StartNew();
        Parallel.For(1L, 3001L, seed =>
        {
            using Recalled model = new();
            foreach (var said in Chronicle.Of(seed).SelectMany(run => model.Run(run)).SelectMany(record => record))
            {
                seen.AddOrUpdate(said.Outcome + (said.Unsure ? " unsure" : ""), 1, (_, n) => n + 1);
                if (said.Asked) seen.AddOrUpdate("asked", 1, (_, n) => n + 1);
                if (said.Codes.Contains("W10") && !said.Codes.Any(c => c is "W1" or "W2" or "W3" or "W4" or "W6")) seen.AddOrUpdate("W10 only", 1, (_, n) => n + 1);
                foreach (var c in said.Codes) seen.AddOrUpdate(c, 1, (_, n) => n + 1);
            }
        });
        Assert.Fail(clock.Elapsed + " " + string.Join(", ", seen.OrderBy(s => s.Key, StringComparer.Ordinal).Select(s => $"{s.Key} {s.Value}")));
    }
}
