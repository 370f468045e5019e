using System.Globalization;
using ExamDocs.Intake.Photos;
using ExamDocs.Intake.RuleFiles;
using ExamDocs.Templates;

namespace ExamDocs.UseCases.Reading;

/// <summary>The user's letterhead, or why it cannot be used.</summary>
/// <param name="Letterhead">Null where any part of it has a fault.</param>
/// <param name="Faults">A sentence each: the file, the place, what is wrong, what to type.</param>
public sealed record LetterheadRead(Letterhead? Letterhead, IReadOnlyList<string> Faults);

/// <summary>Reads a letterhead and its logo, and refuses what would print badly.</summary>
public static class ReadLetterhead
{
    /// <summary>Least pixels on a logo's longer side; our own limit: on 52 mm of paper that is about 4 to the millimetre.</summary>
    private const int LeastPixels = 200;

    /// <param name="path">A JSON file: docs/letterhead.schema.json.</param>
    public static LetterheadRead From(string path)
    {
        try
        {
            if (new FileInfo(path) is { Exists: true, Length: > RuleFile.MaxBytes })
                return Refused($"{path}: the file is larger than 256 KiB; a letterhead never needs to be");
            var (file, faults) = RuleFile.Letterhead(File.ReadAllBytes(path));
            return file is null ? Refused([.. faults.Select(f => $"{path}#{f}")]) : With(file, path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Refused(
                e is FileNotFoundException or DirectoryNotFoundException
                    ? $"{path}: there is no such file"
                    : $"{path}: the file cannot be opened: {e.Message}"
            );
        }
    }

    private static LetterheadRead With(LetterheadFile file, string path)
    {
        if (file.Colour is { } colour && Letterhead.ContrastWithWhite(colour) < Letterhead.LeastContrast)
            return Refused(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{path}#/colour: {colour} on white has a contrast of {Letterhead.ContrastWithWhite(colour):0.0} to 1, "
                        + $"and text needs 4.5 (WCAG 2.2, 1.4.3); type a darker colour"
                )
            );
        var logo = file.Logo is null ? null : PreparePhoto.From(Path.GetDirectoryName(Path.GetFullPath(path))!, file.Logo);
        if (logo?.Fault is { } fault)
            return Refused($"{path}#/logo: {fault.Message}. {fault.Hint}");
        if (logo?.Photo is { } small && Math.Max(small.WidthPx, small.HeightPx) < LeastPixels)
            return Refused(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{path}#/logo: the logo is {small.WidthPx} by {small.HeightPx} pixels and would print blurred; use one "
                        + $"of at least {LeastPixels} pixels along its longer side"
                )
            );
        var letterhead = new Letterhead
        {
            Name = file.Name,
            Address = file.Address,
            Contact = file.Contact,
            Telephone = file.Telephone,
            Footer = file.Footer,
            Logo = logo?.Photo is { } photo ? new PhotoPrint(photo.Jpeg, photo.WidthPx, photo.HeightPx) : null,
        };
        return new LetterheadRead(file.Colour is { } chosen ? letterhead with { Colour = chosen } : letterhead, []);
    }

    private static LetterheadRead Refused(params IReadOnlyList<string> faults) => new(null, faults);
}
