namespace ExamDocs.UseCases;

/// <summary>Writes a file that can be made again at any time: whole or not at all, in place of the one before.</summary>
public static class WholeFile
{
    /// <exception cref="IOException">It cannot be written; the file before is still there.</exception>
    public static void Write(string path, ReadOnlySpan<byte> content)
    {
        var full = Path.GetFullPath(path);
        if (full.StartsWith("/dev/", StringComparison.Ordinal))
        {
            // A device is written to; moving a file onto it would take the device's place.
            File.WriteAllBytes(full, content);
            return;
        }
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        var temporary = $"{full}.{Environment.ProcessId.ToString(System.Globalization.CultureInfo.InvariantCulture)}.part";
        try
        {
            using (var stream = File.Create(temporary))
            {
                stream.Write(content);
                stream.Flush(flushToDisk: true);
            }
            File.Move(temporary, full, overwrite: true);
        }
        finally
        {
            File.Delete(temporary);
        }
    }
}
