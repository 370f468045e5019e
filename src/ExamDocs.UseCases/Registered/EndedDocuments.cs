using ExamDocs.Register;
using ExamDocs.Register.Model;
using NodaTime.Text;

namespace ExamDocs.UseCases.Registered;

/// <summary>Names the documents of earlier visits that a run has ended, so that somebody takes the labels off.</summary>
internal static class EndedDocuments
{
    /// <summary>One sentence for each document and item.</summary>
    public static IReadOnlyList<string> Of(DecideRun run, DocumentRegister register)
    {
        var visits = run.Numbers.Where(n => n.IsNew).Select(n => n.Visit).ToHashSet();
        return
        [
            .. (
                from line in run.Decided.SelectMany(d => d.Lines).Select(l => (l.Visit, l.OtherId)).Distinct()
                from document in register.About(line.OtherId, line.Visit)
                from ended in document.EndedLines
                where visits.Contains(ended.ByVisit) && string.Equals(ended.Item, line.OtherId, StringComparison.Ordinal)
                select Sentence(document, ended)
            ).Order(StringComparer.Ordinal),
        ];
    }

    private static string Sentence(DocumentStatus document, EndedLine ended) =>
        document.Kind switch
        {
            "due-label" => $"{document.Number} (next-examination label of {ended.Item}) no longer holds: it {ended.Why} on "
                + $"{LocalDatePattern.Iso.Format(ended.On)}. Take the label off.",
            _ => $"{document.Number} ({document.Kind}) no longer holds for {ended.Item}: it {ended.Why} on "
                + $"{LocalDatePattern.Iso.Format(ended.On)}.",
        };
}
