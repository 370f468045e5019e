using System.Globalization;
using ExamDocs.Intake.Workbook.Reading;

namespace ExamDocs.Intake.Drafting;

/// <summary>
/// Makes a value of the record format from what somebody typed in a field, and the other way round. What cannot be read in one way only
/// stays as it was typed, for the reader to object to.
/// </summary>
internal static class DraftValue
{
    private static readonly char[] BetweenReadings = [' ', '\t', '\n', '/', ';', '\u00A0'];
    private static readonly char[] BetweenStandards = [',', ';', '\n'];

    /// <param name="member">The member that it is the value of.</param>
    /// <param name="typed">As it was typed.</param>
    /// <returns>Null where nothing was typed.</returns>
    public static SourceNode? Of(string member, string? typed)
    {
        if (string.IsNullOrWhiteSpace(typed))
            return null;
        var text = typed.Replace("\r\n", "\n", StringComparison.Ordinal).Trim();
        return member switch
        {
            "examinedOn"
            or "reportedOn"
            or "manufactured"
            or "purchased"
            or "firstUsed"
            or "obsoleteOn"
            or "lastExamined"
            or "nextBy"
            or "becomesDangerOn"
            or "on"
            or "doneOn"
            or "withdrawnOn" => new TextNode("", TypedDate.Of(text, null)?.Iso ?? text),
            "value" or "positionMm" or "userMassKg" or "cleanings" => Number(text),
            "neverUsed" or "selfEmployed" or "imminentRisk" or "notMarked" => Flag(text),
            "readingsMm" => new ListNode("", [.. Parts(text, BetweenReadings).Select(Number)]),
            "standards" => new ListNode("", [.. Parts(text, BetweenStandards).Select(t => new TextNode("", t))]),
            _ => new TextNode("", text),
        };
    }

    /// <summary>As somebody would type it; empty where there is nothing.</summary>
    public static string Text(SourceNode? node) =>
        node switch
        {
            TextNode t => t.Text,
            NumberNode n => n.Raw,
            BooleanNode b => b.Value ? "yes" : "no",
            ListNode l => string.Join(l.Elements.Any(e => e is NumberNode) ? " " : "; ", l.Elements.Select(Text)),
            _ => "",
        };

    private static string[] Parts(string text, char[] between) =>
        text.Split(between, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    private static SourceNode Number(string text) =>
        TypedNumber.Of(text).Plain is { } plain
        && decimal.TryParse(plain, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var n)
            ? new NumberNode("", n.ToString(CultureInfo.InvariantCulture))
            : new TextNode("", text);

    private static SourceNode Flag(string text) =>
        text switch
        {
            "yes" => new BooleanNode("", true),
            "no" => new BooleanNode("", false),
            _ => new TextNode("", text),
        };
}
