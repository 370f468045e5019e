namespace ExamDocs.UseCases.Tests;

/// <summary>How much to try: a selection by default, all with EXAMDOCS_PROOF=full.</summary>
internal static class Effort
{
    public static bool IsFull { get; } = Environment.GetEnvironmentVariable("EXAMDOCS_PROOF") is "full";

    /// <summary>One in so many, the first among them; all where all is tried.</summary>
    public static IEnumerable<T> OneIn<T>(int many, IEnumerable<T> all) => all.Where((_, n) => IsFull || n % many == 0);
}
