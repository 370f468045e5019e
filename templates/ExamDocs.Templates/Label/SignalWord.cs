namespace ExamDocs.Templates.Label;

/// <summary>The size of type of a signal word: as large as its lines allow, and never broken within a word.</summary>
internal static class SignalWord
{
    // Letter spacing of the signal word, and what is left free beside it.
    private const double Slack = 1.02;

    /// <summary>Millimetres at which the longest line fits the width.</summary>
    /// <param name="lines">The word, line by line.</param>
    /// <param name="widthMm">Room beside the sign.</param>
    /// <param name="mostMm">Never larger than this.</param>
    public static double Size(IReadOnlyList<string> lines, double widthMm, double mostMm) =>
        Math.Min(mostMm, widthMm / (lines.Max(l => TextWidth.Of(l, 1)) * Slack));

    /// <summary>Nothing where the largest size fits, which the style sheet has; else the size in place of it.</summary>
    public static string? Style(IReadOnlyList<string> lines, double widthMm, double mostMm)
    {
        var size = Size(lines, widthMm, mostMm);
        return size >= mostMm ? null : FormattableString.Invariant($"font-size: {size:0.##}mm; line-height: 1.1; width: {widthMm}mm; white-space: nowrap");
    }
}
