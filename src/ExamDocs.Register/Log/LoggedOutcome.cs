using System.Text.Json;
using ExamDocs.Register.Model;

namespace ExamDocs.Register.Log;

/// <summary>An outcome as the log has it.</summary>
internal static class LoggedOutcome
{
    public static CanonicalObject Json(RememberedOutcome outcome) =>
        new CanonicalObject()
            .Text("item", Whole(outcome.Item))
            .Text("outcome", Whole(outcome.Outcome))
            .Texts("codes", outcome.Codes.Select(StorableText.Of))
            .Day("examinedOn", outcome.ExaminedOn)
            .Day("until", outcome.Until)
            .Day("nextBy", outcome.NextBy)
            .Texts("parts", outcome.Parts.Select(StorableText.Of))
            .True("neverReleasable", outcome.NeverReleasable);

    public static RememberedOutcome Read(JsonElement json) =>
        new(json.TextOrNull("item"), json.Text("outcome"), json.Texts("codes"))
        {
            ExaminedOn = json.DayOrNull("examinedOn"),
            Until = json.DayOrNull("until"),
            NextBy = json.DayOrNull("nextBy"),
            Parts = json.Texts("parts"),
            NeverReleasable = json.TryGetProperty("neverReleasable", out var never) && never.GetBoolean(),
        };

    public static bool IsSame(RememberedOutcome one, RememberedOutcome other) =>
        string.Equals(Json(one).ToString(), Json(other).ToString(), StringComparison.Ordinal);

    /// <summary>Whether two visits decided the same of the same items, in the same order.</summary>
    public static bool AreSame(IReadOnlyList<RememberedOutcome> some, IReadOnlyList<RememberedOutcome> others) =>
        some.Count == others.Count && some.Zip(others).All(pair => IsSame(pair.First, pair.Second));

    private static string? Whole(string? text) => text is null ? null : StorableText.Of(text);
}
