using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;
using ExamDocs.Templates.DuePlan;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Registered;

namespace ExamDocs.UseCases.Company;

/// <summary>Makes what the pages about what falls due print, in a language.</summary>
internal static class DuePages
{
    private const string NoName = "not recorded";
    private const int MostOfName = 100;

    public static PlannedDays Plan(DueList list, IReadOnlyList<ProposedVisit> visits, string? employer, MessageLanguage language) =>
        new(list.From, list.To, list.AsOf, employer)
        {
            Due = [.. list.Due.Select(i => Item(i, language))],
            Apart = [.. list.Apart.Select(i => Item(i, language))],
            Visits =
            [
                .. visits.Select(v => new PlannedVisit(
                    v.By,
                    Place(v.At),
                    [.. v.Items.Select(i => i.Id).OfType<string>()],
                    v.Minutes,
                    [.. v.WithoutFigure.Select(c => c.Length == 0 ? null : c)]
                )),
            ],
        };

    /// <summary>The list of each employer alone, with the name of its file without a folder. A name is written as it was last.</summary>
    public static IReadOnlyList<(string? Employer, string FileName, DueList List)> ByEmployer(DueList list)
    {
        var taken = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        return
        [
            .. list
                .Due.Concat(list.Apart)
                .GroupBy(i => FirmName.Fold(i.At.Employer), StringComparer.Ordinal)
                .OrderBy(g => g.Key, StringComparer.Ordinal)
                .Select(g => g.Select(i => i.At.Employer).FirstOrDefault(e => !string.IsNullOrWhiteSpace(e)))
                .Select(employer => (employer, FileName(employer, taken), Of(list, employer))),
        ];
    }

    private static DueList Of(DueList list, string? employer)
    {
        return list with { Due = [.. list.Due.Where(IsTheirs)], Apart = [.. list.Apart.Where(IsTheirs)] };

        bool IsTheirs(DueItem item) => string.Equals(FirmName.Fold(item.At.Employer), FirmName.Fold(employer), StringComparison.Ordinal);
    }

    private static string FileName(string? employer, HashSet<string> taken)
    {
        var name = SafeFileName.Cut(SafeFileName.Part(employer), MostOfName, MostOfName);
        name = name.Length == 0 ? NoName : name;
        var (free, n) = (name, 1);
        while (!taken.Add(free))
            free = FormattableString.Invariant($"{name} {++n}");
        return $"{free}.pdf";
    }

    private static PlannedItem Item(DueItem item, MessageLanguage language) =>
        new(
            Place(item.At),
            item.Category,
            item.Id ?? ((Message)$"(no id)").In(language),
            item.Serial,
            item.NextBy,
            item.FallsDue,
            item.Standing is Standing.InService ? null : item.Why.In(language)
        );

    private static PlannedPlace Place(DuePlace at) => new(at.Employer, at.Premises);
}
