using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Recalls;

/// <summary>What one particular of an item says.</summary>
/// <param name="Verdict">What it says.</param>
/// <param name="Typed">The value that says it; null where none is on record.</param>
/// <param name="Words">How that is said.</param>
internal sealed record Particular(RecallVerdict Verdict, string? Typed, Func<RecallVerdict, string?, Message> Words)
{
    public Message Reason => Words(Verdict, Typed);

    /// <summary>Of several values the worst counts; of none, nobody can tell.</summary>
    public static Particular Of(IEnumerable<string?> values, Func<string, RecallVerdict> of, Func<RecallVerdict, string?, Message> words) =>
        values
            .Where(v => !string.IsNullOrWhiteSpace(v))
            .Distinct(StringComparer.Ordinal)
            .Select(v => new Particular(of(v!), v, words))
            .DefaultIfEmpty(new Particular(RecallVerdict.CannotTell, null, words))
            .MaxBy(p => p.Verdict)!;
}

/// <summary>The reasons in words.</summary>
internal static class RecallWords
{
    public static Message Maker(RecallVerdict verdict, string? typed) =>
        typed is null
            ? (Message)$"no maker is on record"
            : verdict switch
            {
                RecallVerdict.Affected => $"maker '{typed}'",
                RecallVerdict.CannotTell => $"maker '{typed}' may be the one named",
                _ => $"another maker: '{typed}'",
            };

    public static Message Model(RecallVerdict verdict, string? typed) =>
        typed is null
            ? (Message)$"no model is on record"
            : verdict switch
            {
                RecallVerdict.Affected => $"model '{typed}'",
                RecallVerdict.CannotTell => $"model '{typed}' may be one that is named",
                _ => $"another model: '{typed}'",
            };

    public static Message PartNumber(RecallVerdict verdict, string? typed) =>
        typed is null
            ? (Message)$"no part number is on record"
            : verdict switch
            {
                RecallVerdict.Affected => $"part number '{typed}'",
                RecallVerdict.CannotTell => $"part number '{typed}' cannot be compared with those named",
                _ => $"another part number: '{typed}'",
            };

    public static Message Serial(RecallVerdict verdict, string? typed) =>
        typed is null
            ? (Message)$"no serial number is on record"
            : verdict switch
            {
                RecallVerdict.Affected => $"serial number '{typed}' is named",
                RecallVerdict.CannotTell => $"serial number '{typed}' cannot be compared with those named",
                _ => $"serial number '{typed}' is not among those named",
            };

    public static Message Batch(RecallVerdict verdict, string? typed) =>
        verdict is RecallVerdict.Affected ? (Message)$"batch '{typed}' is named" : $"the batch is not on record";

    public static Message Made(RecallVerdict verdict, string? typed) =>
        typed is null
            ? (Message)$"no date of manufacture is on record"
            : verdict switch
            {
                RecallVerdict.Affected => $"made {typed}, which is named",
                RecallVerdict.CannotTell => $"made {typed}, of which only a part is named",
                _ => $"made {typed}, which is not named",
            };
}
