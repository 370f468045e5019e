using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>Reads, checks and determines, and issues nothing.</summary>
public static class CheckRecord
{
    /// <param name="path">A JSON file, a workbook, a file of separated values, a folder of such files, or a document of ours.</param>
    /// <param name="asOf">The day on which it is looked at.</param>
    /// <param name="rules">The categories and regimes it can name; left out, those built in.</param>
    public static CheckedInput Of(string path, LocalDate asOf, KnownRules? rules = null) => All([path], asOf, rules)[0];

    /// <summary>Inputs of one visit, which is told by its reference, are decided together; the rest each alone.</summary>
    /// <param name="paths">In any order: each as <see cref="Of"/> takes it.</param>
    /// <param name="asOf">The day on which they are looked at.</param>
    /// <param name="rules">The categories and regimes they can name; left out, those built in.</param>
    /// <returns>In input order, a visit where its first input stands.</returns>
    public static IReadOnlyList<CheckedInput> All(IReadOnlyList<string> paths, LocalDate asOf, KnownRules? rules = null) =>
        DecideRun.Check(ReadVisits.From(paths, rules), null, asOf, rules);
}
