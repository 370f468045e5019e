using System.Diagnostics;
using System.Runtime.CompilerServices;

namespace ExamDocs.Register.Tests;

/// <summary>
/// This assembly started again as a run that issues documents for ever, until somebody kills it. It says each number on
/// its standard output once the register has said that it is issued.
/// </summary>
internal static class KilledRun
{
    private const string DatabaseVariable = "EXAMDOCS_TEST_ENDLESS_RUN";

    public static Process Start(string database, string folder, int run)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, UseShellExecute = false };
        start.ArgumentList.Add("exec");
        start.ArgumentList.Add(typeof(KilledRun).Assembly.Location);
        start.ArgumentList.Add(folder);
        start.ArgumentList.Add(run.ToString(System.Globalization.CultureInfo.InvariantCulture));
        start.Environment[DatabaseVariable] = database;
        return Process.Start(start) ?? throw new InvalidOperationException("The run could not be started.");
    }

    /// <summary>Bytes that take a while to write, different for each document.</summary>
    private static byte[] Pdf(string job)
    {
        var bytes = new byte[300_000];
        System.Text.Encoding.ASCII.GetBytes(job).CopyTo(bytes, 0);
        return bytes;
    }

#pragma warning disable CA2255 // The module initializer takes the place of a second program.
    [ModuleInitializer]
    public static void RunWhereAskedTo()
    {
        if (Environment.GetEnvironmentVariable(DatabaseVariable) is not { Length: > 0 } database)
            return;
        var arguments = Environment.GetCommandLineArgs();
        Issue(database, arguments[^2], arguments[^1]);
    }
#pragma warning restore CA2255

    private static void Issue(string database, string folder, string run)
    {
        using var register = DocumentRegister.Open(database);
        register.Recover();
        for (var count = 0; ; count++)
        {
            var job = FormattableString.Invariant($"{run}/{count}");
            var pending = register.Take(new DocumentRequest('R', 2026, "report", job, ["HB-014"], folder));
            Console.Out.WriteLine(register.Publish(pending, Pdf(job), 1, "{}").Number);
        }
    }
}
