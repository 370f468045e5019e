namespace ExamDocs.Proof.Tests;

/// <summary>
/// How much to try: little by default, all with EXAMDOCS_PROOF=full, a number of records with EXAMDOCS_PROOF=number; of histories,
/// those that come after the first EXAMDOCS_PROOF_AFTER, so that a long proof can be run in slices.
/// </summary>
internal static class Effort
{
    private static readonly string Asked = Environment.GetEnvironmentVariable("EXAMDOCS_PROOF") ?? "";

    public static bool Full => Asked == "full";

    /// <summary>How many to pass over first.</summary>
    public static int After => int.TryParse(Environment.GetEnvironmentVariable("EXAMDOCS_PROOF_AFTER"), out var after) ? after : 0;

    private static int? Number => int.TryParse(Asked, out var number) ? number : null;

    public static int Of(int little, int all) => Number ?? (Full ? all : little);
}
