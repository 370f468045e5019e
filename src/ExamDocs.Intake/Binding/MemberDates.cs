using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Intake.Binding;

/// <summary>Reads members that hold a date. One that cannot be read in one way only is reported and counts as missing.</summary>
internal static class MemberDates
{
    /// <param name="members">Where it stands.</param>
    /// <param name="name">The member.</param>
    /// <param name="limits">Without it an item could serve longer: that it is not known is then an error.</param>
    public static LocalDate? Date(this Members members, string name, bool limits = false)
    {
        const string kind = "a date as text, for example 2026-05-11";
        return members.TakeOnly(name) switch
        {
            null => null,
            TextNode placeholder when members.IsPlaceholder(placeholder, limits) => null,
            TextNode text => DateText.ReadDay(text.Text.Trim()) ?? Unreadable<LocalDate?>(members, text, $"cannot be read as {kind}"),
            var other => members.ReportKind<LocalDate?>(other, kind),
        };
    }

    /// <summary>A date of which only the year, or year and month, may be known.</summary>
    /// <inheritdoc cref="Date"/>
    public static PartialDate? Partial(this Members members, string name, bool limits = false) =>
        members.TakeOnly(name) switch
        {
            null => null,
            TextNode placeholder when members.IsPlaceholder(placeholder, limits) => null,
            TextNode text => DateText.ReadPartial(text.Text.Trim())
                ?? Unreadable<PartialDate>(members, text, "is not a date that can be read in one way only"),
            var other => members.ReportKind<PartialDate>(other, "a date as text, for example 2024-02"),
        };

    private static T? Unreadable<T>(Members members, TextNode text, string why)
    {
        members.Report(IntakeRules.UnreadableDate, text.Pointer, $"'{TextGuard.Cut(text.Text, Members.MostShown)}' {why}");
        return default;
    }
}
