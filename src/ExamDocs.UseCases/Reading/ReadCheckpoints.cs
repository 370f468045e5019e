using ExamDocs.Register.Log;

namespace ExamDocs.UseCases.Reading;

/// <summary>Reads checkpoints that were kept outside the register.</summary>
public static class ReadCheckpoints
{
    /// <param name="files">Files as an issue or an export wrote them.</param>
    /// <returns>The checkpoints, and a sentence for each file that is none.</returns>
    public static (IReadOnlyList<Checkpoint> Checkpoints, IReadOnlyList<string> Faults) From(IReadOnlyList<string> files)
    {
        var (checkpoints, faults) = (new List<Checkpoint>(), new List<string>());
        foreach (var file in files)
        {
            var read = Read(file, out var fault);
            faults.AddRange((read?.Faults ?? []).Append(fault).OfType<string>().Select(f => $"{file}: {f}"));
            if (read is { Checkpoint: { } checkpoint, Faults.Count: 0 })
                checkpoints.Add(checkpoint);
        }
        return (checkpoints, faults);
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
