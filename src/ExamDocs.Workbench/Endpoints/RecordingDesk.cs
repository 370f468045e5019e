using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Drafting;
using ExamDocs.UseCases.Reading;
using ExamDocs.Workbench.Desk;
using ExamDocs.Workbench.Pages;

namespace ExamDocs.Workbench.Endpoints;

/// <summary>The visits on the desk that are recorded here, with what is found wrong with them.</summary>
internal sealed class RecordingDesk(DeskFolder desk, Drafts drafts, CheckedVisits visits, IssueRuns runs, Who who, WorkbenchRequest request)
{
    /// <inheritdoc cref="Drafts.Change"/>
    public T Change<T>(DeskVisit visit, Func<RecordDraft, (RecordDraft Draft, T Told)> change) => drafts.Change(visit, change);

    public KnownRules Rules => request.Rules;

    public WorkbenchWords Words => WorkbenchWords.In(who.Now.Language);

    /// <summary>Null where there is no such visit, or it was brought in as files.</summary>
    public (DeskVisit Visit, RecordDraft Draft)? Find(string id) =>
        desk.Find(id) is { } visit && Drafts.Of(visit) is { } draft ? (visit, draft) : null;

    /// <summary>The visit as checked; null while it is being issued, since the register is being written then.</summary>
    public async Task<CheckedInput?> CheckedAsync(DeskVisit visit, CancellationToken cancellation) =>
        runs.Of(visit) is { IsAtWork: true } ? null
        : (await visits.OfAsync(visit, cancellation)) is [var one, ..] ? one
        : null;
}
