using System.Runtime.InteropServices;
using System.Text;

namespace ExamDocs.Register.Files;

/// <summary>
/// Gives a file a name that nothing has yet. <see cref="File.Move(string, string, bool)"/> looks first and renames then, and whatever
/// came in between would be gone; a link fails where the name is taken, in one step.
/// </summary>
public static class ExclusiveMove
{
    private const int Exists = 17;

    /// <param name="source">A file in the same file system.</param>
    /// <param name="target">Its new name.</param>
    /// <returns>False where something has that name already; both are then as they were.</returns>
    /// <exception cref="IOException">It cannot be done.</exception>
    public static bool Try(string source, string target)
    {
        if (OperatingSystem.IsWindows())
            return TryOnWindows(source, target);
        if (Link(Zeroed(source), Zeroed(target)) == 0)
        {
            File.Delete(source);
            return true;
        }
        return Marshal.GetLastPInvokeError() != Exists && TryByClaiming(source, target);
    }

    /// <summary>Whether anything has the name, a link to nothing too.</summary>
    public static bool IsTaken(string path) => Path.Exists(path) || new FileInfo(path).LinkTarget is not null;

    /// <summary>Not every file system has links: the name is taken with an empty file, which is then replaced.</summary>
    internal static bool TryByClaiming(string source, string target)
    {
        try
        {
            using var claim = new FileStream(target, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        }
        catch (IOException) when (IsTaken(target))
        {
            return false;
        }
        try
        {
            File.Move(source, target, overwrite: true);
            return true;
        }
        catch
        {
            File.Delete(target);
            throw;
        }
    }

    private static bool TryOnWindows(string source, string target)
    {
        try
        {
            File.Move(source, target, overwrite: false);
            return true;
        }
        catch (IOException) when (IsTaken(target))
        {
            return false;
        }
    }

    private static byte[] Zeroed(string path) => Encoding.UTF8.GetBytes(Path.GetFullPath(path) + '\0');

    [DllImport("libc", EntryPoint = "link", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Link(byte[] existing, byte[] name);
}
