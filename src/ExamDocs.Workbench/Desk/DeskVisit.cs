using System.Globalization;
using System.Security.Cryptography;
using ExamDocs.Intake.Yard;

namespace ExamDocs.Workbench.Desk;

/// <summary>
/// A visit on the desk: the files as they were dropped, round by round (a mended workbook is a new round, and no earlier one is ever
/// touched), and the folder that its documents go to.
/// </summary>
public sealed class DeskVisit(string id, string folder)
{
    /// <summary>What a visit that is recorded here is kept in. No dropped file can bear the name: a point in it is not kept.</summary>
    public const string DraftName = "visit.draft.json";

    private const string RoundPrefix = "round-";

    public string Id => id;

    /// <summary>Held open by whoever is changing the draft, also where the program runs twice over one desk.</summary>
    internal string DraftLock => Path.Combine(folder, "draft.lock");

    /// <summary>Where its documents are issued to.</summary>
    public string DocumentFolder => Path.Combine(folder, "documents");

    /// <summary>Where sheets of labels are written to.</summary>
    public string SheetFolder => Path.Combine(folder, "sheets");

    public DateTime TouchedAt => Directory.GetLastWriteTimeUtc(folder);

    /// <summary>How often something was dropped for it.</summary>
    public int Rounds =>
        Directory
            .EnumerateDirectories(folder, RoundPrefix + "*")
            .Select(f => int.TryParse(Path.GetFileName(f)[RoundPrefix.Length..], CultureInfo.InvariantCulture, out var n) ? n : 0)
            .Append(0)
            .Max();

    /// <summary>The files of the latest round.</summary>
    public IReadOnlyList<string> Inputs =>
        [
            .. Directory
                .EnumerateFiles(Path.Combine(folder, Round(Rounds)))
                // What is just being saved beside a draft takes its place in a moment.
                .Where(f => !f.EndsWith(".part", StringComparison.Ordinal))
                .Order(StringComparer.Ordinal),
        ];

    /// <summary>The draft of the latest round; null where the visit was brought in as files.</summary>
    public string? Draft => Path.Combine(folder, Round(Rounds), DraftName) is var draft && File.Exists(draft) ? draft : null;

    /// <summary>The file that can be taken as a list of the user's own; null where there is none, or several.</summary>
    public string? List => Draft is null && Inputs is [var one] && Path.GetExtension(one) is (".xlsx" or ".csv") ? one : null;

    /// <summary>How that list is to be read, as far as somebody settled it; null for nothing.</summary>
    internal byte[]? ListMap => File.Exists(ListMapPath) ? File.ReadAllBytes(ListMapPath) : null;

    private string ListMapPath => Path.Combine(folder, "list-map.json");

    /// <summary>Changes with whatever is dropped for it or typed into it.</summary>
    public string Stamp =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Rounds} {(Draft is { } draft ? Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(draft))) : "")}"
        );

    /// <summary>What the files of the latest round are called.</summary>
    public string Name => string.Join(", ", Inputs.Select(Path.GetFileName));

    public static string Round(int number) => string.Create(CultureInfo.InvariantCulture, $"{RoundPrefix}{number}");

    /// <summary>Adds a round. It is there whole or not at all.</summary>
    /// <exception cref="IOException">The disk is full, or the folder cannot be written.</exception>
    internal async Task AddRoundAsync(IReadOnlyList<DroppedFile> files, CancellationToken cancellation)
    {
        Directory.CreateDirectory(folder);
        var incoming = Path.Combine(folder, $"incoming-{Guid.NewGuid():N}");
        Directory.CreateDirectory(incoming);
        try
        {
            foreach (var file in files)
            {
                await using var from = file.Open();
                var path = Path.Combine(incoming, file.IsDraft ? DraftName : Free(incoming, SafeName.Of(file.Name)));
                if (SafeName.IsArchive(path))
                {
                    YardArchive.Unpack(from, Path.Combine(incoming, Free(incoming, Path.ChangeExtension(Path.GetFileName(path), ".json"))));
                    continue;
                }
                await using var to = new FileStream(path, FileMode.CreateNew);
                await from.CopyToAsync(to, cancellation);
            }
            for (var number = Rounds + 1; ; number++)
            {
                try
                {
                    Directory.Move(incoming, Path.Combine(folder, Round(number)));
                    return;
                }
                catch (IOException) when (Directory.Exists(Path.Combine(folder, Round(number))))
                {
                    // Another upload took that number meanwhile.
                }
            }
        }
        finally
        {
            if (Directory.Exists(incoming))
                Directory.Delete(incoming, recursive: true);
        }
    }

    /// <exception cref="IOException">The disk is full, or the folder cannot be written; what was settled before still is.</exception>
    internal void KeepListMap(byte[] map)
    {
        var draft = $"{ListMapPath}.{Guid.NewGuid():N}";
        File.WriteAllBytes(draft, map);
        File.Move(draft, ListMapPath, overwrite: true);
    }

    private static string Free(string folder, string name)
    {
        var free = name;
        for (var n = 2; File.Exists(Path.Combine(folder, free)); n++)
            free = string.Create(CultureInfo.InvariantCulture, $"{Path.GetFileNameWithoutExtension(name)} ({n}){Path.GetExtension(name)}");
        return free;
    }
}
