using ExamDocs.Templates.Report.Wording;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Items;

namespace ExamDocs.Templates.Report;

/// <summary>The particulars in a block, in the order of the schedule of the law on lifting.</summary>
internal static class BlockValues
{
    private static ReportPhrases Words => ReportPhrases.Current;

    private static ItemPhrases ItemWords => ItemPhrases.Current;

    /// <summary>Paragraphs 3 to 7, which stand before the defects.</summary>
    public static IReadOnlyList<LabelledValue> BeforeDefects(ReportItem item) =>
        Shown(
            new("3", "", item.Group.Name),
            new("", Words.ColumnMarking, item.Marking),
            new("", Words.ColumnMade, item.Made),
            new("", ItemWords.FirstUsed, item.FirstUsed),
            new("", Words.Purchased, item.Asks(LawAsks.Purchase) ? Printed.ShortDay(item.Item.Purchased) : ""),
            new("4", Words.ColumnLast, item.LastExamined),
            new("5", ItemWords.SafeWorkingLoad, item.ShowsLoad ? Printed.Load(item.Item.SafeWorkingLoad) : ""),
            new("", "", Words.Use(item.Item.Purpose)),
            new("", ItemWords.EndOfService, Printed.ShortDay(item.Determined.EndOfService)),
            new("", ItemWords.MakersLimits, item.Asks(LawAsks.Documents) ? item.MakersDocument : ""),
            new("", Words.DeclarationLabel, item.Asks(LawAsks.Documents) ? item.Declaration : ""),
            new("", Words.Scope, item.Scope),
            new("", Words.Laws, item.Laws),
            new("", Words.ExaminedBy, item.ExaminedBy),
            new(item.IsFirst ? "6(a)" : "7(a)", Words.Basis, item.Basis),
            new(item.IsFirst ? "6(b)" : "7(b)", Words.SafeToOperate, item.SafeToOperate)
        );

    /// <summary>Paragraph 8 from (d).</summary>
    public static IReadOnlyList<LabelledValue> AfterDefects(ReportItem item) =>
        Shown(
            new("8(d)", Words.ColumnNext, item.Next, IsStrong: true),
            new("", ItemWords.NotAfter, item.NotAfter, IsStrong: true),
            item.Tests.Length > 0 ? new("8(e)", Words.Tests, item.Tests) : new("8(e)", "", Words.NoTests),
            new("8(f)", ItemWords.ExaminedOn, Printed.ShortDay(item.Determined.ExaminedOn), IsStrong: true)
        );

    private static IReadOnlyList<LabelledValue> Shown(params LabelledValue[] values) => [.. values.Where(v => v.Value.Length > 0)];
}
