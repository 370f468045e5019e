using ExamDocs.Core.Determination;
using ExamDocs.Core.Regimes;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.LawAndSources;

namespace ExamDocs.Templates.Shared;

/// <summary>How laws and their paragraphs are cited at the end of a document, and what the user added to them.</summary>
internal static class LawCitations
{
    private const string Paragraph = " para ";

    public static string Of(Law law) =>
        new Law
        {
            Title = Phrases.Text(law.Title),
            Number = Phrases.Source(law.Number),
            Confidence = law.Confidence,
        }.Cited;

    /// <summary>Paragraphs of one law behind its name, which stands once.</summary>
    public static IEnumerable<string> ByLaw(IEnumerable<string> sources) =>
        sources
            .GroupBy(s => s.Split(Paragraph)[0], s => s.Split(Paragraph)[^1], StringComparer.Ordinal)
            .Select(g =>
                g.All(rest => string.Equals(rest, g.Key, StringComparison.Ordinal)) ? g.Key : $"{g.Key}{Paragraph}{string.Join(", ", g)}"
            )
            .Select(Phrases.Source);

    /// <summary>A line for each regime and each category that the user added.</summary>
    public static IEnumerable<(string Heading, string Text)> Added(IEnumerable<Regime> regimes, IEnumerable<DeterminedItem> items)
    {
        var words = LawAndSourcesPhrases.Current;
        return
        [
            .. regimes
                .Select(r => r.AddedFrom)
                .OfType<string>()
                .Select(file => (words.AddedByUser, $"{Printed.Sentence(words.Added(file))}.")),
            .. items
                .Select(i => i.Category)
                .Where(c => c?.AddedFrom is not null)
                .DistinctBy(c => c!.Id, StringComparer.Ordinal)
                .Select(c => (words.AddedByUser, words.AddedCategory(c!.Name, c.AddedFrom!))),
        ];
    }
}
