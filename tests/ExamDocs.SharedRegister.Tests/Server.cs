using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Security.Cryptography;
using ExamDocs.SharedRegister.Tests;

[assembly: AssemblyFixture(typeof(Server))]

namespace ExamDocs.SharedRegister.Tests;

/// <summary>
/// A PostgreSQL server of the tests' own, in a temporary folder and on this machine's loopback alone, with every database on
/// it made for one test. It is started once, and stopped and taken away at the end.
/// </summary>
public sealed class Server : IDisposable
{
    /// <summary>Names the folder of the server's programs where they are not Debian's.</summary>
    public const string ProgramsVariable = "EXAMDOCS_TEST_POSTGRES";

    public const string Owner = "keeper";

    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(3);

    private static Server? s_running;

    private readonly string _folder = "";
    private readonly string? _programs = Found();

    public Server()
    {
        if (_programs is null)
            return;
        _folder = Unprivileged("mktemp", "-d", "--tmpdir", "examdocs-postgres-XXXXXXXX").Trim();
        try
        {
            Make();
            Start();
        }
        catch
        {
            Dispose();
            throw;
        }
        s_running = this;
    }

    public string Password { get; } = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(12));

    public int Port { get; private set; }

    /// <summary>The folder of the server's own programs.</summary>
    public string Programs => _programs!;

    /// <summary>A folder in which the server's own programs may write.</summary>
    public string Folder => _folder;

    private string Data => Path.Combine(_folder, "data");

    private string Log => Path.Combine(_folder, "log");

    /// <summary>The server; without one the test is left out, and fails where everything must be there.</summary>
    public static Server Needed()
    {
        const string missing =
            "No PostgreSQL server is installed: install the Debian package postgresql, or name the folder of its programs in "
            + ProgramsVariable
            + ".";
        if (s_running is null && string.Equals(Environment.GetEnvironmentVariable("CI"), "true", StringComparison.OrdinalIgnoreCase))
            Assert.Fail(missing);
        if (s_running is null)
            Assert.Skip(missing);
        return s_running;
    }

    /// <summary>The address of a database, as a user would type it.</summary>
    public string AddressOf(string database, string user = Owner, string? password = null) =>
        string.Create(CultureInfo.InvariantCulture, $"postgres://{user}:{password ?? Password}@127.0.0.1:{Port}/{database}");

    /// <summary>Runs one of the server's own programs as the server's owner.</summary>
    public string Run(string program, params string[] arguments) => Unprivileged(Path.Combine(_programs!, program), arguments);

    public void Dispose()
    {
        if (_folder.Length == 0)
            return;
        s_running = null;
        if (File.Exists(Path.Combine(Data, "postmaster.pid")))
            Run("pg_ctl", "stop", "-D", Data, "-m", "fast", "-w", "-t", "120");
        Directory.Delete(_folder, recursive: true);
    }

    private void Make()
    {
        var secret = Path.Combine(_folder, "secret");
        File.WriteAllText(secret, Password);
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(secret, UnixFileMode.UserRead | UnixFileMode.GroupRead | UnixFileMode.OtherRead);
        Run("initdb", "-D", Data, "-U", Owner, "-E", "UTF8", "--locale=C.UTF-8", "--auth=scram-sha-256", $"--pwfile={secret}", "--no-sync");
        File.Delete(secret);
        // The tests kill runs, never the server: it need not wait for the disk.
        File.AppendAllText(
            Path.Combine(Data, "postgresql.conf"),
            "listen_addresses = '127.0.0.1'\nunix_socket_directories = ''\nfsync = off\nfull_page_writes = off\nwal_level = minimal\nmax_wal_senders = 0\nmax_connections = 100\nshared_buffers = 128MB\n"
        );
    }

    /// <summary>Between looking for a free port and taking it another may take it.</summary>
    private void Start()
    {
        for (var attempt = 1; ; attempt++)
        {
            Port = FreePort();
            try
            {
                Run(
                    "pg_ctl",
                    "start",
                    "-D",
                    Data,
                    "-l",
                    Log,
                    "-w",
                    "-t",
                    "120",
                    "-o",
                    string.Create(CultureInfo.InvariantCulture, $"-p {Port}")
                );
                return;
            }
            catch (InvalidOperationException) when (attempt < 3) { }
        }
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private static string? Found()
    {
        if (Environment.GetEnvironmentVariable(ProgramsVariable) is { Length: > 0 } named)
            return File.Exists(Path.Combine(named, "initdb")) ? named : null;
        const string debian = "/usr/lib/postgresql";
        return !Directory.Exists(debian)
            ? null
            : Directory
                .EnumerateDirectories(debian)
                .Select(version => Path.Combine(version, "bin"))
                .Where(bin => File.Exists(Path.Combine(bin, "initdb")))
                .Order(StringComparer.Ordinal)
                .LastOrDefault();
    }

    /// <summary>The server refuses to run as root; Debian's package brings a user for it.</summary>
    private static string Unprivileged(string program, params string[] arguments)
    {
        string[] asUser = Environment.IsPrivilegedProcess ? ["setpriv", "--reuid=postgres", "--regid=postgres", "--clear-groups"] : [];
        string[] line = [.. asUser, program, .. arguments];
        var start = new ProcessStartInfo(line[0], line[1..])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Path.GetTempPath(),
        };
        using var process = Process.Start(start)!;
        var (said, complained) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        if (!process.WaitForExit(Patience))
            process.Kill(entireProcessTree: true);
        return process.ExitCode == 0
            ? said.Result
            : throw new InvalidOperationException($"{Path.GetFileName(program)} failed: {complained.Result} {said.Result}");
    }
}
