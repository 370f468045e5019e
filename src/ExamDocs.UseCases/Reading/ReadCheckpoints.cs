using ExamDocs.Register.Log;
using NodaTime;

namespace ExamDocs.UseCases.Reading;

/// <summary>Checkpoints that were kept outside the register.</summary>
/// <param name="Checkpoints">Those that could be read.</param>
/// <param name="Faults">A sentence for each file that is not a checkpoint.</param>
public sealed record CheckpointsRead(IReadOnlyList<Checkpoint> Checkpoints, IReadOnlyList<string> Faults)
{
    public bool IsEmpty => Checkpoints.Count == 0;
}

/// <summary>The log as it was when an earlier check found all of it sound.</summary>
/// <param name="Checkpoint">Null where no file was named, or it cannot be read.</param>
/// <param name="Day">Of the check, as the file says.</param>
/// <param name="Faults">Why the file cannot be used, in sentences.</param>
public sealed record CheckedBefore(Checkpoint? Checkpoint, LocalDate? Day, IReadOnlyList<string> Faults);

/// <summary>Reads checkpoints that were kept outside the register.</summary>
public static class ReadCheckpoints
{
    /// <param name="files">Files as an issue or an export wrote them.</param>
    public static CheckpointsRead From(IReadOnlyList<string> files)
    {
        var read = files.Select(file => Read(file, CheckpointFile.FormatName)).ToList();
        return new([.. read.Select(r => r.Sound?.Checkpoint).OfType<Checkpoint>()], [.. read.SelectMany(r => r.Faults)]);
    }

    /// <summary>The file that an earlier check wrote, with the day of that check.</summary>
    /// <param name="file">As the user named it; null for none.</param>
    public static CheckedBefore OfCheck(string? file)
    {
        if (file is null)
            return new(null, null, []);
        var (sound, faults) = Read(file, CheckpointFile.CheckedFormatName);
        return new(sound?.Checkpoint, sound?.Day, faults);
    }

    /// <returns>What was read, null where anything is wrong with the file; and what is wrong, in sentences.</returns>
    private static (CheckpointReading? Sound, IReadOnlyList<string> Faults) Read(string file, string format)
    {
        var read = Read(file, format, out var fault);
        IReadOnlyList<string> faults = [.. (read?.Faults ?? []).Append(fault).OfType<string>().Select(f => $"{file}: {f}")];
        return (faults.Count == 0 ? read : null, faults);
    }

    private static CheckpointReading? Read(string file, string format, out string? fault)
    {
        fault = null;
        try
        {
            if (new FileInfo(file) is { Exists: true, Length: > CheckpointFile.GreatestLength })
                fault = "It is too long to be a checkpoint file.";
            return fault is null ? CheckpointFile.Read(File.ReadAllBytes(file), format) : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            fault = e is FileNotFoundException or DirectoryNotFoundException ? "there is no such file" : e.Message;
            return null;
        }
    }
}
