using ExamDocs.Documents.Browsing;
using Microsoft.Data.Sqlite;

namespace ExamDocs.Cli;

/// <summary>Turns a failure of disk, browser or register into one sentence and its exit code.</summary>
internal static class Machinery
{
    private const int DiskFull = 13;

    /// <summary>ENOSPC of POSIX, and ERROR_DISK_FULL of Windows as a result code.</summary>
    private static readonly int[] NoSpaceLeft = [28, unchecked((int)0x80070070)];

    public static async Task<int> GuardAsync(Func<Task<int>> run)
    {
        try
        {
            return await run();
        }
        catch (Exception e) when (e is PrintException or IOException or UnauthorizedAccessException
            or InvalidDataException or System.Data.Common.DbException)
        {
            await Console.Error.WriteLineAsync($"stopped: {Sentence(e)}");
            return ExitCode.Machinery;
        }
        catch (OperationCanceledException)
        {
            await Console.Error.WriteLineAsync("stopped by the user; what is out is whole, run the command again to go on");
            return ExitCode.Machinery;
        }
    }

    private static string Sentence(Exception failure) => failure switch
    {
        SqliteException { SqliteErrorCode: DiskFull } => "the disk that holds the register is full; make room, then run the command again to go on",
        IOException when NoSpaceLeft.Contains(failure.HResult) => $"{FirstLine(failure)}; make room, then run the command again to go on",
        _ => FirstLine(failure),
    };

    // A server adds lines about its own statements.
    private static string FirstLine(Exception failure) => failure.Message.Split('\n')[0].TrimEnd();
}
