using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using ExamDocs.Register.Model;

namespace ExamDocs.Register.Tests;

/// <summary>
/// This assembly started again as a run that issues documents for ever, until somebody kills it. It says each number on
/// its standard output once the register has said that it is issued. With a count it ends by itself; with a count of 0 it
/// takes one number and holds it.
/// </summary>
internal static class KilledRun
{
    private const string DatabaseVariable = "EXAMDOCS_TEST_ENDLESS_RUN";

    private const int Endless = int.MaxValue;

    /// <summary>Documents are published one by one, by twos and so on up to so many, and then one by one again.</summary>
    public const int MostAtOnce = 4;

    public static Process Start(string database, string folder, int run, int documents = Endless)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, UseShellExecute = false };
        start.ArgumentList.Add("exec");
        start.ArgumentList.Add(typeof(KilledRun).Assembly.Location);
        start.ArgumentList.Add(folder);
        start.ArgumentList.Add(run.ToString(CultureInfo.InvariantCulture));
        start.ArgumentList.Add(documents.ToString(CultureInfo.InvariantCulture));
        start.Environment[DatabaseVariable] = database;
        return Process.Start(start) ?? throw new InvalidOperationException("The run could not be started.");
    }

    /// <summary>Where the run is to be killed, bytes that take a while to write; different for each document.</summary>
    private static byte[] Pdf(string job, int documents)
    {
        var bytes = new byte[documents == Endless ? 300_000 : 3_000];
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
        Issue(database, arguments[^3], arguments[^2], int.Parse(arguments[^1], CultureInfo.InvariantCulture));
        Environment.Exit(0);
    }
#pragma warning restore CA2255

    private static void Issue(string database, string folder, string run, int documents)
    {
        using var register = DocumentRegister.Open(database);
        register.Recover();
        if (documents == 0)
        {
            Console.Out.WriteLine(Take(register, folder, $"{run}/held").Number);
            Thread.Sleep(Timeout.Infinite);
        }
        for (var (count, size) = (0, 1); count < documents; count += size, size = (size % MostAtOnce) + 1)
        {
            var jobs = Enumerable.Range(count, Math.Min(size, documents - count)).Select(n => FormattableString.Invariant($"{run}/{n}"));
            var taken = register.TakeAll([.. jobs.Select(job => Request(folder, job))]);
            foreach (var (document, _) in register.PublishAll([.. taken.Select(t => Finished(t, documents))]))
                Console.Out.WriteLine(document!.Number);
        }
    }

    private static FinishedDocument Finished(PendingDocument pending, int documents) =>
        new(pending, Pdf(pending.JobKey, documents), 1, "{}");

    private static PendingDocument Take(DocumentRegister register, string folder, string job) => register.Take(Request(folder, job));

    private static DocumentRequest Request(string folder, string job) => new('R', 2026, "report", job, ["HB-014"], folder);
}
