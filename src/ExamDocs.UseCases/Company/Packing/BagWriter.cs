using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.UseCases.Company.Packing;

/// <summary>
/// Writes a bag (RFC 8493, version 1.0) as one ZIP with one folder in it, file by file, so that only one file is in memory at a time. The
/// same files give the same bytes.
/// </summary>
internal sealed class BagWriter : IDisposable
{
    /// <summary>The first day that a ZIP can name.</summary>
    private static readonly DateTimeOffset Made = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private readonly ZipArchive _zip;
    private readonly string _folder;
    private readonly SortedDictionary<string, string> _payload = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, string> _tags = new(StringComparer.Ordinal);
    private long _octets;

    /// <param name="to">Where the ZIP goes; it is left open.</param>
    /// <param name="folder">Name of the folder in it.</param>
    public BagWriter(Stream to, string folder) => (_zip, _folder) = (new ZipArchive(to, ZipArchiveMode.Create, leaveOpen: true), folder);

    /// <summary>Adds a file of the payload.</summary>
    /// <param name="name">Its place below data, with slashes.</param>
    /// <param name="content">The whole file.</param>
    public void Add(string name, byte[] content)
    {
        var path = $"data/{name}";
        _payload.Add(path, Put(path, content));
        _octets += content.Length;
    }

    /// <summary>Writes what says what the bag is and lists its files.</summary>
    /// <param name="facts">What else stands in bag-info.txt.</param>
    /// <param name="day">The day on which it is made.</param>
    public void Finish(IEnumerable<(string Name, string Value)> facts, LocalDate day)
    {
        var sums = string.Create(CultureInfo.InvariantCulture, $"{_octets}.{_payload.Count}");
        var info = facts
            .Append(("Bagging-Date", LocalDatePattern.Iso.Format(day)))
            .Append(("Payload-Oxum", sums))
            .OrderBy(f => f.Item1, StringComparer.Ordinal);
        Tag("bag-info.txt", string.Concat(info.Select(f => $"{f.Item1}: {OneLine(f.Item2)}\n")));
        Tag("bagit.txt", "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n");
        Tag("manifest-sha256.txt", Sums(_payload));
        Put("tagmanifest-sha256.txt", Encoding.UTF8.GetBytes(Sums(_tags)));
    }

    public void Dispose() => _zip.Dispose();

    private void Tag(string name, string text) => _tags.Add(name, Put(name, Encoding.UTF8.GetBytes(text)));

    /// <returns>Its SHA-256.</returns>
    private string Put(string path, byte[] content)
    {
        // PDFs and pictures are packed already.
        var level = path.EndsWith(".pdf", StringComparison.OrdinalIgnoreCase) ? CompressionLevel.NoCompression : CompressionLevel.Optimal;
        var entry = _zip.CreateEntry($"{_folder}/{path}", level);
        entry.LastWriteTime = Made;
        using var stream = entry.Open();
        stream.Write(content);
        return Convert.ToHexStringLower(SHA256.HashData(content));
    }

    private static string Sums(SortedDictionary<string, string> files) => string.Concat(files.Select(f => $"{f.Value}  {f.Key}\n"));

    /// <summary>A value that goes on over another line would be read as one of another name.</summary>
    private static string OneLine(string text) =>
        string.Join(' ', string.Concat(text.Select(c => char.IsControl(c) ? ' ' : c)).Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
