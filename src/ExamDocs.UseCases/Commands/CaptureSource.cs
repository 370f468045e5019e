using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Registered;

namespace ExamDocs.UseCases.Commands;

/// <summary>What a visit is prepared from, whatever it is recorded in: a record, a register, or nothing but categories.</summary>
/// <param name="Record">What to fill in; null for nothing.</param>
/// <param name="Categories">What can be recorded.</param>
/// <param name="Outputs">What may be written over.</param>
internal sealed record CaptureSource(ExaminationRecord? Record, IReadOnlyList<Category> Categories, OutputGuard Outputs)
{
    /// <summary>Employers and places of earlier visits, to be picked; null for none.</summary>
    public IReadOnlyList<Party>? Firms { get; init; }

    /// <param name="request">What the user asks for.</param>
    /// <param name="refused">Why there is none; null where there is one.</param>
    /// <exception cref="OutputRefusedException">The file may not be written there.</exception>
    public static CaptureSource? Of(CaptureRequest request, out string? refused)
    {
        var outputs = request.Outputs.For([request.From], request.Register?.Place);
        outputs.Require(request.OutFile);
        refused = null;
        var record =
            request.Register is { } from ? RegisterRecord.Of(from.Place, from.DueBefore, from.Employer, from.Today, out refused)
            : request.From is null ? null
            : EarlierRecord.Read(request.From, request.Rules, out refused).Record;
        refused = EarlierRecord.Unknown(request.Categories, request.Rules) ?? refused;
        if (refused is not null)
            return null;
        var categories = Chosen(request, record);
        var known = request.Known is var (place, today) ? RegisteredModels.In(place, today) : null;
        record = known?.AddedTo(record ?? new ExaminationRecord()) ?? record;
        return new CaptureSource(record, categories, outputs) { Firms = known?.Firms };
    }

    private static IReadOnlyList<Category> Chosen(CaptureRequest request, ExaminationRecord? record)
    {
        if (request.Categories.Count > 0)
            return [.. request.Categories.Select(c => request.Rules.FindCategory(c)!)];
        var used = record?.Items.Select(i => i.Category).ToHashSet(StringComparer.Ordinal);
        return [.. request.Rules.Categories.Where(c => used is null || used.Contains(c.Id))];
    }
}
