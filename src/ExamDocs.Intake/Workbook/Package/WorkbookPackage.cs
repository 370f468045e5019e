using System.IO.Compression;
using ExamDocs.Intake.Binding;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>The parts of a workbook file, opened only after their declared sizes were found to be within limits.</summary>
internal sealed class WorkbookPackage : IDisposable
{
    private readonly ZipArchive _archive;
    private readonly ReadingBudget _budget;
    private readonly Dictionary<string, ZipArchiveEntry> _parts = new(StringComparer.OrdinalIgnoreCase);

    private WorkbookPackage(ZipArchive archive, ReadingBudget budget)
    {
        (_archive, _budget) = (archive, budget);
        if (archive.Entries.Count > WorkbookLimits.Parts)
            throw new UnreadableWorkbookException("The workbook has more parts than any workbook has.");
        foreach (var entry in archive.Entries)
        {
            if (!_parts.TryAdd(Normal(entry.FullName), entry))
                throw new UnreadableWorkbookException("The workbook has two parts of one name, so it is not clear which one counts.");
        }
        RefuseOversized();
    }

    /// <param name="stream">The file, from its beginning.</param>
    /// <param name="budget">Told what its parts unpack to, where that is asked.</param>
    /// <exception cref="UnreadableWorkbookException">It is not a workbook, or too large.</exception>
    public static WorkbookPackage Open(Stream stream, ReadingBudget? budget = null)
    {
        var file = ReadWhole(stream);
        if (FileKind.WhyNotZip(file.GetBuffer().AsSpan(0, (int)file.Length)) is { } notZip)
            throw new UnreadableWorkbookException(notZip);
        var archive = OpenArchive(file);
        try
        {
            return FileKind.WhyNotWorkbook(archive) is { } notWorkbook
                ? throw new UnreadableWorkbookException(notWorkbook)
                : new WorkbookPackage(archive, budget ?? new ReadingBudget());
        }
        catch
        {
            archive.Dispose();
            throw;
        }
    }

    /// <summary>Everything in the file, in its order.</summary>
    public IReadOnlyList<ZipArchiveEntry> Entries => _archive.Entries;

    /// <summary>A program within the workbook: it is never opened, and never run.</summary>
    public bool HasMacros => _parts.Keys.Any(p => p.EndsWith("/vbaProject.bin", StringComparison.OrdinalIgnoreCase));

    public bool Has(string part) => _parts.ContainsKey(Normal(part));

    public PartReader Read(string part) => new(Open(part));

    /// <summary>What a part unpacks to, counted, summed and stopped where it goes on and on.</summary>
    public Stream Open(string part) =>
        _parts.TryGetValue(Normal(part), out var entry)
            ? Open(entry)
            : throw new UnreadableWorkbookException("A part of the workbook is missing. It may be damaged; save it again.");

    /// <inheritdoc cref="Open(string)"/>
    public Stream Open(ZipArchiveEntry entry) => new TagDistanceStream(entry.Open(), entry.Crc32, _budget);

    public void Dispose() => _archive.Dispose();

    /// <summary>A part's name as links spell it.</summary>
    public static string Normal(string name) => name.Replace('\\', '/').TrimStart('/');

    private static MemoryStream ReadWhole(Stream stream)
    {
        // Grown step by step it would leave half a dozen large buffers behind.
        var copy = new MemoryStream(stream.CanSeek ? (int)Math.Clamp(stream.Length, 0, WorkbookLimits.FileBytes) : 0);
        var buffer = new byte[81920];
        for (int read; (read = stream.Read(buffer, 0, buffer.Length)) > 0; )
        {
            copy.Write(buffer, 0, read);
            if (copy.Length > WorkbookLimits.FileBytes)
                throw new UnreadableWorkbookException("The file is larger than 32 MiB, which no recorded visit is.");
        }
        copy.Position = 0;
        return copy;
    }

    private static ZipArchive OpenArchive(MemoryStream file)
    {
        try
        {
            var archive = new ZipArchive(file, ZipArchiveMode.Read);
            _ = archive.Entries;
            return archive;
        }
        catch (InvalidDataException)
        {
            throw new UnreadableWorkbookException("The workbook is cut short or damaged. Copy or save it again.");
        }
    }

    private void RefuseOversized()
    {
        var total = 0L;
        foreach (var entry in _archive.Entries)
        {
            if (entry.IsEncrypted)
                throw new UnreadableWorkbookException(
                    "The workbook is protected with a password. Take the password off and save it again."
                );
            total += entry.Length;
            if (entry.Length > WorkbookLimits.PartBytes || total > WorkbookLimits.TotalBytes)
                throw new UnreadableWorkbookException("The workbook unpacks to more than any recorded visit needs.");
            if (entry.Length > WorkbookLimits.RatioFromBytes && entry.Length / WorkbookLimits.Ratio > entry.CompressedLength)
                throw new UnreadableWorkbookException("The workbook is packed more tightly than any real workbook is.");
        }
    }
}
