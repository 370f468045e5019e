using System.Runtime.InteropServices;

namespace ExamDocs.Cli;

/// <summary>
/// Whoever opens the program by a double click wants to work in pages: the window that Windows makes for it would close before its help
/// could be read. In a terminal the program stays as it is.
/// </summary>
internal sealed class DoubleClick(bool isOne)
{
    /// <summary>What this process was started by.</summary>
    public static DoubleClick OfThisProcess => new(OperatingSystem.IsWindows() && ProcessesInThisWindow() == 1);

    /// <summary>The arguments to go by, where these were typed.</summary>
    public string[] Meaning(string[] typed) => isOne && typed.Length == 0 ? ["workbench"] : typed;

    /// <summary>Leaves a message on the screen until it was read: the window closes with the program.</summary>
    public void WaitUntilRead(int exitCode, TextReader input, TextWriter output)
    {
        if (!isOne || exitCode == ExitCode.Done)
            return;
        output.WriteLine("Press Enter to close this window.");
        input.ReadLine();
    }

    // A shell is in its window beside the program; alone in it is only what has got a window of its own.
    private static uint ProcessesInThisWindow() => GetConsoleProcessList(new uint[2], 2);

    [DllImport("kernel32", EntryPoint = "GetConsoleProcessList", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    private static extern uint GetConsoleProcessList([Out] uint[] processes, uint count);
}
