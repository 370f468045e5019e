using System.Runtime.InteropServices;
using System.Text;

namespace ExamDocs.Register.Files;

/// <summary>
/// Makes the entries of a folder last through a loss of power. .NET cannot open a folder, so the system is asked directly;
/// Windows has no such call and needs none.
/// </summary>
internal static class FolderSync
{
    private const int ReadOnly = 0;
    private const int InvalidArgument = 22;

    /// <exception cref="IOException">The system reports an error.</exception>
    public static void Flush(string folder)
    {
        if (OperatingSystem.IsWindows())
            return;
        var descriptor = Open(Encoding.UTF8.GetBytes(folder + '\0'), ReadOnly);
        if (descriptor < 0)
            throw Failure(folder, Marshal.GetLastPInvokeError());
        try
        {
            // A file system that cannot flush folders says so with "invalid argument".
            if (Fsync(descriptor) != 0 && Marshal.GetLastPInvokeError() is var error and not InvalidArgument)
                throw Failure(folder, error);
        }
        finally
        {
            _ = Close(descriptor);
        }
    }

    private static IOException Failure(string folder, int error) =>
        new($"The folder {folder} could not be flushed to disk: {Marshal.GetPInvokeErrorMessage(error)}.");

    [DllImport("libc", EntryPoint = "open", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Open(byte[] path, int flags);

    [DllImport("libc", EntryPoint = "fsync", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Fsync(int descriptor);

    [DllImport("libc", EntryPoint = "close", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Close(int descriptor);
}
