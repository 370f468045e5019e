using ExamDocs.Core.Regimes;

namespace ExamDocs.Intake.OwnList.Mapping;

/// <summary>Asks which category a word of the list means; that it is none of them is always one of the answers.</summary>
internal static class KindQuestion
{
    public static ListQuestion Of(KindMap kind, KnownRules rules)
    {
        var categories = rules.Categories.OrderByDescending(c => string.Equals(c.Id, kind.Proposed, StringComparison.Ordinal)).ToList();
        string[] choices = [.. categories.Select(c => $"{c.Name} ({c.Id})"), "none of these: it stays unknown, and is named"];
        return new ListQuestion(
            $"What kind of kit is '{kind.Word}' ({ListQuestions.Rows(kind.Rows)})? For example: {string.Join("; ", kind.Samples)}",
            choices,
            kind.Proposed is null ? choices.Length - 1 : 0
        )
        {
            Key = $"kind {kind.Word}",
            Settle = (m, choice) => m.Settle(map => Settled(map, kind.Word, choice < categories.Count ? categories[choice].Id : null)),
        };
    }

    private static ListMap Settled(ListMap map, string word, string? category) =>
        map with
        {
            Kinds =
            [
                .. map.Kinds.Select(k =>
                    string.Equals(k.Word, word, StringComparison.Ordinal) ? k with { Category = category, IsSettled = true } : k
                ),
            ],
        };
}
