using System.Text.Json;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Verifying;

/// <summary>Do the rules, applied once more to the embedded record, give the embedded outcomes?</summary>
internal static class OutcomeQuestion
{
    private const string Question = "outcome";

    /// <param name="contents">The data embedded in the document.</param>
    /// <param name="items">Its items as determined once more, in the order printed.</param>
    public static Statement Ask(DocumentContents contents, IReadOnlyList<DeterminedItem> items)
    {
        var expected = FindingsFile.Write(items, EmbeddedFiles.RecordName);
        if (expected.AsSpan().SequenceEqual(contents.Outcome))
            return Statement.Holds(Question, $"the record within, determined once more, gives the same outcomes for the same reasons");
        var other = contents.Basis.Version is var version && !string.Equals(version, ProgramVersion.Current, StringComparison.Ordinal);
        if (Results(contents.Outcome) is not { } said)
            return Statement.Fails(Question, $"the outcomes within cannot be read");
        var differing = Results(expected)!.Except(said).Select(r => (Message)$"{r.Id} is {r.Words}").ToList();
        var what =
            differing.Count > 0 || said.Count != items.Count
                ? (Message)$"the record within gives other outcomes: {Message.Join(", ", differing.Take(5))}"
                : null;
        return (what, other) switch
        {
            (null, true) => Statement.Holds(
                Question,
                $"the record within, determined once more, gives the same outcomes; it was decided by version {version}, "
                    + $"whose reasons may be worded otherwise"
            ),
            (null, false) => Statement.Fails(Question, $"the reasons within are not those that the record within gives"),
            (_, true) => Statement.Fails(
                Question,
                $"decided by version {version}; version {ProgramVersion.Current} decides otherwise: {what}"
            ),
            _ => Statement.Fails(Question, what),
        };
    }

    /// <summary>
    /// Answers where the record names a category or a regime of the user's own, and its file is not at hand as it was; null otherwise.
    /// </summary>
    /// <param name="contents">The data embedded in the document.</param>
    /// <param name="visit">Its record, determined once more.</param>
    public static Statement? WithoutOwnRules(DocumentContents contents, DeterminedVisit visit)
    {
        var then = contents.Basis.OwnRules;
        return then.Count == 0 || !OwnRules.AreNamedIn(visit.Record) || OwnRules.Of(visit).SequenceEqual(then, StringComparer.Ordinal)
            ? null
            : Statement.NotChecked(
                Question,
                $"decided by the user's own rules, which are not at hand as they were: {string.Join(", ", then.Take(5))} (SHA-256 of "
                    + $"what the file says); name the folder that has them with --rules"
            );
    }

    /// <summary>
    /// Answers where the embedded record does not lead to such a document. Another version may have issued documents that this one does
    /// not.
    /// </summary>
    public static Statement NotCalledFor(DocumentContents contents)
    {
        return Statement.Fails(
            Question,
            $"the record within, determined once more, calls for no {contents.Basis.Kind} of "
                + $"{string.Join(", ", contents.Basis.Items.Take(5))}"
        );
    }

    private static List<Result>? Results(byte[] outcome)
    {
        try
        {
            using var json = JsonDocument.Parse(outcome, new JsonDocumentOptions { MaxDepth = 32 });
            return
            [
                .. json
                    .RootElement.GetProperty("items")
                    .EnumerateArray()
                    .Select(i => new Result(Text(i, "id"), Text(i, "outcome"), Text(i, "until"), Text(i, "nextExaminationBy"))),
            ];
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException or KeyNotFoundException)
        {
            return null;
        }
    }

    private static string? Text(JsonElement item, string member) => item.GetProperty(member).GetString();

    private sealed record Result(string? Id, string? Outcome, string? Until, string? Next)
    {
        public Message Words =>
            $"{Outcome}{Message.AsIs(Until is null ? "" : $" {Until}")}{(Next is null ? Message.None : $", next examination by {Next}")}";
    }
}
