using ExamDocs.Core.Findings;
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
        return members.TakeOnly(name) switch
        {
            null => null,
            TextNode placeholder when members.IsPlaceholder(placeholder, limits) => null,
            TextNode text => DateText.ReadDay(text.Text.Trim())
                ?? Unreadable<LocalDate?>(members, text, day =>
                    $"'{day}' cannot be read as a date; a date is text, for example 2026-05-11"
                ),
            var other => members.ReportKind<LocalDate?>(other, $"a date as text, for example 2026-05-11"),
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
                ?? Unreadable<PartialDate>(members, text, date => $"'{date}' can be read as a date in more than one way, or in none"),
            var other => members.ReportKind<PartialDate>(other, $"a date as text, for example 2024-02"),
        };

    private static T? Unreadable<T>(Members members, TextNode text, Func<string, Message> say)
    {
        members.Report(IntakeRules.UnreadableDate, text.Pointer, say(TextGuard.Cut(text.Text, Members.MostShown)));
        return default;
    }
}
