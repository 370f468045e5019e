using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.Shared;

/// <summary>A defect as it is printed: an entry of the record, or an adverse observation that has no entry.</summary>
public sealed record DefectEntry
{
    private DefectEntry() { }

    public required string Part { get; init; }

    public required string Description { get; init; }

    /// <summary>True where it is a danger already, or where no usable date says otherwise.</summary>
    public required bool IsNow { get; init; }

    /// <summary>The time by which it could become a danger; the last day of use is the day before.</summary>
    public LocalDate? BecomesDangerOn { get; init; }

    public required string Remedy { get; init; }

    public bool ImminentRisk { get; init; }

    public Notification? Notified { get; init; }

    /// <summary>Every defect of which people must be told, in the order recorded: entries first, then bare observations.</summary>
    public static IReadOnlyList<DefectEntry> Of(DeterminedItem item) => item.Examination is { } examination ? Of(examination) : [];

    /// <summary>The same for one examination, which may be an earlier one.</summary>
    public static IReadOnlyList<DefectEntry> Of(Examination examination)
    {
        var told = examination.Defects.Select(d => d.Criterion).ToHashSet(StringComparer.Ordinal);
        var bare = examination.Observations.Where(o =>
            o.State is ObservedState.Defect or ObservedState.Doubt && !told.Contains(o.Criterion)
        );
        return [.. examination.Defects.Select(d => From(d, examination)), .. bare.Select(From)];
    }

    private static DefectEntry From(Defect defect, Examination examination) =>
        new()
        {
            Part = Printed.Text(defect.Part ?? (defect.Criterion is null ? null : Printed.Criterion(defect.Criterion))),
            Description = Printed.Text(defect.Description ?? NoteOn(defect.Criterion, examination)),
            IsNow = defect.Danger is not Danger.Later || defect.ImminentRisk is true,
            BecomesDangerOn = defect.BecomesDangerOn,
            Remedy = Printed.Text(defect.Remedy),
            ImminentRisk = defect.ImminentRisk is true,
            Notified = defect.Notified,
        };

    private static DefectEntry From(Observation observation) =>
        new()
        {
            Part = Printed.Criterion(observation.Criterion),
            Description = Printed.Of(Phrases.State(observation.State!.Value), Printed.Text(observation.Note)),
            IsNow = true,
            Remedy = Phrases.Common.NotRecorded,
        };

    private static string? NoteOn(string? criterion, Examination examination) =>
        criterion is null
            ? null
            : examination.Observations.FirstOrDefault(o => string.Equals(o.Criterion, criterion, StringComparison.Ordinal))?.Note;
}
