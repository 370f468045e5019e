using System.Globalization;

namespace ExamDocs.Documents.LabelSheets;

/// <summary>What is wrong with a stock, in sentences without a full stop.</summary>
public static class StockFaults
{
    private const double LargestMm = 2000;
    private const int MostPlaces = 1000;
    private const double Slack = 0.005;

    /// <summary>Everything that is wrong with its figures, the coarse faults alone where there are any; empty where nothing is.</summary>
    public static IEnumerable<string> Of(LabelStock stock)
    {
        var coarse = Coarse(stock).ToList();
        return coarse.Count > 0 ? coarse : Fine(stock);
    }

    private static IEnumerable<string> Coarse(LabelStock stock)
    {
        if (string.IsNullOrWhiteSpace(stock.Name))
            yield return "name is blank";
        (string Name, double Value)[] sizes =
        [
            ("pageWidthMm", stock.PageWidthMm),
            ("pageHeightMm", stock.PageHeightMm),
            ("labelWidthMm", stock.LabelWidthMm),
            ("labelHeightMm", stock.LabelHeightMm),
            ("eyelet.diameterMm", stock.Eyelet?.DiameterMm ?? 1),
        ];
        foreach (var (name, value) in sizes.Where(s => s.Value is not (> 0 and <= LargestMm)))
            yield return FormattableString.Invariant($"{name} is {value}; it is more than 0 and at most {LargestMm} mm");
        (string Name, double Value)[] places =
        [
            ("leftMm", stock.LeftMm),
            ("topMm", stock.TopMm),
            ("eyelet.xMm", stock.Eyelet?.XMm ?? 0),
            ("eyelet.yMm", stock.Eyelet?.YMm ?? 0),
        ];
        foreach (var (name, value) in places.Where(s => s.Value is not (>= 0 and <= LargestMm)))
            yield return FormattableString.Invariant($"{name} is {value}; it is at least 0 and at most {LargestMm} mm");
        if (stock.Rows < 1 || stock.Columns < 1 || (long)stock.Rows * stock.Columns > MostPlaces)
            yield return FormattableString.Invariant($"rows and columns are at least 1 and make at most {MostPlaces} places");
    }

    private static IEnumerable<string> Fine(LabelStock stock)
    {
        var placing = new Placing();
        if (LabelFormat.OfShape(stock.LabelWidthMm, stock.LabelHeightMm) is null)
            yield return FormattableString.Invariant(
                $"no label has the shape of {stock.LabelWidthMm} x {stock.LabelHeightMm} mm; there are {Formats}"
            );
        else if (!stock.Format.Holds(stock.Scale))
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"a label of {stock.LabelWidthMm} mm would be printed at {stock.Scale * 100:0} %; it is "
                    + $"{stock.Format.SmallestScale * 100:0} to {LabelFormat.LargestScale * 100:0} % of {stock.Format.WidthMm} mm"
            );
        else if (stock.Eyelet is not null && stock.PerSheet > 1)
            yield return "an eyelet is for a tag with one label on it";
        else if (placing.Objection(stock) is { } objection)
            yield return objection.Replace(
                "with this offset a label would lie off the sheet",
                "the labels do not lie on the page",
                StringComparison.Ordinal
            );
        if (stock.Columns > 1 && stock.PitchXMm < stock.LabelWidthMm - Slack)
            yield return "labels would overlap: pitchXMm is less than labelWidthMm";
        if (stock.Rows > 1 && stock.PitchYMm < stock.LabelHeightMm - Slack)
            yield return "labels would overlap: pitchYMm is less than labelHeightMm";
    }

    private static string Formats =>
        string.Join(
            ", ",
            LabelFormat
                .All.Concat(LabelFormat.Faces)
                .Select(f => FormattableString.Invariant($"{f.WidthMm} x {f.HeightMm} mm ({f.Type.Kind})"))
        );
}
