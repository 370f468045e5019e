using ExamDocs.Register;
using ExamDocs.Register.Model;
using NodaTime.Text;

namespace ExamDocs.UseCases.Registered;

/// <summary>Names the documents of earlier visits that later ones have ended, so that somebody takes the labels off.</summary>
internal static class EndedDocuments
{
    /// <param name="run">The run, decided and stored.</param>
    /// <param name="register">Where it is stored.</param>
    /// <returns>One sentence for each document and item.</returns>
    public static IReadOnlyList<string> Of(DecideRun run, DocumentRegister register) =>
        Of(
            register,
            run.Decided.SelectMany(d => d.Lines).Select(l => (l.Visit, l.OtherId)),
            run.Numbers.Where(n => n.IsNew).Select(n => n.Visit).ToHashSet()
        );

    /// <param name="register">Where the documents are.</param>
    /// <param name="lines">Earlier visits with their items.</param>
    /// <param name="byVisits">Visits that may have ended documents about these items.</param>
    /// <returns>One sentence for each document and item.</returns>
    public static IReadOnlyList<string> Of(
        DocumentRegister register,
        IEnumerable<(int Visit, string Item)> lines,
        IReadOnlySet<int> byVisits
    ) =>
        [
            .. (
                from line in lines.Distinct()
                from document in register.About(line.Item, line.Visit)
                from ended in document.EndedLines
                where byVisits.Contains(ended.ByVisit) && string.Equals(ended.Item, line.Item, StringComparison.Ordinal)
                select Sentence(document, ended)
            ).Order(StringComparer.Ordinal),
        ];

    private static string Sentence(DocumentStatus document, EndedLine ended) =>
        document.Kind switch
        {
            "due-label" => $"{document.Number} (next-examination label of {ended.Item}) no longer holds: {Why(ended)} on "
                + $"{LocalDatePattern.Iso.Format(ended.On)}. Take the label off.",
            _ => $"{document.Number} ({document.Kind}) no longer holds for {ended.Item}: {Why(ended)} on "
                + $"{LocalDatePattern.Iso.Format(ended.On)}.",
        };

    /// <summary>The reason, with "it" as its subject unless it already names the part that is the reason.</summary>
    private static string Why(EndedLine ended) =>
        ended.Why.Contains(", which is fitted to it, ", StringComparison.Ordinal) ? ended.Why : $"it {ended.Why}";
}
