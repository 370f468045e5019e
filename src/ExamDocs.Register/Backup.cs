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
        if (Path.Exists(full))
            throw new IOException($"There is a file at {full} already; it was left as it is.");
        var temporary = $"{full}.part";
        File.Delete(temporary);
        try
        {
            database.Connection.Execute("VACUUM INTO $1", temporary);
            using (var copy = DocumentRegister.Open(temporary))
            {
                if (copy.Check() is { Count: > 0 } faults)
                    throw new IOException($"The copy is not sound: {faults[0]}");
            }
            File.Move(temporary, full, overwrite: false);
            FolderSync.Flush(Path.GetDirectoryName(full)!);
        }
        finally
        {
            File.Delete(temporary);
        }
    }
}
