using ExamDocs.Documents.Browsing;

namespace ExamDocs.Cli;

/// <summary>Turns a failure of disk, browser or register into one sentence and its exit code.</summary>
internal static class Machinery
{
    public static async Task<int> GuardAsync(Func<Task<int>> run)
    {
        try
        {
            return await run();
        }
        catch (Exception e) when (e is PrintException or IOException or UnauthorizedAccessException
            or System.Data.Common.DbException)
        {
            await Console.Error.WriteLineAsync($"stopped: {e.Message}");
            return ExitCode.Machinery;
        }
        catch (OperationCanceledException)
        {
            await Console.Error.WriteLineAsync("stopped by the user; what is out is whole, run the command again to go on");
            return ExitCode.Machinery;
        }
    }
}
