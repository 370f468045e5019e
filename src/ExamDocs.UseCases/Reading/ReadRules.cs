using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.RuleFiles;

namespace ExamDocs.UseCases.Reading;

/// <summary>The built-in rules together with the user's own, or why the user's cannot be used.</summary>
/// <param name="Rules">Null where even one file has a fault: half of a user's rules could pass what the other half forbids.</param>
/// <param name="Faults">A sentence each: the file, the place, what is wrong, what to type.</param>
public sealed record RulesRead(KnownRules? Rules, IReadOnlyList<string> Faults);

/// <summary>Reads a folder of the user's own rules: regimes/*.json, categories/*.json and headings.json.</summary>
public static partial class ReadRules
{
    private const int MostFiles = 100;

    private const string HeadingsFile = "headings.json";

    /// <param name="folder">The folder as the user named it.</param>
    public static RulesRead From(string folder)
    {
        try
        {
            return Directory.Exists(folder) ? Read(folder) : Refused($"{folder}: there is no such folder");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Refused($"{folder}: the folder cannot be read: {e.Message}");
        }
    }

    private static RulesRead Read(string folder)
    {
        var files = Files(folder, "regimes").Concat(Files(folder, "categories")).ToList();
        var headings = Path.Combine(folder, HeadingsFile);
        if (files.Count == 0 && !File.Exists(headings))
            return Refused(
                $"{folder}: there is no rule in it; put regimes into {Path.Combine(folder, "regimes")} and categories into "
                    + $"{Path.Combine(folder, "categories")}, one .json file each, and your own words for headings into {headings}"
            );
        if (files.Count > MostFiles)
            return Refused($"{folder}: there are more than 100 rule files in it");
        var (rules, faults) = (KnownRules.BuiltIn, new List<string>());
        foreach (var (kind, path) in files)
        {
            var name = $"{kind}/{Path.GetFileName(path)}";
            var found =
                !PlainName().IsMatch(Path.GetFileName(path))
                    ? ["give the file a name of at most 60 plain letters, digits, hyphens and dots"]
                : string.Equals(kind, "regimes", StringComparison.Ordinal) ? AddRegime(path, name, ref rules)
                : AddCategory(path, name, ref rules);
            faults.AddRange(Placed(path, found));
        }
        if (File.Exists(headings))
            faults.AddRange(Placed(headings, AddHeadings(headings, ref rules)));
        return new RulesRead(faults.Count == 0 ? rules : null, faults);
    }

    /// <summary>The files of a folder of rules, each with its name there, steps divided by /.</summary>
    internal static IEnumerable<(string Name, string Path)> FilesOf(string folder) =>
        Files(folder, "regimes")
            .Concat(Files(folder, "categories"))
            .Select(f => ($"{f.Kind}/{Path.GetFileName(f.Path)}", f.Path))
            .Concat(File.Exists(Path.Combine(folder, HeadingsFile)) ? new[] { (HeadingsFile, Path.Combine(folder, HeadingsFile)) } : []);

    private static IEnumerable<string> Placed(string path, IReadOnlyList<string> faults) =>
        faults.Select(fault => fault.StartsWith('/') ? $"{path}#{fault}" : $"{path}: {fault}");

    /// <summary>Reads the user's headings last, because each category adds headings that they may rename.</summary>
    private static IReadOnlyList<string> AddHeadings(string path, ref KnownRules rules)
    {
        var (headings, faults) = RuleFile.Headings(Bytes(path));
        if (headings is null || (faults = RuleAdditions.Against(headings, rules)).Count > 0)
            return faults;
        rules = rules.With(headings);
        return [];
    }

    private static IReadOnlyList<string> AddRegime(string path, string name, ref KnownRules rules)
    {
        var bytes = Bytes(path);
        var (regime, faults) = RuleFile.Regime(bytes);
        if (regime is null || (faults = RuleAdditions.Against(regime, rules)).Count > 0)
            return faults;
        rules = rules.With(regime with { AddedFrom = name, AddedDigest = Digest(bytes) });
        return [];
    }

    private static IReadOnlyList<string> AddCategory(string path, string name, ref KnownRules rules)
    {
        var bytes = Bytes(path);
        var (category, faults) = RuleFile.Category(bytes);
        if (category is null || (faults = RuleAdditions.Against(category, rules)).Count > 0)
            return faults;
        rules = rules.With(category with { AddedFrom = name, AddedDigest = Digest(bytes) });
        return [];
    }

    private static IEnumerable<(string Kind, string Path)> Files(string folder, string kind)
    {
        var below = Path.Combine(folder, kind);
        return Directory.Exists(below)
            ? Directory
                .EnumerateFiles(below)
                .Where(f => string.Equals(Path.GetExtension(f), ".json", StringComparison.OrdinalIgnoreCase))
                .Order(StringComparer.Ordinal)
                .Select(f => (kind, f))
            : [];
    }

    /// <summary>Reads only one byte more than allowed: that is enough to see that a file is too large.</summary>
    private static ReadOnlyMemory<byte> Bytes(string path)
    {
        using var stream = File.OpenRead(path);
        var buffer = new byte[RuleFile.MaxBytes + 1];
        return buffer.AsMemory(0, stream.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false));
    }

    private static string Digest(ReadOnlyMemory<byte> readable)
    {
        using var text = new StreamReader(new MemoryStream(readable.ToArray()));
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(JsonNode.Parse(text.ReadToEnd())!.ToJsonString())));
    }

    private static RulesRead Refused(string why) => new(null, [why]);

    [GeneratedRegex(@"\A[A-Za-z0-9][A-Za-z0-9._-]{0,54}\.[A-Za-z]{4}\z", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex PlainName();
}
