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

    /// <summary>Waits for a key after a message: the window closes with the program.</summary>
    public void WaitUntilRead(int exitCode, TextReader input, TextWriter output)
    {
        if (!isOne || exitCode == ExitCode.Done)
            return;
        output.WriteLine("Press Enter to close this window.");
        input.ReadLine();
    }

    // A shell shares its window with the program; only a program that got a window of its own is alone in it.
    private static uint ProcessesInThisWindow() => GetConsoleProcessList(new uint[2], 2);

    [DllImport("kernel32", EntryPoint = "GetConsoleProcessList", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    private static extern uint GetConsoleProcessList([Out] uint[] processes, uint count);
}
