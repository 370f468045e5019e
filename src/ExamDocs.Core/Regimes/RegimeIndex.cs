using System.Reflection;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Regimes;

/// <summary>The built-in regimes, one data file each.</summary>
public static class RegimeIndex
{
    /// <summary>The explicit index: a new regime is one file in Regimes/Data and one line here.</summary>
    private static readonly string[] Index = ["gb-loler", "ni-loler", "gb-wah", "eu-en365", "de", "fr", "au-nz", "us"];

    public static IReadOnlyList<Regime> All { get; } = [.. Index.Select(Load)];

    /// <summary>Names of the built-in data files, for the test that finds a forgotten index line.</summary>
    internal static IEnumerable<string> DataFiles =>
        typeof(RegimeIndex)
            .Assembly.GetManifestResourceNames()
            .Where(n => n.StartsWith("regimes/", StringComparison.Ordinal))
            .Select(n => n["regimes/".Length..^".json".Length]);

    /// <summary>The built-in regime of this id; null where there is none.</summary>
    public static Regime? Find(string? id) => All.FirstOrDefault(r => string.Equals(r.Id, id, StringComparison.Ordinal));

    private static Regime Load(string id)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream($"regimes/{id}.json");
        return Read(id, stream);
    }

    /// <exception cref="InvalidOperationException">The data file is missing or not sound.</exception>
    internal static Regime Read(string id, Stream? data)
    {
        if (data is null)
            throw new InvalidOperationException($"the index names {id}, and there is no Regimes/Data/{id}.json");
        using var file = RuleMembers.Parse(data);
        var regime = RegimeData.Read(file.RootElement);
        var faults = SoundRegime.Faults(regime);
        return faults.Count == 0 && string.Equals(regime.Id, id, StringComparison.Ordinal)
            ? regime
            : throw new InvalidOperationException($"Regimes/Data/{id}.json: {string.Join("; ", faults.Prepend($"id {regime.Id}"))}");
    }
}
