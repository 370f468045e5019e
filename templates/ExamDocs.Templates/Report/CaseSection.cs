using ExamDocs.Core.Determination;
using ExamDocs.Core.Determination.CaseForService;
using ExamDocs.Templates.Report.Wording;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Templates.Report;

/// <summary>One line of the case for service.</summary>
/// <param name="Bearing">Which way it points.</param>
/// <param name="Text">The evidence, as a sentence without a full stop.</param>
/// <param name="Code">Code of the rule behind it; empty where there is none.</param>
public sealed record CaseLine(Bearing Bearing, string Text, string Code);

/// <summary>
/// One step of the case for service. Answers with nothing more to say share a line, everything else has a line of its
/// own.
/// </summary>
public sealed class CaseSection
{
    private CaseSection(Heading heading, IReadOnlyList<LedgerEntry> entries)
    {
        Heading = heading;
        Routine =
        [
            .. entries
                .Where(e => e.IsRoutine)
                .GroupBy(e => e.State!.Value)
                .Select(g => (ReportPhrases.Current.Routine(g.Key), string.Join(" · ", g.Select(e => Printed.Criterion(e.Criterion))))),
        ];
        var spoken = entries.Where(e => !e.IsRoutine).ToList();
        Lines = heading is Heading.Identity or Heading.History or Heading.Measurements
            ? OnOneLine(spoken)
            : [.. spoken.OrderByDescending(IsMarked).Select(Line)];
    }

    public Heading Heading { get; }

    /// <summary>The answer, and the criteria that have it.</summary>
    public IReadOnlyList<(string Answer, string Criteria)> Routine { get; }

    public IReadOnlyList<CaseLine> Lines { get; }

    /// <summary>What points neither way shares one line; what is against or open has a line of its own.</summary>
    private static IReadOnlyList<CaseLine> OnOneLine(List<LedgerEntry> entries)
    {
        var plain = string.Join("; ", entries.Where(e => !IsMarked(e)).Select(e => Phrases.Say(e.Said)));
        return
        [
            .. entries.Where(IsMarked).Select(Line),
            .. plain.Length == 0 ? Array.Empty<CaseLine>() : [new CaseLine(Bearing.Neutral, Printed.Sentence(plain), "")],
        ];
    }

    private static bool IsMarked(LedgerEntry entry) => entry.Bearing is Bearing.Against or Bearing.Open || entry.Code is not null;

    private static CaseLine Line(LedgerEntry entry) => new(entry.Bearing, Printed.Sentence(Phrases.Say(entry.Said)), entry.Code ?? "");

    /// <summary>The steps that have evidence, in their order.</summary>
    public static IReadOnlyList<CaseSection> Of(DeterminedItem item) =>
        [.. item.CaseForService.GroupBy(e => e.Heading).Select(g => new CaseSection(g.Key, [.. g]))];
}
