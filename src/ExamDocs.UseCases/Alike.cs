namespace ExamDocs.UseCases;

/// <summary>Whether two names are one: capitals, spaces and points aside.</summary>
internal static class Alike
{
    /// <summary>What counts of a name; nothing for none.</summary>
    public static string Folded(string? name) => string.Concat((name ?? "").Where(char.IsLetterOrDigit)).ToUpperInvariant();

    public static bool Are(string? one, string? other) => string.Equals(Folded(one), Folded(other), StringComparison.Ordinal);

    /// <summary>True also where one of them is not known.</summary>
    public static bool MayBe(string? one, string? other) => one is null || other is null || Are(one, other);
}
