using System.Diagnostics;
using System.Text.RegularExpressions;

namespace ExamDocs.UseCases.Tests.Issuing;

/// <summary>Reads printed files with other people's programs.</summary>
internal static class Pdf
{
    /// <summary>The text of a file by pdftotext (poppler), every run of blanks as one.</summary>
    public static string Text(string file) =>
        Regex.Replace(Run("pdftotext", file, "-").Output, @"\s+", " ", RegexOptions.None, TimeSpan.FromSeconds(5));

    /// <summary>
    /// Without blanks and hyphens: pdftotext joins a word parted at the end of a line, and guesses blanks from distances.
    /// </summary>
    public static string Squeeze(string text) => Regex.Replace(text, @"[\s\-]", "", RegexOptions.None, TimeSpan.FromSeconds(5));

    /// <summary>What qpdf --check has against a file; null where it finds it sound.</summary>
    public static string? Objection(string file)
    {
        var (code, output) = Run("qpdf", "--check", file);
        return code == 0 ? null : output;
    }

    /// <summary>The pictures of a file by pdfimages (poppler), as it stores them.</summary>
    public static IReadOnlyList<byte[]> Images(string file)
    {
        var folder = Directory.CreateTempSubdirectory("examdocs-images-");
        try
        {
            Run("pdfimages", "-all", file, Path.Combine(folder.FullName, "i"));
            return [.. folder.EnumerateFiles().OrderBy(f => f.Name, StringComparer.Ordinal).Select(f => File.ReadAllBytes(f.FullName))];
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static (int Code, string Output) Run(string program, params string[] arguments)
    {
        using var process = Process.Start(
            new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true }
        )!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output + (process.ExitCode == 0 ? "" : errors.Result));
    }
}
