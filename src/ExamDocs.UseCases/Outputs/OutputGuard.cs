using ExamDocs.Register.Files;

namespace ExamDocs.UseCases.Outputs;

/// <summary>
/// Every file that a user names to be written goes through here: nothing is ever overwritten. A name that is taken is refused before the
/// work begins, and once more in the moment of writing; with <see cref="Replace"/> an ordinary file gives way, and an input of the run, an
/// issued document and a register never do.
/// </summary>
public sealed record OutputGuard
{
    /// <summary>Nothing that is there gives way.</summary>
    public static OutputGuard NewFilesOnly { get; } = new();

    /// <summary>Whether an ordinary file that is there is to be replaced.</summary>
    public bool Replace { get; init; }

    /// <summary>Files and folders that the run reads, as the user named them.</summary>
    public IReadOnlyList<string> Inputs { get; init; } = [];

    /// <summary>The register that the run works with, there or not; null for none.</summary>
    public string? RegisterPath { get; init; }

    /// <summary>The same for a run that reads these too and works with this register.</summary>
    public OutputGuard For(IEnumerable<string?> inputs, string? register) =>
        this with
        {
            Inputs = [.. Inputs, .. inputs.OfType<string>()],
            RegisterPath = register ?? RegisterPath,
        };

    /// <summary>Looks at what has the names of outputs, and whether their folders can be written to, before the work begins.</summary>
    /// <param name="files">As the user named them; null for one that was not asked for.</param>
    /// <exception cref="OutputRefusedException">One of them cannot be written.</exception>
    public void Require(params IEnumerable<string?> files)
    {
        var names = files.OfType<string>().ToList();
        if ((names.Select(Objection).FirstOrDefault(o => o is not null) ?? Twice(names)) is { } why)
            throw new OutputRefusedException(why);
    }

    /// <summary>Writes a file whole or not at all; a device is written to.</summary>
    /// <exception cref="OutputRefusedException">Something has its name, and may not be replaced.</exception>
    /// <exception cref="IOException">It cannot be written; what was there before still is.</exception>
    public void Write(string file, ReadOnlyMemory<byte> content)
    {
        var full = Path.GetFullPath(file);
        if (WholeFile.IsDevice(full))
            File.WriteAllBytes(full, content.Span);
        else
            Place(file, replace => WholeFile.Write(full, content, replace));
    }

    /// <summary>The same for a file that something else makes, at a path that it is given.</summary>
    /// <inheritdoc cref="Write(string, ReadOnlyMemory{byte})"/>
    public void Write(string file, Action<string> make)
    {
        var full = Path.GetFullPath(file);
        if (WholeFile.IsDevice(full))
            throw new OutputRefusedException($"{file} is a device: name a file");
        Place(file, replace => WholeFile.Write(full, make, replace));
    }

    /// <summary>The same for a file that is written bit by bit, and so need not be held in memory.</summary>
    /// <inheritdoc cref="Write(string, ReadOnlyMemory{byte})"/>
    public void WriteStream(string file, Action<Stream> write) => Write(file, path => WholeFile.Put(path, write));

    private void Place(string file, Func<bool, bool> write)
    {
        Require(file);
        // What was not there a moment ago may be now: only what was looked at is replaced.
        if (!write(ExclusiveMove.IsTaken(file)))
            throw new OutputRefusedException(TakenName.IsThere(file));
    }

    private string? Objection(string file)
    {
        var full = Path.GetFullPath(file);
        if (WholeFile.IsDevice(full))
            return null;
        if (Directory.Exists(full))
            return $"{file} is a folder: name a file";
        if (Path.GetFileName(file).Length == 0)
            return $"{file} names a folder: name a file";
        return TakenName.Objection(file, this) ?? OutputFolder.Objection(Path.GetDirectoryName(full)!, Path.GetDirectoryName(file)!);
    }

    private static string? Twice(List<string> files) =>
        (
            from pair in files.SelectMany((one, at) => files.Skip(at + 1).Select(other => (one, other)))
            where !WholeFile.IsDevice(Path.GetFullPath(pair.one)) && SameFile.WouldBe(pair.one, pair.other)
            select $"{pair.other} is named for two outputs of this run: give each a name of its own"
        ).FirstOrDefault();
}
