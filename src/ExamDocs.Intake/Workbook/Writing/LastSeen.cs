namespace ExamDocs.Intake.Workbook.Writing;

/// <summary>What the grey columns say: the answers of an item's latest examination before.</summary>
internal static class LastSeen
{
    /// <param name="examination">The item's latest examination before; null where there is none.</param>
    /// <param name="day">When it was made.</param>
    /// <param name="criterion">The criterion asked for.</param>
    /// <returns>Null where nothing was seen for it.</returns>
    public static string? Of(ObjectNode? examination, string? day, string criterion)
    {
        var seen = (examination?.Find("observations") as ListNode)
            ?.Elements.OfType<ObjectNode>()
            .Where(o => string.Equals(o.Text("criterion"), criterion, StringComparison.Ordinal))
            .Select(o => string.Join(": ", new[] { o.Text("state"), o.Text("note") }.OfType<string>()))
            ?? [];
        return string.Join("; ", seen) is { Length: > 0 } text ? $"{day ?? "no date"} {text}" : null;
    }
}
