using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;

namespace ExamDocs.Cli;

/// <summary>Turns a failure of disk, browser or register into one sentence and its exit code.</summary>
internal static class RunGuard
{
    public static Message ByUser => $"stopped by the user; what was written is whole, run the command again to go on";

    public static async Task<int> RunAsync(Func<Task<int>> run)
    {
        try
        {
            return await run();
        }
        catch (OutputRefusedException e)
        {
            await Console.Error.WriteLineAsync(e.Message);
            return ExitCode.Refused;
        }
        catch (Exception e) when (RunFailure.Is(e))
        {
            await Console.Error.WriteLineAsync(Screen.Say($"stopped: {RunFailure.Sentence(e)}"));
            return ExitCode.Stopped;
        }
        catch (OperationCanceledException)
        {
            await Console.Error.WriteLineAsync(Screen.Say(ByUser));
            return ExitCode.Stopped;
        }
    }
}
