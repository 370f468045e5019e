using ExamDocs.Core.Records;
using ExamDocs.Intake.Drafting;
using ExamDocs.Register;
using ExamDocs.UseCases.Recording;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>What a visit that is recorded on screen is started with.</summary>
/// <param name="Due">What of a register it is for; null for a visit that nothing of a register is for.</param>
/// <param name="Register">The register whose models and people are filled in; null, or not there, for none.</param>
/// <param name="Today">The present day.</param>
/// <param name="Examiner">Who examines, as far as that is known.</param>
public sealed record StartVisitRequest(FromRegister? Due, string? Register, LocalDate Today, Person Examiner)
{
    /// <summary>The items of a firm's own list, with what it has as out of use; null for none.</summary>
    public ExaminationRecord? Adopted { get; init; }
}

/// <summary>Starts a visit: what still holds from the last one, and no answer.</summary>
public static class StartVisit
{
    /// <returns>The draft, or a sentence saying why there is none.</returns>
    /// <exception cref="IOException">The register cannot be read.</exception>
    public static (RecordDraft? Draft, string? Refused) Run(StartVisitRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var last = request.Adopted;
        if (request.Due is { } due)
        {
            last = RegisterRecord.Of(due.Place, due.DueBefore, due.Employer, due.Today, out var refused);
            if (refused is not null)
                return (null, refused);
        }
        if (request.Register is { } place && DocumentRegister.Exists(place))
            last = RegisteredModels.In(place, request.Today).AddedTo(last ?? new ExaminationRecord());
        // Why this visit is made is asked anew.
        var draft = RecordDraft.ForNextVisit(last).With("/visit/basis", null);
        var (name, address, qualifications) = (request.Examiner.Name, request.Examiner.Address, request.Examiner.Qualifications);
        return (StartedVisit.WithExaminer(draft, name ?? "", address ?? "", qualifications ?? ""), null);
    }
}
