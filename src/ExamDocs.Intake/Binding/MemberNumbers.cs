using System.Globalization;

namespace ExamDocs.Intake.Binding;

/// <summary>Reads members that hold numbers. A number outside of its bounds is reported and counts as missing.</summary>
internal static class MemberNumbers
{
    /// <param name="members">Where it stands.</param>
    /// <param name="name">The member.</param>
    /// <param name="least">Smallest value allowed, inclusive.</param>
    /// <param name="most">Largest value allowed, inclusive.</param>
    /// <param name="limits">Without it an item could serve longer: that it is not known is then an error.</param>
    public static int? Whole(this Members members, string name, int least, int most, bool limits = false)
    {
        if (Number(members, name, least, most, limits) is not { } number)
            return null;
        if (number == decimal.Truncate(number))
            return (int)number;
        members.Report(IntakeRules.NumberOutOfRange, $"{members.Pointer}/{name}", $"{number} is not a whole number");
        return null;
    }

    /// <inheritdoc cref="Whole"/>
    public static decimal? Number(this Members members, string name, decimal least, decimal most, bool limits = false) =>
        members.TakeOnly(name) is { } member && !members.IsPlaceholder(member, limits) ? Read(members, member, least, most) : null;

    /// <summary>A list of numbers; an unreadable one is null in its place.</summary>
    public static IReadOnlyList<decimal?> Numbers(this Members members, string name, decimal least, decimal most) =>
        [
            .. members
                .Elements(name)
                .Select(e => Members.IsMissing(e) ? members.ReportKind<decimal?>(e, $"a number") : Read(members, e, least, most)),
        ];

    private static decimal? Read(Members members, SourceNode member, decimal least, decimal most)
    {
        if (member is not NumberNode number)
            return members.ReportKind<decimal?>(member, $"a number");
        if (
            decimal.TryParse(number.Raw, NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
            && value >= least
            && value <= most
        )
            return value;
        members.Report(
            IntakeRules.NumberOutOfRange,
            number.Pointer,
            $"{TextGuard.Cut(number.Raw, Members.MostShown)} is not a number from {least} to {most}"
        );
        return null;
    }
}
