using System.Security.Cryptography;

namespace ExamDocs.Cli.Tests;

/// <summary>A folder with every kind of thing that may have the name of an output already, made once.</summary>
public sealed class Taken : IAsyncLifetime, IDisposable
{
    /// <summary>What gives way to an output where --replace is given; everything else stays.</summary>
    public static readonly string[] Ordinary = ["empty.json", "filled.xlsx", "note.txt", "sheet.pdf"];

    /// <summary>What is never replaced, and the word that the refusal has for it.</summary>
    public static readonly (string Name, string Word)[] Precious =
    [
        ("R-2026-000001.pdf", "an issued document"),
        ("renamed.pdf", "an issued document"),
        ("damaged.pdf", "an issued document"),
        ("other.db", "a register"),
        ("kept.db", "a backup"),
        ("killed.db-journal", "belongs to the register"),
        ("list.json", "is kept by the program"),
        ("point.json", "is kept by the program"),
        ("folder", "is a folder"),
        ("readonly.txt", "is read-only"),
    ];

    private readonly Examdocs _examdocs = new();

    internal Examdocs Examdocs => _examdocs;

    public string Report { get; private set; } = "";

    public async ValueTask InitializeAsync()
    {
        var register = _examdocs.DefaultRegister;
        await Done("issue", Records.Cut().Write(_examdocs, "visit.json"), "--out", "out");
        Report = Directory.GetFiles(_examdocs.At("out"), "R-*.pdf").Single();
        File.Copy(Records.ExampleWorkbook, _examdocs.At("visit.xlsx"));
        await Done("register", "backup", "--out", "kept.db");
        await Done("register", "create", "--register", "other.db");
        await Done("register", "create", "--register", "killed.db");
        Directory.CreateDirectory(_examdocs.At("folder"));
        File.Copy(Report, _examdocs.At("renamed.pdf"));
        File.Copy(_examdocs.At("out/documents.json"), _examdocs.At("list.json"));
        File.Copy(_examdocs.At("out/checkpoint.json"), _examdocs.At("point.json"));
        var damaged = await File.ReadAllBytesAsync(Report);
        await File.WriteAllBytesAsync(_examdocs.At("damaged.pdf"), damaged[..^40]);
        // By its name alone: another file, under the number of an issued one.
        await File.WriteAllTextAsync(_examdocs.At(Path.GetFileName(Report)), "%PDF-1.7 and nothing more");
        await File.WriteAllTextAsync(_examdocs.At("killed.db-journal"), "what a killed run left");
        await File.WriteAllTextAsync(_examdocs.At("readonly.txt"), "as it was");
        File.SetAttributes(_examdocs.At("readonly.txt"), FileAttributes.ReadOnly);
        foreach (var name in Ordinary)
            Renew(name);
        Assert.True(File.Exists(register));
    }

    /// <summary>Makes an ordinary file as it was at first, and links to it.</summary>
    public void Renew(string name)
    {
        // Another workbook than the one that is the input of runs.
        if (name is "filled.xlsx")
            File.WriteAllBytes(_examdocs.At(name), [.. File.ReadAllBytes(Records.ExampleWorkbook), 0]);
        else
            File.WriteAllText(_examdocs.At(name), name is "empty.json" ? "" : $"%PDF what was in {name}");
    }

    /// <summary>A symbolic link to a thing in the folder.</summary>
    public string LinkTo(string name)
    {
        var link = $"link-to-{name}";
        File.Delete(_examdocs.At(link));
        File.CreateSymbolicLink(_examdocs.At(link), name);
        return link;
    }

    /// <summary>Every file in the folder and in the user's own data, with its content or what it leads to.</summary>
    public IReadOnlyDictionary<string, string> Snapshot() =>
        new[] { _examdocs.Folder, _examdocs.Data }
            .SelectMany(f => Directory.EnumerateFileSystemEntries(f, "*", SearchOption.AllDirectories))
            .Order(StringComparer.Ordinal)
            .ToDictionary(
                f => f,
                f =>
                    new FileInfo(f).LinkTarget is { } target ? $"-> {target}"
                    : File.Exists(f) ? Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(f)))
                    : "a folder",
                StringComparer.Ordinal
            );

    private async Task Done(params string[] arguments)
    {
        var run = await _examdocs.RunAsync(arguments);
        Assert.True(run.ExitCode == 0, run.Err);
    }

    public ValueTask DisposeAsync()
    {
        Dispose();
        return ValueTask.CompletedTask;
    }

    public void Dispose()
    {
        if (Directory.Exists(_examdocs.Folder))
            _examdocs.Dispose();
    }
}
