using ExamDocs.Core.Determination;
using ExamDocs.Core.Regimes;
using ExamDocs.Templates.Report.Wording;
using ExamDocs.Templates.Shared;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.LawAndSources;

namespace ExamDocs.Templates.Report;

/// <summary>
/// The law that a report is made under, what of it was not read in its source, which earlier records were asked, and what the user
/// added. All other sources are in the evidence file.
/// </summary>
public sealed class ReportLawLines
{
    private static LawAndSourcesPhrases Words => LawAndSourcesPhrases.Current;

    internal ReportLawLines(DeterminedVisit visit, IReadOnlyList<DeterminedItem> items)
    {
        var day = items[0].ExaminedOn;
        var regimes = items.SelectMany(i => i.Regimes).DistinctBy(r => r.Id, StringComparer.Ordinal).ToList();
        var laws = regimes.SelectMany(r => r.Laws.InForce(day)).ToList();
        string[] notRead =
        [
            .. laws.Where(l => WasNotRead(l.Confidence)).Select(LawCitations.Of),
            .. LawCitations.ByLaw(
                regimes
                    .SelectMany(r => r.Particulars.InForce(day))
                    .Where(p => WasNotRead(p.Confidence))
                    .Select(p => p.Source)
                    .Distinct(StringComparer.Ordinal)
            ),
        ];
        Lines =
        [
            .. laws.Select(l => (Words.Law, $"{LawCitations.Of(l)}.")),
            .. notRead.Length > 0
                ?
                [
                    (
                        ReportPhrases.Current.NotReadHeading,
                        $"{string.Join(ReportPhrases.Current.Semicolon, notRead.Distinct(StringComparer.Ordinal))}."
                    ),
                ]
                : Array.Empty<(string, string)>(),
            .. regimes.SelectMany(r => r.NotConfirmed).Select(text => (Words.NotConfirmed, Phrases.Text(text))),
            .. visit.History.Asked is { } asked
                ? [(Words.EarlierRecords, Words.Asked(asked.Identity, asked.KeptSince))]
                : Array.Empty<(string, string)>(),
            .. LawCitations.Added(regimes, items),
        ];
    }

    /// <summary>A heading and a sentence each; lines of one heading follow one another.</summary>
    public IReadOnlyList<(string Heading, string Text)> Lines { get; }

    private static bool WasNotRead(Confidence confidence) => confidence is Confidence.FromMemory or Confidence.UnofficialCopy;
}
