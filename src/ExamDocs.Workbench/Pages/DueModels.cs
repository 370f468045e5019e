using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Company;

namespace ExamDocs.Workbench.Pages;

/// <summary>What falls due.</summary>
/// <param name="Asked">The days and the employer, as typed.</param>
/// <param name="List">What falls due; null where nothing could be listed.</param>
/// <param name="Visits">The visits proposed.</param>
/// <param name="Refused">Why nothing is listed, or a page was not printed; null where all was done.</param>
/// <param name="Words">In the language of whoever works here.</param>
public sealed record DueModel(AskedDays Asked, DueList? List, IReadOnlyList<ProposedVisit> Visits, string? Refused, WorkbenchWords Words);

/// <summary>Days and an employer as they were typed; empty texts for what was left out.</summary>
public sealed record AskedDays(string From, string To, string Employer);

/// <summary>Which parts have to be ordered.</summary>
/// <param name="Asked">The last day and the employer, as typed.</param>
/// <param name="Plan">What has to be ordered; null where nothing could be listed.</param>
/// <param name="Remarks">Rows of the stock list that were not counted.</param>
/// <param name="Refused">Why nothing is listed; null where something is.</param>
/// <param name="Words">In the language of whoever works here.</param>
public sealed record SparesModel(AskedDays Asked, SparesPlan? Plan, IReadOnlyList<Message> Remarks, string? Refused, WorkbenchWords Words);
