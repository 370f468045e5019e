using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace ExamDocs.Documents.LabelSheets;

/// <summary>How labels lie on a sheet; all lengths in millimetres, from the upper left corner.</summary>
public sealed record LabelStock
{
    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        RespectRequiredConstructorParameters = true,
    };

    /// <summary>Every stock that is known, in the order offered.</summary>
    public static IReadOnlyList<LabelStock> All { get; } = Load();

    public required string Name { get; init; }

    /// <summary>The stock in words.</summary>
    public required string What { get; init; }

    public required double PageWidthMm { get; init; }

    public required double PageHeightMm { get; init; }

    public required int Rows { get; init; }

    public required int Columns { get; init; }

    public required double LabelWidthMm { get; init; }

    public required double LabelHeightMm { get; init; }

    /// <summary>From the page's left edge to the first label.</summary>
    public required double LeftMm { get; init; }

    /// <summary>From the page's upper edge to the first label.</summary>
    public required double TopMm { get; init; }

    /// <summary>From one label's left edge to the next one's.</summary>
    public required double PitchXMm { get; init; }

    /// <summary>From one label's upper edge to the next one's.</summary>
    public required double PitchYMm { get; init; }

    /// <summary>Labels on one sheet.</summary>
    public int PerSheet => Rows * Columns;

    /// <summary>The stock of this name; null where there is none.</summary>
    public static LabelStock? Find(string name) => All.FirstOrDefault(s => string.Equals(s.Name, name, StringComparison.Ordinal));

    /// <summary>Upper left corner of the place, counted from 0 along the rows.</summary>
    internal (double X, double Y) Place(int place) =>
        (LeftMm + (place % Columns * PitchXMm), TopMm + (place / Columns * PitchYMm));

    private static LabelStock[] Load()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("label-stocks.json")
            ?? throw new InvalidOperationException("there is no label-stocks.json");
        return JsonSerializer.Deserialize<LabelStock[]>(stream, Options) ?? [];
    }
}
