using ExamDocs.Intake.Workbook.Tables;
using ExamDocs.Templates.Lessons;
using ExamDocs.Templates.Lessons.Wording;
using ExamDocs.Templates.Shared.Wording.Common;

namespace ExamDocs.UseCases.Teaching;

/// <summary>The same numbers as tables of a workbook, all groups of them. In English, as every workbook of ours.</summary>
internal static class LessonsTables
{
    private static readonly LessonsPhrases Words = LessonsPhrases.Languages.English;

    public static IReadOnlyList<TableSheet> Of(RecordLessons lessons) =>
        [
            ReadFirst(lessons),
            Rates(lessons.Rates),
            Survival(lessons.Survival),
            Steps(lessons.Survival),
            Wear(lessons.Wear),
            new("Reasons", ["Category", "Criterion", "Items"], Rows(lessons.Reasons, r => [Text(r.Category), r.Criterion, r.Items]))
            {
                Looks = LessonsLooks.Reasons,
            },
            Agreement(lessons.Agreement),
        ];

    private static TableSheet ReadFirst(RecordLessons lessons)
    {
        string[] sentences =
        [
            Words.ThisRegisterOnly,
            CommonPhrases.Languages.English.CautionPrecedence,
            .. Words.Cautions,
            Words.RatesLead(LessonsModel.LeastToCompare),
            Words.SurvivalLead,
            Words.LeftOut(lessons.LeftOut),
            Words.ManyComparisons,
            Words.WearLead,
            Words.ReasonsLead,
            Words.AgreementLead,
        ];
        return new("Read first", [Words.Title], Rows(sentences, s => [s]));
    }

    private static TableSheet Rates(IReadOnlyList<RateTable> tables) =>
        new(
            "Withdrawals",
            ["Grouped by", "Group", "Items", "Withdrawn", "Share", "95 % low", "95 % high", "Enough to compare"],
            Rows(tables.SelectMany(t => t.Groups.Select(g => (t.By, Group: g))), r =>
                [
                    Words.By(r.By),
                    Text(r.Group.Name),
                    r.Group.Withdrawn.Total,
                    r.Group.Withdrawn.Count,
                    r.Group.Withdrawn.Value,
                    r.Group.Withdrawn.Wilson.Low,
                    r.Group.Withdrawn.Wilson.High,
                    YesOrNo(!r.Group.IsTooFew),
                ]
            )
        )
        {
            Looks = LessonsLooks.Withdrawals,
        };

    private static TableSheet Survival(IReadOnlyList<SurvivalTable> tables) =>
        new(
            "Bridges",
            [
                "Grouped by",
                "Group",
                "Bridges",
                "Withdrawn",
                "Months watched",
                "Per 100 bridge-years",
                "Rate 95 % low",
                "Rate 95 % high",
                "Median months",
                "Median 95 % low",
                "Median 95 % high",
                "Log-rank chi-squared",
                "Log-rank p",
                "Enough to compare",
            ],
            Rows(Groups(tables), r =>
                [
                    Words.By(r.By),
                    NameOf(r),
                    r.Group.Curve.Things,
                    r.Group.Curve.Events,
                    r.Group.Months,
                    r.Group.PerHundredYears?.Rate,
                    r.Group.PerHundredYears?.Interval.Low,
                    r.Group.PerHundredYears?.Interval.High,
                    r.Group.Curve.Median,
                    r.Group.Curve.MedianInterval.Low,
                    r.Group.Curve.MedianInterval.High,
                    r.Group.AgainstOthers?.Statistic,
                    r.Group.AgainstOthers?.Probability,
                    YesOrNo(!r.Group.IsTooFew),
                ]
            )
        )
        {
            Looks = LessonsLooks.Bridges,
        };

    private static TableSheet Steps(IReadOnlyList<SurvivalTable> tables) =>
        new(
            "Bridges step by step",
            ["Grouped by", "Group", "Months", "At risk", "Withdrawn", "Share left", "Standard error", "95 % low", "95 % high"],
            Rows(Groups(tables).SelectMany(g => g.Group.Curve.Steps.Select(s => (g, Step: s))), r =>
                [
                    Words.By(r.g.By),
                    NameOf(r.g),
                    r.Step.Age,
                    r.Step.AtRisk,
                    r.Step.Events,
                    r.Step.Share,
                    r.Step.StandardError,
                    r.Step.Interval?.Low,
                    r.Step.Interval?.High,
                ]
            )
        )
        {
            Looks = LessonsLooks.Steps,
        };

    private static TableSheet Wear(IReadOnlyList<WearGroup> groups) =>
        new(
            "Wear",
            [
                "Hardware on the bridge",
                "Bridges",
                "Median mm a month",
                "Lower quartile",
                "Upper quartile",
                "Least",
                "Most",
                "Enough to compare",
            ],
            Rows(groups, g =>
                [
                    Text(g.Name),
                    g.MmPerMonth.Count,
                    g.Median,
                    g.LowerQuartile,
                    g.UpperQuartile,
                    g.MmPerMonth[0],
                    g.MmPerMonth[^1],
                    YesOrNo(!g.IsTooFew),
                ]
            )
        )
        {
            Looks = LessonsLooks.Wear,
        };

    private static TableSheet Agreement(IReadOnlyList<AgreementRow> rows) =>
        new(
            "Agreement",
            ["Criterion", "Pairs", "Said the same", "Kappa", "Enough to compare"],
            Rows(rows, r => [r.Criterion ?? Words.AllTogether, r.Kappa.Pairs, r.Kappa.Alike, r.Kappa.Value, YesOrNo(!r.IsTooFew)])
        )
        {
            Looks = LessonsLooks.Agreement,
        };

    private static IEnumerable<(GroupedBy By, SurvivalGroup Group)> Groups(IReadOnlyList<SurvivalTable> tables) =>
        tables.SelectMany(t => t.Groups.Select(g => (t.By, g)));

    private static string NameOf((GroupedBy By, SurvivalGroup Group) row) =>
        row.By is GroupedBy.Everything ? Words.AllBridges : Text(row.Group.Name);

    private static string Text(string? name) => name ?? CommonPhrases.Languages.English.NotRecorded;

    private static string YesOrNo(bool answer) => answer ? "yes" : LessonsLooks.No;

    private static IReadOnlyList<IReadOnlyList<object?>> Rows<T>(IEnumerable<T> of, Func<T, IReadOnlyList<object?>> cells) =>
        [.. of.Select(cells)];
}
