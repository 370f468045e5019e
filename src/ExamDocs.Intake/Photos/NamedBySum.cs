using System.Text.RegularExpressions;

namespace ExamDocs.Intake.Photos;

/// <summary>
/// The form for the yard names each photo by the SHA-256 of its file, sha256-….jpg, and so does a visit recorded on screen, so that an
/// exchanged or damaged one is found wherever the record is read.
/// </summary>
internal static partial class NamedBySum
{
    /// <exception cref="PhotoRefusedException">The name says another sum than the file has.</exception>
    public static void Require(string path, byte[] file)
    {
        if (Name().Match(Path.GetFileName(path)) is { Success: true } match && !Is(match.Groups["sum"].Value, file))
            throw new PhotoRefusedException(PhotoRules.NotTheOneTaken, $"is not the picture that its name stands for");
    }

    /// <summary>Whether a file of this name is named by its sum.</summary>
    public static bool Names(string fileName) => Name().IsMatch(fileName);

    private static bool Is(string sum, byte[] file) => string.Equals(sum, PhotoFile.Sha256(file), StringComparison.OrdinalIgnoreCase);

    [GeneratedRegex(@"\Asha256-(?<sum>[0-9a-f]{64})\.(?:jpg|png)\z", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Name();
}
