using System.Reflection;
using Spectre.Console;

namespace ExamDocs.Cli.Tests;

/// <summary>Runs the program's entry point within this process. Folder, environment and console are the process's: one run at a time.</summary>
internal static class RunHere
{
    private static readonly SemaphoreSlim OneAtATime = new(1);

    private static readonly MethodInfo EntryPoint = Assembly.Load("ExamDocs.Cli").EntryPoint!;

    public static async Task<Run> RunAsync(string folder, IReadOnlyDictionary<string, string?> environment, string[] arguments)
    {
        await OneAtATime.WaitAsync(TestContext.Current.CancellationToken);
        var (output, errors, console, before) = (Console.Out, Console.Error, AnsiConsole.Console, Directory.GetCurrentDirectory());
        var was = environment.Keys.ToDictionary(name => name, Environment.GetEnvironmentVariable, StringComparer.Ordinal);
        try
        {
            using StringWriter saidOut = new();
            using StringWriter saidErr = new();
            Console.SetOut(TextWriter.Synchronized(saidOut));
            Console.SetError(TextWriter.Synchronized(saidErr));
            AnsiConsole.Console = Piped();
            Directory.SetCurrentDirectory(folder);
            Set(environment);
            // Off the test's own thread, as the program has none to wait on.
            var code = await Task.Run(() => (int)EntryPoint.Invoke(null, [arguments])!);
            return new Run(code, saidOut.ToString(), saidErr.ToString());
        }
        finally
        {
            Set(was);
            Directory.SetCurrentDirectory(before);
            AnsiConsole.Console = console;
            Console.SetError(errors);
            Console.SetOut(output);
            OneAtATime.Release();
        }
    }

    /// <summary>As where the output goes into a pipe, wherever that of the tests goes.</summary>
    private static IAnsiConsole Piped()
    {
        var console = AnsiConsole.Create(
            new AnsiConsoleSettings
            {
                Ansi = AnsiSupport.No,
                ColorSystem = ColorSystemSupport.NoColors,
                Interactive = InteractionSupport.No,
                Out = new AnsiConsoleOutput(Console.Out),
            }
        );
        console.Profile.Width = 400;
        return console;
    }

    private static void Set(IReadOnlyDictionary<string, string?> environment)
    {
        foreach (var (name, value) in environment)
            Environment.SetEnvironmentVariable(name, value);
    }
}
