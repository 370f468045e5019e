namespace ExamDocs.Intake.Tests.Workbook;

/// <summary>A tree as text without pointers, its members sorted: equal text means equal content.</summary>
internal static class TreeText
{
    public static string Of(SourceNode node) =>
        node switch
        {
            ObjectNode o => "{"
                + string.Join(
                    ",",
                    o.Members.Where(m => m.Value is not NullNode).Select(m => $"{m.Key}:{Of(m.Value)}").Order(StringComparer.Ordinal)
                )
                + "}",
            ListNode l => "[" + string.Join(",", l.Elements.Select(Of)) + "]",
            TextNode t => $"\"{t.Text}\"",
            NumberNode n => decimal.Parse(n.Raw, System.Globalization.NumberStyles.Float, System.Globalization.CultureInfo.InvariantCulture)
                .ToString("0.############", System.Globalization.CultureInfo.InvariantCulture),
            BooleanNode b => b.Value ? "true" : "false",
            _ => "null",
        };

    /// <summary>The elements of a list of the record, one text each.</summary>
    public static List<string> List(SourceNode root, string list) =>
        [
            .. (
                (ListNode)((ObjectNode)root).Members.Single(m => string.Equals(m.Key, list, StringComparison.Ordinal)).Value
            ).Elements.Select(Of),
        ];
}
