namespace ExamDocs.UseCases.Commands;

/// <summary>Writes a file that must not take the place of another: whole or not at all.</summary>
internal static class NewFile
{
    /// <summary>Why a file of this name cannot be written; null where it can.</summary>
    public static string? WhyNot(string path) =>
        Path.Exists(path) ? $"{path} is there already, and nothing is written over it: give another name, or move it away." : null;

    /// <exception cref="IOException">It cannot be written, or there is one of that name by now, which is as it was.</exception>
    public static void Write(string path, byte[] content)
    {
        var full = Path.GetFullPath(path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        var temporary = $"{full}.{Guid.NewGuid():N}.part";
        try
        {
            using (var stream = new FileStream(temporary, FileMode.CreateNew, FileAccess.Write))
            {
                stream.Write(content);
                stream.Flush(flushToDisk: true);
            }
            File.Move(temporary, full, overwrite: false);
        }
        finally
        {
            File.Delete(temporary);
        }
    }
}
