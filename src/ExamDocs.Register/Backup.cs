using ExamDocs.Register.Files;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register;

/// <summary>Copies of a register in a file.</summary>
internal static class Backup
{
    public static void Write(RegisterDatabase database, string path)
    {
        if (database is not SqliteRegister)
            throw new RegisterRefusedException(
                $"{database.Place} is on a server; whoever keeps the server makes its copies (pg_dump), or export it."
            );
        var full = Path.GetFullPath(path);
        if (ExclusiveMove.IsTaken(full))
            throw Taken(full);
        var temporary = $"{full}.{Guid.NewGuid():N}.part";
        try
        {
            database.Connection.Execute("VACUUM INTO $1", temporary);
            using (var copy = DocumentRegister.Open(temporary))
            {
                if (copy.Check() is { Count: > 0 } faults)
                    throw new IOException($"The copy is not sound: {faults[0]}");
            }
            if (!ExclusiveMove.Try(temporary, full))
                throw Taken(full);
            FolderSync.Flush(Path.GetDirectoryName(full)!);
        }
        finally
        {
            File.Delete(temporary);
        }
    }

    private static IOException Taken(string full) => new($"There is a file at {full} already; it was left as it is.");
}
