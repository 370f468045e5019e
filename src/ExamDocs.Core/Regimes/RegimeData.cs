using System.Text.Json;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Regimes;

/// <summary>Reads a regime from its data file.</summary>
public static class RegimeData
{
    /// <exception cref="JsonException">Something in it is missing, unknown or of another kind.</exception>
    public static Regime Read(JsonElement file) => RuleMembers.Read(file, Regime);

    private static Regime Regime(RuleMembers members) =>
        new()
        {
            Id = members.Text("id"),
            Name = members.Text("name"),
            Laws = Periods(members, "laws", Law),
            Intervals = Periods(members, "intervals", Interval),
            Particulars = Periods(members, "particulars", Particular),
            Duties = Periods(members, "duties", Duty),
            Retention = Periods(members, "retention", Retention),
            Checks = members.ListOrNone("checks", Check),
            Reasons = members.ListOrNone("reasons", Check),
            HandsOver = members.ListOrNone("handsOver", HandedOver),
            NotConfirmed = members.Texts("notConfirmed"),
        };

    private static IReadOnlyList<Period<T>> Periods<T>(RuleMembers members, string name, Func<RuleMembers, T> entry) =>
        members.List(name, period => new Period<T>
        {
            From = period.DayOrNull("from"),
            Until = period.DayOrNull("until"),
            Entries = period.List("entries", entry),
        });

    private static Law Law(RuleMembers members) =>
        new()
        {
            Title = members.Text("title"),
            Number = members.Text("number"),
            Confidence = Known(members),
        };

    private static ExaminationInterval Interval(RuleMembers members) =>
        new()
        {
            Purposes = members.TextsOrNull("purposes"),
            Use = members.TextOrNull("use"),
            Bound = members.Word("bound", otherwise: Bound.AtMost),
            Months = members.Number("months"),
            What = members.Text("what"),
            Source = members.Text("source"),
            Confidence = Known(members),
        };

    private static Particular Particular(RuleMembers members) =>
        new()
        {
            Paragraph = members.Text("paragraph"),
            Words = members.Text("words"),
            Source = members.Text("source"),
            Confidence = Known(members),
            Checks = members.Texts("checks"),
        };

    private static Duty Duty(RuleMembers members) =>
        new()
        {
            What = members.Word<DutyKind>("what"),
            Whom = members.Word<Recipient>("whom"),
            Hired = members.FlagOrNull("hired"),
            Source = members.Text("source"),
            Confidence = Known(members),
            Checks = members.Texts("checks"),
        };

    private static RetentionRule Retention(RuleMembers members) =>
        new()
        {
            Documents = members.Words<KeptDocument>("documents"),
            Words = members.Text("words"),
            Years = members.NumberOrNull("years"),
            UntilNext = members.Flag("untilNext"),
            Last = members.NumberOrNull("last"),
            NotFound = members.Flag("notFound"),
            Source = members.Text("source"),
            Confidence = Known(members),
        };

    private static RegimeCheck Check(RuleMembers members) => new(members.Text("code"), members.Text("source"));

    private static HandedOver HandedOver(RuleMembers members) =>
        new()
        {
            Purposes = members.TextsOrNull("purposes"),
            Categories = members.TextsOrNull("categories"),
            To = members.Text("to"),
            Source = members.Text("source"),
            Confidence = Known(members),
        };

    private static Confidence Known(RuleMembers members) => members.Word<Confidence>("confidence");
}
