namespace ExamDocs.Intake.Workbook.Writing;

/// <summary>Where along each rope diameters were measured last, as rows without a reading: the next visit measures there again.</summary>
internal static class MeasuredPlaces
{
    /// <param name="examinations">All of the record; each item's latest that measured counts.</param>
    public static IEnumerable<CaptureRow> OfLastTime(IEnumerable<CapturedExamination> examinations) =>
        examinations
            .Where(e => e is { Item: not null, Day: not null } && Measured(e).Any())
            .GroupBy(e => e.Item!, StringComparer.Ordinal)
            .SelectMany(g => Rows(g.Key, g.MaxBy(e => e.Day, StringComparer.Ordinal)!));

    private static IEnumerable<CaptureRow> Rows(string item, CapturedExamination last)
    {
        foreach (var station in Measured(last))
        {
            var row = new CaptureRow();
            row.Put("item", item);
            row.Put("position mm", station.Find("positionMm"));
            yield return row;
        }
    }

    private static IEnumerable<ObjectNode> Measured(CapturedExamination examination) =>
        examination
            .Entries("diameters")
            .Where(d => d.Find("positionMm") is NumberNode && d.Find("readingsMm") is ListNode { Elements.Count: > 0 });
}
