using ExamDocs.Core.Findings;
using ExamDocs.Intake.Workbook.Tables;
using ExamDocs.UseCases.Registered;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.UseCases.Company;

/// <summary>The sheets of a workbook of what falls due, in a language.</summary>
internal static class DueSheets
{
    public static IReadOnlyList<TableSheet> Of(DueList list, IReadOnlyList<ProposedVisit> visits, MessageLanguage language)
    {
        string Say(Message message) => message.In(language);
        string[] place = [Say($"employer"), Say($"premises")];
        string[] item =
        [
            .. place,
            Say($"category"),
            Say($"item"),
            Say($"serial"),
            Say($"next examination by"),
            Say($"falls due"),
            Say($"standing"),
            Say($"why"),
        ];
        return
        [
            new(Say($"Due"), item, [.. list.Due.Select(i => Row(i, language))]),
            new(Say($"By month"), [Say($"month"), .. place, Say($"category"), Say($"items")], [.. Months(list.Due)]),
            new(
                Say($"Visits proposed"),
                [Say($"on or before"), .. place, Say($"items"), Say($"minutes"), Say($"no figure for"), Say($"which items")],
                [.. visits.Select(Row)]
            ),
            new(Say($"Not to be used"), item, [.. list.Apart.Select(i => Row(i, language))]),
        ];
    }

    private static IReadOnlyList<object?> Row(DueItem item, MessageLanguage language) =>
        [
            item.At.Employer,
            item.At.Premises,
            item.Category,
            item.Id,
            item.Serial,
            Day(item.NextBy),
            Day(item.FallsDue),
            item.Standing.Said().In(language),
            item.Why.In(language),
        ];

    private static IReadOnlyList<object?> Row(ProposedVisit visit) =>
        [
            Day(visit.By),
            visit.At.Employer,
            visit.At.Premises,
            visit.Items.Count,
            visit.Minutes > 0 ? visit.Minutes : null,
            string.Join(", ", visit.WithoutFigure),
            string.Join(", ", visit.Items.Select(i => i.Id)),
        ];

    private static IEnumerable<IReadOnlyList<object?>> Months(IEnumerable<DueItem> due) =>
        due.GroupBy(i => (Month: i.FallsDue!.Value.ToYearMonth(), i.At.Key, i.Category))
            .OrderBy(g => g.Key.Month)
            .ThenBy(g => g.Key.Key, StringComparer.Ordinal)
            .ThenBy(g => g.Key.Category, StringComparer.Ordinal)
            .Select(g =>
                (IReadOnlyList<object?>)
                    [YearMonthPattern.Iso.Format(g.Key.Month), g.First().At.Employer, g.First().At.Premises, g.Key.Category, g.Count()]
            );

    private static string? Day(LocalDate? day) => day is { } known ? LocalDatePattern.Iso.Format(known) : null;
}
