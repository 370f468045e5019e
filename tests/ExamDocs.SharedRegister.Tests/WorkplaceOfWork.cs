using ExamDocs.Register.Storage;
using ExamDocs.Register.Tests;
using ExamDocs.Register.Work;
using NodaTime;

namespace ExamDocs.SharedRegister.Tests;

/// <summary>A register on the tests' server with its list of work.</summary>
public abstract class WorkplaceOfWork : Workplace
{
    internal const string Version = "1.0.0";

    internal static readonly TimeSpan Long = TimeSpan.FromMinutes(5);

    internal SharedWork Work()
    {
        Open().Dispose();
        SharedWork.Make(Database);
        return SharedWork.Open(Database);
    }

    internal static JobToEnqueue AJob(params string[] references) =>
        new("V-1", "{}", new LocalDate(2026, 5, 12)) { References = references, Files = [new("inputs/0/visit.json", [1, 2, 3])] };

    /// <summary>Decides a job as if it had one visit, with so many slices of its one stage and the stage that ends it.</summary>
    internal static void Divide(SharedWork work, ClaimedPart decide, int slices, int visit = 1) =>
        Assert.True(
            work.Divide(
                decide,
                Version,
                new([visit], [0], visit),
                [.. Enumerable.Range(0, slices).Select(n => new JobPart(decide.Part.Job, 1, n, slices)), new(decide.Part.Job, 2, 0, 1)],
                ""
            )
        );

    internal static PartResult Gave(params string[] documents) => new(documents, 0, "[]", "");

    /// <summary>Sets something of the list as only time does.</summary>
    internal void Later(string change)
    {
        using var connection = Connect();
        Assert.True(connection.Execute($"UPDATE examdocs_work.part SET {change}") > 0);
    }
}
