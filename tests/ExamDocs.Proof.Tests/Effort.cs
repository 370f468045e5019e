namespace ExamDocs.Proof.Tests;

/// <summary>How much to try: little by default, all with EXAMDOCS_PROOF=full, a number of records with EXAMDOCS_PROOF=number.</summary>
internal static class Effort
{
    private static readonly string Asked = Environment.GetEnvironmentVariable("EXAMDOCS_PROOF") ?? "";

    public static bool Full => Asked == "full";

    private static int? Number => int.TryParse(Asked, out var number) ? number : null;

    public static int Of(int little, int all) => Number ?? (Full ? all : little);
}
