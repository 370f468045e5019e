namespace ExamDocs.Register.Log;

/// <summary>Refuses values that no log entry may have.</summary>
internal static class EntryValue
{
    public static LoggedDocument Given(LoggedDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        return document;
    }

    public static string Hash(string sha256)
    {
        ArgumentNullException.ThrowIfNull(sha256);
        return sha256.Length == 64 && sha256.All(char.IsAsciiHexDigit) && !sha256.Any(char.IsAsciiLetterUpper)
            ? sha256
            : throw new ArgumentException("64 lower-case hexadecimal digits are needed.", nameof(sha256));
    }

    public static int Numbered(int visit)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(visit, 1);
        return visit;
    }

    public static string Stated(string reason)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(reason);
        return CanonicalText.Sound(reason, nameof(reason));
    }
}
