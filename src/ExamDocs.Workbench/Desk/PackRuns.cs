using System.Collections.Concurrent;
using System.Security.Cryptography;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Company.Packing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;
using NodaTime.Text;

namespace ExamDocs.Workbench.Desk;

/// <summary>An audit pack that was asked for since the program started.</summary>
/// <param name="Id">Names it in addresses.</param>
/// <param name="Folder">Its own, which goes away with it.</param>
/// <param name="Asked">What it is asked to show.</param>
/// <param name="Run">The work on it.</param>
public sealed record KeptPack(string Id, string Folder, PackQuestion Asked, LongRun<PackResult> Run)
{
    public string ZipFile => Path.Combine(Folder, $"audit-pack-{LocalDatePattern.Iso.Format(Asked.AsOf)}.zip");

    public string CopyFile => new PackRequest("", Asked, ZipFile).CopyFile;

    internal string EvidenceFolder => Path.Combine(Folder, "evidence");
}

/// <summary>
/// Builds audit packs one after the other. They are kept until somebody removes them or the program ends; of one that is stopped or
/// fails, nothing is kept.
/// </summary>
internal sealed class PackRuns(WorkbenchRequest request) : IAsyncDisposable
{
    private readonly ConcurrentDictionary<string, KeptPack> _packs = new(StringComparer.Ordinal);
    private readonly ConcurrentQueue<string> _order = new();
    private readonly LongRuns<PackResult> _runs = new();

    /// <summary>The one asked for last first.</summary>
    public IReadOnlyList<KeptPack> All => [.. _order.Reverse().Select(Find).OfType<KeptPack>()];

    public KeptPack? Find(string id) => _packs.GetValueOrDefault(id);

    /// <summary>Starts a pack.</summary>
    /// <param name="asked">What it is to show.</param>
    /// <param name="evidence">Files to enclose, whose names were looked at.</param>
    /// <param name="style">How its pages are printed.</param>
    /// <exception cref="IOException">The evidence cannot be kept.</exception>
    public KeptPack Start(PackQuestion asked, IReadOnlyList<DroppedFile> evidence, PrintStyle style)
    {
        var folder = Directory.CreateTempSubdirectory(FormattableString.Invariant($"examdocs-pack-{Environment.ProcessId}-")).FullName;
        var pack = new KeptPack(
            Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(8)),
            folder,
            asked,
            new(undo: () => Directory.Delete(folder, recursive: true))
        );
        try
        {
            Directory.CreateDirectory(pack.EvidenceFolder);
            foreach (var file in evidence)
            {
                using var from = file.Open();
                OutputGuard.NewFilesOnly.WriteStream(Path.Combine(pack.EvidenceFolder, file.Name), from.CopyTo);
            }
        }
        catch
        {
            pack.Run.Undo();
            throw;
        }
        _packs[pack.Id] = pack;
        _order.Enqueue(pack.Id);
        _runs.Start(pack.Id, pack.Run, stopping => RunAsync(pack, style, stopping));
        return pack;
    }

    /// <summary>Takes away a pack that is done, with its files.</summary>
    public void Remove(KeptPack pack)
    {
        if (pack.Run.IsAtWork || !_packs.TryRemove(pack.Id, out _))
            return;
        if (Directory.Exists(pack.Folder))
            Directory.Delete(pack.Folder, recursive: true);
    }

    public async ValueTask DisposeAsync()
    {
        await _runs.DisposeAsync();
        foreach (var folder in _packs.Values.Select(p => p.Folder).Where(Directory.Exists))
            Directory.Delete(folder, recursive: true);
    }

    private async Task<(PackResult Result, string? Failure)> RunAsync(KeptPack pack, PrintStyle style, CancellationToken stopping)
    {
        var result = await BuildPack.RunAsync(
            new PackRequest(request.Register.Place, pack.Asked, pack.ZipFile)
            {
                EvidenceFolder = pack.EvidenceFolder,
                Style = style,
                Progress = pack.Run.Tell,
            },
            stopping
        );
        return (result, result.Refused?.Text ?? result.Failure);
    }
}
