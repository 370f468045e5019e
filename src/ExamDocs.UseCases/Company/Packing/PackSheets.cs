using ExamDocs.Core.Findings;
using ExamDocs.Intake.Workbook.Tables;
using ExamDocs.Templates.AuditPack;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.UseCases.Company.Packing;

/// <summary>The sheets of a pack's workbook: the gaps first.</summary>
internal static class PackSheets
{
    public static IReadOnlyList<TableSheet> Of(PackContents pack, MessageLanguage language)
    {
        string Say(Message message) => message.In(language);
        return
        [
            new(
                Say($"Gaps"),
                [Say($"code"), Say($"about"), Say($"what is missing")],
                [.. pack.Gaps.Select(g => (object?[])[g.Code, g.About, g.Words])]
            ),
            new(
                Say($"Register"),
                [
                    Say($"item"),
                    Say($"serial"),
                    Say($"category"),
                    Say($"maker"),
                    Say($"model"),
                    Say($"premises"),
                    Say($"standing"),
                    Say($"why"),
                    Say($"next examination by"),
                    Say($"to be used until"),
                    Say($"declaration"),
                    Say($"documents"),
                ],
                [.. pack.Items.Select(Row)]
            ),
            new(
                Say($"Documents"),
                [Say($"document"), Say($"kind"), Say($"issued on"), Say($"items"), Say($"pages"), "SHA-256", Say($"file")],
                [
                    .. pack.Documents.Select(d =>
                        (object?[])[d.Number, d.Kind, Day(d.IssuedOn), string.Join(", ", d.Items), d.Pages, d.Sha256, d.File]
                    ),
                ]
            ),
            new(
                Say($"Evidence"),
                [Say($"file"), Say($"about"), "SHA-256"],
                [.. pack.Evidence.Select(e => (object?[])[e.File, string.Join(", ", e.About), e.Sha256])]
            ),
            new(
                Say($"Examiners"),
                [Say($"examiner"), Say($"qualifications"), Say($"evidence")],
                [.. pack.Examiners.Select(e => (object?[])[e.Name, e.Qualifications, string.Join(", ", e.Evidence)])]
            ),
        ];
    }

    private static IReadOnlyList<object?> Row(PackItem item) =>
        [
            item.Item.Id,
            item.Item.Serial,
            item.Item.Category,
            item.Item.Maker,
            item.Item.Model,
            item.Premises,
            item.Standing,
            item.Why,
            Day(item.NextBy),
            Day(item.UsableThrough),
            item.Item.Declaration?.Reference,
            string.Join(", ", item.Documents),
        ];

    private static string? Day(LocalDate? day) => day is { } known ? LocalDatePattern.Iso.Format(known) : null;
}
