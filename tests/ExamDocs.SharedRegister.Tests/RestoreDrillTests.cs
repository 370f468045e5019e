using System.Diagnostics;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Register.Tests;

namespace ExamDocs.SharedRegister.Tests;

/// <summary>The drill that a firm can run: dump, restore, check, compare.</summary>
public sealed class RestoreDrillTests : Workplace
{
    private string Drill => $"{DatabaseName}_drill";

    [Fact]
    public void A_whole_backup_is_good()
    {
        using (var register = Open())
            Issue(register, "a");
        AssertSays(0, "GOOD: all 2 entries were restored, the register is sound, and its log is the one of before.");
    }

    [Fact]
    public void An_older_backup_is_said_to_be_older_and_what_would_be_lost()
    {
        using var register = Open();
        Issue(register, "a");
        var dump = Path.Combine(Server.Folder, $"{Drill}.dump");
        Server.Run("pg_dump", "--format=custom", "--schema=examdocs", $"--file={dump}", Database);
        Issue(register, "b");
        AssertSays(
            1,
            "OLDER: what was restored is sound and ends at entry 2 of 3; what happened after it, and its numbers, would be lost.",
            dump
        );
    }

    [Fact]
    public void A_backup_with_one_byte_altered_is_not_good()
    {
        using (var register = Open())
            Issue(register, "a");
        Assert.True(Changed("UPDATE content SET bytes = set_byte(bytes, 9, 33)", out _));
        AssertSays(
            1,
            before: "The register no longer holds R-2026-000001 as it was issued.",
            last: "NOT GOOD: what was restored is not sound, or is not the register that it was."
        );
    }

    private void AssertSays(int exit, string last, string? dump = null) => AssertSays(exit, before: null, last, dump);

    private void AssertSays(int exit, string? before, string last, string? dump = null)
    {
        OnTheServer($"CREATE DATABASE {Drill} TEMPLATE template0 ENCODING 'UTF8'");
        try
        {
            var script = Path.Combine(Path.GetDirectoryName(Cli.Tests.Records.ExampleJson)!, "restore-drill.sh");
            var start = new ProcessStartInfo("bash", [script, Database, Server.AddressOf(Drill), .. dump is null ? [] : (string[])[dump]])
            {
                RedirectStandardOutput = true,
                RedirectStandardError = true,
                // Another test may be in a folder of its own just now, which is soon gone.
                WorkingDirectory = AppContext.BaseDirectory,
            };
            start.Environment["EXAMDOCS"] = Path.Combine(AppContext.BaseDirectory, "ExamDocs.Cli");
            start.Environment["PATH"] = $"{Server.Programs}:{Environment.GetEnvironmentVariable("PATH")}";
            using var process = Process.Start(start)!;
            var complained = process.StandardError.ReadToEndAsync();
            var said = process.StandardOutput.ReadToEnd().TrimEnd().Split('\n');
            process.WaitForExit();
            Assert.Equal((last, exit, ""), (said[^1], process.ExitCode, complained.Result));
            if (before is not null)
                Assert.Equal(before, said[0]);
        }
        finally
        {
            OnTheServer($"DROP DATABASE {Drill} WITH (FORCE)");
        }
    }
}
