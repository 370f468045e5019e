using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;

namespace ExamDocs.UseCases.Issuing;

/// <summary>An item for which a document was refused, and the codes of why.</summary>
/// <param name="Item">Its id, or its description where it has none.</param>
/// <param name="Codes">Codes of findings and reasons, in their order.</param>
/// <param name="What">What was refused, in words.</param>
public sealed record Refusal(string Item, IReadOnlyList<string> Codes, Message What)
{
    internal static Refusal Of(DeterminedItem item) =>
        new(
            item.Item.Id ?? item.Item.Description ?? "(no id)",
            [
                .. item
                    .Findings.Where(f => f.Severity is Severity.Error)
                    .Select(f => f.Code)
                    .Concat(item.Reasons.Select(r => r.Code))
                    .Distinct(StringComparer.Ordinal),
            ],
            $"report or certificate"
        );
}
