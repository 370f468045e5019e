using ExamDocs.Register.Files;

namespace ExamDocs.UseCases.Outputs;

/// <summary>
/// A file of a fixed name that the program keeps in a folder of the user's and brings up to date. What is ours by its content gives way to
/// the newer one; anything else of that name stays.
/// </summary>
/// <param name="Path">Where it is, as the user typed the folder.</param>
/// <param name="What">What is kept there, for example a checkpoint of this register.</param>
/// <param name="IsOurs">Whether what is there already is such a file.</param>
internal sealed record OwnFile(string Path, string What, Func<byte[], bool> IsOurs)
{
    /// <summary>Larger than any that we write, bytes, inclusive.</summary>
    private const long MostBytes = 1L << 30;

    /// <exception cref="OutputRefusedException">Something else has its name.</exception>
    public void Require()
    {
        if (ExclusiveMove.IsTaken(Path) && !IsOneOfOurs())
            throw new OutputRefusedException($"{Path} is not {What}: move it away, or name another folder");
    }

    /// <exception cref="OutputRefusedException">Something else has its name.</exception>
    /// <exception cref="IOException">It cannot be written; the one before is still there.</exception>
    public void Write(byte[] content)
    {
        Require();
        var full = System.IO.Path.GetFullPath(Path);
        // Another run may have made it a moment ago; then what it made is looked at.
        if (!WholeFile.Write(full, content, ExclusiveMove.IsTaken(full)))
        {
            Require();
            WholeFile.Write(full, content, replace: true);
        }
    }

    private bool IsOneOfOurs()
    {
        if (new FileInfo(Path) is not { Exists: true, Length: <= MostBytes })
            return false;
        try
        {
            return IsOurs(File.ReadAllBytes(Path));
        }
        catch (FileNotFoundException)
        {
            return true;
        }
    }
}
