using ExamDocs.UseCases.Issuing;

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
        catch (Exception e) when (MachineryFailure.Is(e))
        {
            await Console.Error.WriteLineAsync($"stopped: {MachineryFailure.Sentence(e)}");
            return ExitCode.Machinery;
        }
        catch (OperationCanceledException)
        {
            await Console.Error.WriteLineAsync("stopped by the user; what is out is whole, run the command again to go on");
            return ExitCode.Machinery;
        }
    }
}
