using ExamDocs.Core.Findings;
using ExamDocs.Intake.Vocabulary;

namespace ExamDocs.Intake.Binding;

/// <summary>
/// Reads members for which a text such as n/a or a dash is no value: it is reported and counts as missing, so that it satisfies
/// nothing and is printed nowhere.
/// </summary>
internal static class MemberPlaceholders
{
    /// <summary>A text that says something: a name, an address, a description, grounds.</summary>
    public static string? FilledText(this Members members, string name) =>
        members.Text(name) is { } text && !IsPlaceholder(members, name, text, Placeholder.Of(text), isMark: false) ? text : null;

    /// <summary>What is marked on an item, or names its maker or model.</summary>
    public static string? MarkText(this Members members, string name) =>
        members.Text(name) is { } text && !IsPlaceholder(members, name, text, Placeholder.OfMark(text), isMark: true) ? text : null;

    /// <summary>A serial, a mark or a number of a part or a document.</summary>
    public static string? Marking(this Members members, string name) =>
        members.Identity(name) is { } text && !IsPlaceholder(members, name, text, Placeholder.OfMark(text), isMark: true) ? text : null;

    /// <summary>An identity within the record: one that may be meant, as X, is taken as it is.</summary>
    public static string? OwnId(this Members members, string name) =>
        members.Identity(name) is { } text
        && !(Placeholder.Of(text) is { } kind and not PlaceholderKind.Unclear && IsPlaceholder(members, name, text, kind, isMark: false))
            ? text
            : null;

    /// <summary>Whether a date or a number is missing because a text stands for none; it has then been reported.</summary>
    /// <param name="members">Where it stands.</param>
    /// <param name="node">The value.</param>
    /// <param name="limits">Without it an item could serve longer: one that is not known is then an error.</param>
    public static bool IsPlaceholder(this Members members, SourceNode node, bool limits)
    {
        if (node is not TextNode { Text: var typed } || Placeholder.Of(typed.Trim()) is not { } kind || typed.Trim()[0] == '0')
            return false;
        Report(members, node.Pointer, typed.Trim(), kind is not PlaceholderKind.NoValue && (limits || kind is PlaceholderKind.AsAbove));
        return true;
    }

    private static bool IsPlaceholder(Members members, string name, string text, PlaceholderKind? kind, bool isMark)
    {
        if (kind is null)
            return false;
        Report(members, $"{members.Pointer}/{name}", text, kind is PlaceholderKind.AsAbove || (isMark && kind is PlaceholderKind.Unclear));
        return true;
    }

    private static void Report(Members members, string pointer, string text, bool isAsked)
    {
        RuleInfo rule = isAsked ? PlaceholderRules.ValueIsAsked : PlaceholderRules.StandsForNothing;
        members.Report(
            rule,
            pointer,
            isAsked
                ? (Message)$"'{TextGuard.Cut(text, Members.MostShown)}' does not say which value it is"
                : $"'{TextGuard.Cut(text, Members.MostShown)}' is no value and counts as missing"
        );
    }
}
