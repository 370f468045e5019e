using ExamDocs.Core.Determination;
using ExamDocs.Core.Determination.CaseForService;
using ExamDocs.Templates.Evidence.Wording;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Templates.Evidence;

/// <summary>One row of the case for service.</summary>
/// <param name="Bearing">Which way it points.</param>
/// <param name="Answer">How it points, or the answer that criteria share.</param>
/// <param name="Text">The evidence.</param>
/// <param name="Code">Code of the rule behind it; empty where there is none.</param>
/// <param name="Source">Where it comes from; empty for criteria that share a row, whose sources stand at the end of the file.</param>
public sealed record CaseRow(Bearing Bearing, string Answer, string Text, string Code, string Source);

/// <summary>One step of the case for service: criteria with the same answer and no note share a row, everything else has its own.</summary>
/// <param name="Heading">The step.</param>
/// <param name="Rows">What is against the item comes first.</param>
public sealed record CaseStep(Heading Heading, IReadOnlyList<CaseRow> Rows)
{
    private static EvidencePhrases Words => EvidencePhrases.Current;

    /// <summary>The steps that have evidence, in their order.</summary>
    public static IReadOnlyList<CaseStep> Of(DeterminedItem item) =>
        [.. item.CaseForService.GroupBy(e => e.Heading).Select(g => new CaseStep(g.Key, [.. OwnRows(g), .. SharedRows(g)]))];

    private static IEnumerable<CaseRow> OwnRows(IEnumerable<LedgerEntry> entries) =>
        entries
            .Where(e => !e.IsRoutine)
            .OrderByDescending(e => e.Bearing is Bearing.Against)
            .Select(e => new CaseRow(
                e.Bearing,
                Words.Bearing(e.Bearing),
                Printed.Sentence(Phrases.Say(e.Said)),
                e.Code ?? "",
                Phrases.Source(e.Source)
            ));

    private static IEnumerable<CaseRow> SharedRows(IEnumerable<LedgerEntry> entries) =>
        entries
            .Where(e => e.IsRoutine)
            .GroupBy(e => e.State!.Value)
            .Select(g => new CaseRow(
                Bearing.For,
                Words.Routine(g.Key),
                string.Join(" · ", g.Select(e => Printed.Criterion(e.Criterion))),
                "",
                ""
            ));
}
