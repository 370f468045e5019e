using System.Globalization;

namespace ExamDocs.Intake.Binding;

/// <summary>Reads members that hold text: it must be printable as it was typed, and short enough to print whole.</summary>
internal static class MemberTexts
{
    /// <summary>Of two texts the first.</summary>
    public static string? Text(this Members members, string name) => Limited(members, name, TextGuard.MaxText);

    /// <summary>An identity: short, on one line. Of a longer one the beginning is kept: whatever is said of the item repeats it.</summary>
    public static string? Identity(this Members members, string name) =>
        Limited(members, name, TextGuard.MaxIdentity) is { } identity ? TextGuard.Cut(identity, TextGuard.MaxIdentity) : null;

    /// <summary>A list of texts; null where the list is missing or empty.</summary>
    public static IReadOnlyList<string>? Texts(this Members members, string name)
    {
        var texts = members
            .Elements(name)
            .Select(e => e is TextNode t ? Guarded(members, t, TextGuard.MaxIdentity) : members.ReportKind<string>(e, $"text"))
            .OfType<string>()
            .ToList();
        return texts.Count == 0 ? null : texts;
    }

    /// <summary>The text without blanks around it, reported where it cannot be printed as it is; null where nothing is left.</summary>
    /// <param name="members">Where it stands.</param>
    /// <param name="node">The text as typed.</param>
    /// <param name="longest">Characters, inclusive.</param>
    public static string? Guarded(this Members members, TextNode node, int longest)
    {
        var text = node.Text.Trim();
        if (TextGuard.Objection(text) is { } objection)
            members.Report(IntakeRules.UnprintableText, node.Pointer, objection);
        if (text.Length > longest)
            members.Report(IntakeRules.TextTooLong, node.Pointer, $"the text has {text.Length} characters; at most {longest} are allowed");
        return text.Length == 0 ? null : text;
    }

    private static string? Limited(Members members, string name, int longest)
    {
        string? first = null;
        foreach (var member in members.TakeTyped(name))
        {
            var text = member is TextNode t ? Guarded(members, t, longest) : members.ReportKind<string>(member, $"text in quotation marks");
            first ??= text;
        }
        return first;
    }
}
