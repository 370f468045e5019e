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
    /// <param name="format">What they are; a file of another format is a fault.</param>
    public static CheckpointsRead From(IReadOnlyList<string> files, string format = CheckpointFile.FormatName)
    {
        var (checkpoints, faults) = (new List<Checkpoint>(), new List<string>());
        foreach (var file in files)
        {
            var read = Read(file, format, out var fault);
            faults.AddRange((read?.Faults ?? []).Append(fault).OfType<string>().Select(f => $"{file}: {f}"));
            if (read is { Checkpoint: { } checkpoint, Faults.Count: 0 })
                checkpoints.Add(checkpoint);
        }
        return new(checkpoints, faults);
    }

    /// <summary>The file that an earlier check wrote, with the day of that check.</summary>
    /// <param name="file">As the user named it; null for none.</param>
    public static CheckedBefore OfCheck(string? file)
    {
        if (file is null)
            return new(null, null, []);
        var read = Read(file, CheckpointFile.CheckedFormatName, out var fault);
        IReadOnlyList<string> faults = [.. (read?.Faults ?? []).Append(fault).OfType<string>().Select(f => $"{file}: {f}")];
        return faults.Count == 0 ? new(read!.Checkpoint, read.Day, faults) : new(null, null, faults);
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
