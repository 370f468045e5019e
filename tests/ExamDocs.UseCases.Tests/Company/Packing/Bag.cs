using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace ExamDocs.UseCases.Tests.Company.Packing;

/// <summary>Checks a bag by the rules of RFC 8493 alone, without a line of the program's.</summary>
internal static partial class Bag
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <returns>What is wrong, a sentence each; empty where the bag is complete and valid (section 3).</returns>
    public static IReadOnlyList<string> Faults(byte[] zip)
    {
        var (faults, files) = (new List<string>(), new Dictionary<string, byte[]>(StringComparer.Ordinal));
        using (var archive = new ZipArchive(new MemoryStream(zip)))
        {
            foreach (var entry in archive.Entries)
            {
                if (Objection(entry.FullName) is { } objection)
                    faults.Add($"{entry.FullName} {objection}");
                else if (!files.TryAdd(entry.FullName, Read(entry)))
                    faults.Add($"{entry.FullName} is there twice");
            }
        }
        // Section 4: one directory, in which the bag is.
        var tops = files.Keys.Select(n => n.Split('/')[0]).Distinct(StringComparer.Ordinal).ToList();
        if (tops.Count != 1)
            return [.. faults, "it has not one directory at its top"];
        var bag = files.ToDictionary(f => f.Key[(tops[0].Length + 1)..], f => f.Value, StringComparer.Ordinal);
        return [.. faults, .. Declaration(bag), .. Info(bag), .. Manifests(bag)];
    }

    public static IReadOnlyDictionary<string, byte[]> Files(byte[] zip)
    {
        using var archive = new ZipArchive(new MemoryStream(zip));
        return archive.Entries.ToDictionary(
            e => e.FullName[(e.FullName.IndexOf('/', StringComparison.Ordinal) + 1)..],
            Read,
            StringComparer.Ordinal
        );
    }

    /// <summary>Section 2.1.1: exactly these two lines, without a byte order mark.</summary>
    private static IEnumerable<string> Declaration(Dictionary<string, byte[]> bag)
    {
        if (!bag.TryGetValue("bagit.txt", out var bytes))
            yield return "bagit.txt is missing";
        else if (!DeclarationLines().IsMatch(Strict.GetString(bytes)))
            yield return "bagit.txt is not the declaration of a bag";
    }

    /// <summary>Section 2.2.2: labels and values; the octets and files of the payload have to be those that are there.</summary>
    private static IEnumerable<string> Info(Dictionary<string, byte[]> bag)
    {
        if (!bag.TryGetValue("bag-info.txt", out var bytes))
            yield break;
        foreach (var line in Strict.GetString(bytes).Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            if (!InfoLine().IsMatch(line))
                yield return $"bag-info.txt has a line without a label: {line}";
        }
        var payload = bag.Where(f => f.Key.StartsWith("data/", StringComparison.Ordinal)).ToList();
        if (
            !Strict
                .GetString(bytes)
                .Contains(
                    FormattableString.Invariant($"Payload-Oxum: {payload.Sum(f => f.Value.Length)}.{payload.Count}\n"),
                    StringComparison.Ordinal
                )
        )
            yield return "Payload-Oxum is another";
    }

    /// <summary>
    /// Sections 2.1.3 and 2.2.1: every file of the payload is listed once with its sum and no other is; every tag file but the tag manifest.
    /// </summary>
    private static IEnumerable<string> Manifests(Dictionary<string, byte[]> bag)
    {
        var payload = bag.Keys.Where(n => n.StartsWith("data/", StringComparison.Ordinal));
        var tags = bag.Keys.Where(n => !n.StartsWith("data/", StringComparison.Ordinal) && n is not "tagmanifest-sha256.txt");
        return List(bag, "manifest-sha256.txt", payload).Concat(List(bag, "tagmanifest-sha256.txt", tags));
    }

    private static IEnumerable<string> List(Dictionary<string, byte[]> bag, string manifest, IEnumerable<string> files)
    {
        if (!bag.TryGetValue(manifest, out var bytes))
        {
            yield return $"{manifest} is missing";
            yield break;
        }
        var listed = new HashSet<string>(StringComparer.Ordinal);
        foreach (var line in Strict.GetString(bytes).Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            if (SumLine().Match(line) is not { Success: true } match)
            {
                yield return $"{manifest} has a line that is none: {line}";
                continue;
            }
            // Only these three are written by their codes.
            var path = match
                .Groups["path"]
                .Value.Replace("%0A", "\n", StringComparison.OrdinalIgnoreCase)
                .Replace("%0D", "\r", StringComparison.OrdinalIgnoreCase)
                .Replace("%25", "%", StringComparison.Ordinal);
            if (!listed.Add(path))
                yield return $"{path} is listed twice";
            if (!bag.TryGetValue(path, out var content))
                yield return $"{path} is listed and not there";
            else if (
                !string.Equals(
                    match.Groups["sum"].Value,
                    Convert.ToHexStringLower(SHA256.HashData(content)),
                    StringComparison.OrdinalIgnoreCase
                )
            )
                yield return $"{path} has another sum";
        }
        foreach (var file in files.Where(f => !listed.Contains(f)))
            yield return $"{file} is there and not listed";
    }

    private static string? Objection(string name) =>
        name.StartsWith('/') || name.Contains('\\', StringComparison.Ordinal) || name.Contains(':', StringComparison.Ordinal)
            ? "is no place below the bag"
        : name.Split('/').Any(part => part is "" or "." or "..") ? "leads out of the bag"
        : null;

    private static byte[] Read(ZipArchiveEntry entry)
    {
        using var stream = entry.Open();
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }

    [GeneratedRegex(@"\ABagIt-Version: 1\.0\r?\nTag-File-Character-Encoding: UTF-8\r?\n\z", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex DeclarationLines();

    [GeneratedRegex(@"\A[^\s:][^:]*: \S.*\z", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex InfoLine();

    [GeneratedRegex(
        @"\A(?<sum>[0-9a-fA-F]{64})[ \t]+\*?(?<path>\S.*)\z",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex SumLine();
}
