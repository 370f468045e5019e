using ExamDocs.Register.Log;

namespace ExamDocs.UseCases.Reading;

/// <summary>Checkpoints that were kept outside the register.</summary>
/// <param name="Checkpoints">Those that could be read.</param>
/// <param name="Faults">A sentence for each file that is not a checkpoint.</param>
public sealed record CheckpointsRead(IReadOnlyList<Checkpoint> Checkpoints, IReadOnlyList<string> Faults)
{
    public bool IsEmpty => Checkpoints.Count == 0;
}

/// <summary>Reads checkpoints that were kept outside the register.</summary>
public static class ReadCheckpoints
{
    /// <param name="files">Files as an issue or an export wrote them.</param>
    public static CheckpointsRead From(IReadOnlyList<string> files)
    {
        var (checkpoints, faults) = (new List<Checkpoint>(), new List<string>());
        foreach (var file in files)
        {
            var read = Read(file, out var fault);
            faults.AddRange((read?.Faults ?? []).Append(fault).OfType<string>().Select(f => $"{file}: {f}"));
            if (read is { Checkpoint: { } checkpoint, Faults.Count: 0 })
                checkpoints.Add(checkpoint);
        }
        return new(checkpoints, faults);
    }

    private static CheckpointReading? Read(string file, out string? fault)
    {
        fault = null;
        try
        {
            if (new FileInfo(file) is { Exists: true, Length: > CheckpointFile.GreatestLength })
                fault = "It is too long to be a checkpoint file.";
            return fault is null ? CheckpointFile.Read(File.ReadAllBytes(file)) : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            fault = e is FileNotFoundException or DirectoryNotFoundException ? "there is no such file" : e.Message;
            return null;
        }
    }
}
