using System.CommandLine;
using System.Diagnostics;
using ExamDocs.Workbench;
using ExamDocs.Workbench.Desk;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs workbench</c>: the local web pages.</summary>
internal static class WorkbenchCommand
{
    private static readonly Option<DirectoryInfo?> Data = new("--data")
    {
        Description = "Folder of what lies on the desk. Default: beside the usual register, in your own data folder.",
        HelpName = "DIR",
    };

    private static readonly Option<int> Port = new("--port")
    {
        Description = "Port on this machine; 0 for any that is free.",
        HelpName = "N",
    };

    private static readonly Option<bool> NoBrowser = new("--no-browser")
    {
        Description = "Only print the address to open, which works once.",
    };

    public static Command Create()
    {
        var command = new Command("workbench", "Opens the pages to work in, in this machine's browser; nobody else can reach them.")
        {
            Data,
            Port,
            NoBrowser,
            CommonOptions.Rules,
        };
        command.SetAction((parsed, cancellation) => RunGuard.RunAsync(() => RunAsync(parsed, cancellation)));
        return command;
    }

    private static async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        if (CommonOptions.KnownRules(parsed) is not { } rules || CommonOptions.RegisterToWrite(parsed) is not { } register)
            return ExitCode.Refused;
        await using var server = await WorkbenchServer.StartAsync(
            new WorkbenchRequest
            {
                Register = register,
                DataFolder = parsed.GetValue(Data)?.FullName ?? Path.Combine(UseCases.Registered.RegisterPlace.DataFolder, "workbench"),
                Today = CommonOptions.Today,
                Rules = rules,
                Port = parsed.GetValue(Port),
            },
            cancellation
        );
        Console.WriteLine(server.Entry);
        if (!parsed.GetValue(NoBrowser))
            Open(server.Entry);
        await Console.Error.WriteLineAsync("The workbench is open. It closes with Ctrl-C; what is being issued is finished or can go on.");
        await server.WaitAsync(cancellation);
        return ExitCode.Done;
    }

    /// <summary>In the user's own browser; where there is none to be found, the printed address is opened by hand.</summary>
    private static void Open(Uri address)
    {
        try
        {
            using var opened = Process.Start(new ProcessStartInfo(address.AbsoluteUri) { UseShellExecute = true });
        }
        catch (Exception e) when (e is System.ComponentModel.Win32Exception or InvalidOperationException or PlatformNotSupportedException)
        {
            Console.Error.WriteLine("No browser could be opened: open the address above yourself.");
        }
    }
}
