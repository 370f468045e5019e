using ExamDocs.Core.Findings;
using ExamDocs.Intake.Workbook.Tables;
using NodaTime.Text;

namespace ExamDocs.UseCases.Company;

/// <summary>The sheets of a workbook of spares, in a language; the first is what has to be ordered.</summary>
internal static class SpareSheets
{
    public static IReadOnlyList<TableSheet> Of(SparesPlan plan, MessageLanguage language)
    {
        string Say(Message message) => message.In(language);
        string[] need =
        [
            Say($"needed by"),
            Say($"employer"),
            Say($"premises"),
            Say($"fitted to"),
            Say($"part"),
            Say($"serial"),
            Say($"category"),
            Say($"permitted part number"),
            Say($"why"),
        ];
        return
        [
            new(
                Say($"Order"),
                [Say($"part number"), Say($"needed"), Say($"from stock"), Say($"to order"), Say($"the first needed by")],
                [
                    .. plan.Orders.Select(o =>
                        (IReadOnlyList<object?>)
                            [Numbers(o.Permitted, language), o.Needs.Count, o.InStock, o.ToOrder, LocalDatePattern.Iso.Format(o.FirstBy)]
                    ),
                ]
            ),
            new(Say($"What for"), need, [.. plan.Orders.SelectMany(o => o.Needs).OrderBy(n => n.By).Select(n => Row(n, language))]),
            new(Say($"No part recorded"), need, [.. plan.NotRecorded.Select(n => Row(n, language))]),
            new(
                Say($"Left out"),
                [Say($"parts left out"), Say($"why")],
                [.. plan.LeftOut.Select(left => (IReadOnlyList<object?>)[left.Parts, Say(left.Why)])]
            ),
        ];
    }

    /// <summary>Part numbers of which any will do.</summary>
    public static string Numbers(IReadOnlyList<string> permitted, MessageLanguage language) =>
        permitted.Count == 0 ? ((Message)$"not recorded").In(language) : string.Join(((Message)$" or ").In(language), permitted);

    private static IReadOnlyList<object?> Row(SpareNeed need, MessageLanguage language) =>
        [
            LocalDatePattern.Iso.Format(need.By),
            need.At.Employer,
            need.At.Premises,
            need.Whole,
            need.Part,
            need.Serial,
            need.Category,
            Numbers(need.Permitted, language),
            need.Why.In(language),
        ];
}
