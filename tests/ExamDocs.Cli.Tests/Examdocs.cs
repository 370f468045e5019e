using System.Diagnostics;

namespace ExamDocs.Cli.Tests;

/// <summary>What a run of the program left behind.</summary>
internal sealed record Run(int ExitCode, string Out, string Err);

/// <summary>
/// The program, run in a folder of its own: within this process, one run after the other, or as the built program in a process
/// of its own, which takes most of a second to start.
/// </summary>
/// <param name="apart">In a process of its own.</param>
internal sealed class Examdocs(bool apart = false) : IDisposable
{
    private static readonly string Program = Path.Combine(
        AppContext.BaseDirectory,
        OperatingSystem.IsWindows() ? "ExamDocs.Cli.exe" : "ExamDocs.Cli"
    );

    private readonly Dictionary<string, string> _environment = new(StringComparer.Ordinal);

    /// <summary>The folder it runs in, empty at first.</summary>
    public string Folder { get; } = Directory.CreateTempSubdirectory("examdocs-cli-").FullName;

    /// <summary>The user's own data folder, empty at first.</summary>
    public string Data { get; } = Directory.CreateTempSubdirectory("examdocs-data-").FullName;

    public string DefaultRegister => Path.Combine(Data, "examdocs", "examdocs.db");

    public string At(string name) => Path.Combine(Folder, name);

    public Examdocs With(string variable, string value)
    {
        _environment[variable] = value;
        return this;
    }

    public void Without(string variable) => _environment.Remove(variable);

    /// <summary>Names of everything in the folder, below it too.</summary>
    public IReadOnlyList<string> Files() =>
        [
            .. Directory
                .EnumerateFiles(Folder, "*", SearchOption.AllDirectories)
                .Select(f => Path.GetRelativePath(Folder, f))
                .Order(StringComparer.Ordinal),
        ];

    public Task<Run> RunAsync(params string[] arguments) =>
        apart ? RunApartAsync(arguments) : RunHere.RunAsync(Folder, Environment(), arguments);

    private async Task<Run> RunApartAsync(string[] arguments)
    {
        using var process = Begin(arguments);
        var cancellation = TestContext.Current.CancellationToken;
        var output = process.StandardOutput.ReadToEndAsync(cancellation);
        var errors = process.StandardError.ReadToEndAsync(cancellation);
        await process.WaitForExitAsync(cancellation);
        return new Run(process.ExitCode, await output, await errors);
    }

    /// <summary>Starts it and does not wait.</summary>
    public Process Begin(params string[] arguments) => Process.Start(Start(arguments))!;

    private ProcessStartInfo Start(string[] arguments)
    {
        var start = new ProcessStartInfo(Program, arguments)
        {
            WorkingDirectory = Folder,
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["DOTNET_TieredPGO"] = "0"; // short runs: measuring them costs more than it gains
        foreach (var (name, value) in Environment())
            start.Environment[name] = value;
        return start;
    }

    /// <summary>Variables of the environment; null where one is not set.</summary>
    private Dictionary<string, string?> Environment()
    {
        Dictionary<string, string?> all = new(StringComparer.Ordinal)
        {
            ["EXAMDOCS_REGISTER"] = null,
            ["XDG_DATA_HOME"] = Data,
            // No bars, wherever the tests are started.
            ["TERM"] = "dumb",
        };
        foreach (var (name, value) in _environment)
            all[name] = value;
        return all;
    }

    public void Dispose()
    {
        Directory.Delete(Folder, recursive: true);
        Directory.Delete(Data, recursive: true);
    }
}
