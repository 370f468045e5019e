using System.Reflection;
using System.Text.Json;

namespace ExamDocs.Documents.LabelSheets;

/// <summary>
/// How labels lie on what is printed: a sheet with rows and columns, a roll of which one label is one page, or a tag
/// with an eyelet. All lengths in millimetres, from the upper left corner of the page.
/// </summary>
public sealed record LabelStock
{
    /// <summary>Every stock that is known, in the order offered.</summary>
    public static IReadOnlyList<LabelStock> All { get; } = Load();

    public required string Name { get; init; }

    /// <summary>The stock in words.</summary>
    public required string What { get; init; }

    public required double PageWidthMm { get; init; }

    public required double PageHeightMm { get; init; }

    public int Rows { get; init; } = 1;

    public int Columns { get; init; } = 1;

    public required double LabelWidthMm { get; init; }

    public required double LabelHeightMm { get; init; }

    /// <summary>From the page's left edge to the first label.</summary>
    public double LeftMm { get; init; }

    /// <summary>From the page's upper edge to the first label.</summary>
    public double TopMm { get; init; }

    /// <summary>From one label's left edge to the next one's; the label's width where not given.</summary>
    public double PitchXMm
    {
        get => field > 0 ? field : LabelWidthMm;
        init;
    }

    /// <summary>From one label's upper edge to the next one's; the label's height where not given.</summary>
    public double PitchYMm
    {
        get => field > 0 ? field : LabelHeightMm;
        init;
    }

    /// <summary>The hole of a tag with room round it: nothing is printed in here. Null where there is none.</summary>
    public Circle? Eyelet { get; init; }

    /// <summary>Labels on one page.</summary>
    public int PerSheet => Rows * Columns;

    /// <summary>The labels that it is for.</summary>
    public LabelFormat Format =>
        LabelFormat.OfShape(LabelWidthMm, LabelHeightMm) ?? throw new InvalidOperationException($"no label has the shape of {Name}");

    /// <summary>Size of a label on it as a part of its own size.</summary>
    public double Scale => LabelWidthMm / Format.WidthMm;

    /// <summary>The stock of this name; null where there is none.</summary>
    public static LabelStock? Find(string name) => All.FirstOrDefault(s => string.Equals(s.Name, name, StringComparison.Ordinal));

    /// <summary>Upper left corner of the place, counted from 0 along the rows.</summary>
    internal (double X, double Y) Place(int place) => (LeftMm + (place % Columns * PitchXMm), TopMm + (place / Columns * PitchYMm));

    private static LabelStock[] Load()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("label-stocks.json")
            ?? throw new InvalidOperationException("there is no label-stocks.json");
        return JsonSerializer.Deserialize<LabelStock[]>(stream, StockFile.Options) ?? [];
    }
}
