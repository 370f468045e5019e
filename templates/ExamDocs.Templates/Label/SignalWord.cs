namespace ExamDocs.Templates.Label;

/// <summary>The size of type of a signal word: as large as its lines allow, and never broken within a word.</summary>
internal static class SignalWord
{
    // Letter spacing of the signal word, and what is left free beside it.
    private const double Slack = 1.02;

    // Lines of a word that is smaller than the largest stand further apart: there is room.
    private const double LooseLine = 1.1;

    // The band of the hold label: its largest type, and its length within its edges.
    private const double MostBandMm = 9.2;
    private const double BandMm = 85;

    /// <summary>Millimetres at which the longest line fits the width.</summary>
    /// <param name="lines">The word, line by line.</param>
    /// <param name="widthMm">Room beside the sign.</param>
    /// <param name="mostMm">Never larger than this.</param>
    public static double Size(IReadOnlyList<string> lines, double widthMm, double mostMm) =>
        Math.Min(mostMm, widthMm / (lines.Max(l => TextWidth.Of(l, 1)) * Slack));

    public static string Style(IReadOnlyList<string> lines, double widthMm, double mostMm)
    {
        var size = Size(lines, widthMm, mostMm);
        var line = LineOf(size, mostMm);
        return FormattableString.Invariant(
            $"font-size: {size:0.##}mm; line-height: {line:0.##}mm; width: {widthMm:0.##}mm; white-space: nowrap"
        );
    }

    /// <summary>Millimetres.</summary>
    /// <inheritdoc cref="Size" path="/param"/>
    public static double Height(IReadOnlyList<string> lines, double widthMm, double mostMm) =>
        lines.Count * LineOf(Size(lines, widthMm, mostMm), mostMm);

    private static double LineOf(double size, double mostMm) => size * (size < mostMm ? LooseLine : LabelModel.SignalLine);

    /// <summary>Of the words across the hold label.</summary>
    public static string Band(string words) =>
        FormattableString.Invariant($"font-size: {Math.Min(MostBandMm, BandMm / TextWidth.Of(words, 1)):0.##}mm");
}
