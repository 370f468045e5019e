using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Outputs;

namespace ExamDocs.UseCases.Company.Packing;

/// <summary>
/// Names of files that come from elsewhere to be enclosed. The name says what a file is about, so one that no folder can take as it is
/// is refused, and never altered.
/// </summary>
public static class EvidenceName
{
    /// <summary>With the dot, in small letters.</summary>
    public static IReadOnlyList<string> Endings { get; } = [".pdf", ".jpg", ".jpeg", ".png"];

    /// <returns>What is wrong with the first name that cannot be taken; null where all can.</returns>
    public static Message? Objection(IReadOnlyList<string> names)
    {
        ArgumentNullException.ThrowIfNull(names);
        var taken = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        return names.Select(ObjectionTo).FirstOrDefault(o => o is not null)
            ?? names.Where(n => !taken.Add(n)).Select(n => (Message)$"two files are called '{n}': rename one of them").FirstOrDefault();
    }

    private static Message? ObjectionTo(string name)
    {
        var part = SafeFileName.Part(name);
        var shown = part.Length == 0 ? "?" : SafeFileName.Cut(part, SafeFileName.MostCharacters, SafeFileName.MostBytes);
        if (
            !SafeFileName.IsPart(name)
            || !SafeFileName.Fits(name)
            || !string.Equals(SafeFileName.Whole(part), part, StringComparison.Ordinal)
        )
            return $"a file called '{shown}' has a name that not every system can take: rename it, for example 'ex1 certificate.pdf'";
        return Endings.Contains(Path.GetExtension(name), StringComparer.OrdinalIgnoreCase)
            ? null
            : (Message)$"'{shown}' cannot be enclosed: only files that end with .pdf, .jpg, .jpeg or .png can";
    }
}
