namespace ExamDocs.UseCases;

/// <summary>The version that determines, composes and prints.</summary>
internal static class ProgramVersion
{
    public static string Current { get; } = typeof(ProgramVersion).Assembly.GetName().Version!.ToString(3);
}
