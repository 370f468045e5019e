using System.Diagnostics;
using System.Globalization;

namespace ExamDocs.UseCases.Outputs;

/// <summary>
/// A folder of this process alone, readable by its user alone, for files that came from elsewhere and are read like a user's own. It is
/// gone when it is disposed; what a killed process left, the next one takes away.
/// </summary>
internal sealed class TemporaryFolder : IDisposable
{
    private const string Begins = "examdocs-work-";

    public TemporaryFolder()
    {
        var prefix = string.Create(CultureInfo.InvariantCulture, $"{Begins}{Environment.ProcessId}-");
        Path = Directory.CreateTempSubdirectory(prefix).FullName;
    }

    public string Path { get; }

    /// <summary>The full path of what lies under a name.</summary>
    /// <param name="name">Steps divided by /.</param>
    public string At(string name) => System.IO.Path.Combine([Path, .. name.Split('/')]);

    /// <summary>Writes a file that is not there yet.</summary>
    /// <param name="name">Plain: see <see cref="IsPlain"/>.</param>
    /// <param name="content">All of it.</param>
    /// <exception cref="ArgumentException">The name is not plain.</exception>
    /// <exception cref="IOException">There is one already, or it cannot be written.</exception>
    public void Put(string name, byte[] content)
    {
        if (!IsPlain(name))
            throw new ArgumentException("A file of this name is not written.", nameof(name));
        var full = At(name);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(full)!);
        WholeFile.Put(full, stream => stream.Write(content));
    }

    /// <summary>
    /// Whether a name stays within a folder on every system, and means a file there: steps divided by /, none of which is empty, leads
    /// up, or has a character that some system takes for another thing.
    /// </summary>
    public static bool IsPlain(string name) =>
        name.Length <= 500 && name.Split('/') is { Length: <= 20 } steps && Array.TrueForAll(steps, IsPlainStep);

    private static bool IsPlainStep(string step) =>
        step.Length is > 0 and <= 200
        && step is not ("." or "..")
        && step[^1] is not (' ' or '.')
        && !step.Any(c => char.IsControl(c) || c is '\\' or ':' or '*' or '?' or '"' or '<' or '>' or '|');

    /// <summary>Takes away the folders of processes that are gone.</summary>
    public static void RemoveLeftBehind()
    {
        foreach (var folder in Directory.EnumerateDirectories(System.IO.Path.GetTempPath(), $"{Begins}*"))
        {
            var process = System.IO.Path.GetFileName(folder)[Begins.Length..].Split('-')[0];
            if (int.TryParse(process, NumberStyles.None, CultureInfo.InvariantCulture, out var id) && !IsRunning(id))
                Remove(folder);
        }
    }

    private static bool IsRunning(int process)
    {
        try
        {
            using var found = Process.GetProcessById(process);
            return true;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }

    private static void Remove(string folder)
    {
        try
        {
            Directory.Delete(folder, recursive: true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Another user's, or in use: it is left to them.
        }
    }

    public void Dispose() => Remove(Path);
}
