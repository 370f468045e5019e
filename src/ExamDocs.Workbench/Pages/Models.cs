using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Verifying;
using ExamDocs.Workbench.Desk;

namespace ExamDocs.Workbench.Pages;

/// <summary>The desk.</summary>
public sealed record DeskModel(
    IReadOnlyList<DeskVisit> Visits,
    string Register,
    string? RegisterMissing,
    string? Refused,
    WorkbenchWords Words
)
{
    /// <summary>What the visits that are recorded here are called, by their ids.</summary>
    public IReadOnlyDictionary<string, string> Drafts { get; init; } = new Dictionary<string, string>(StringComparer.Ordinal);

    /// <summary>Why a visit could not be started, with what was typed for it; null where nothing was.</summary>
    public StartTyped? Start { get; init; }
}

/// <summary>What was typed to start a visit.</summary>
public sealed record StartTyped(bool FromRegister, string DueBy, string Employer, string? Refused);

/// <summary>One visit with what was found and decided.</summary>
public sealed record VisitModel(
    DeskVisit Visit,
    IReadOnlyList<CheckedInput> Inputs,
    LongRun<IssueResult>? Run,
    bool CanBeAnnotated,
    string? Refused,
    WorkbenchWords Words
);

/// <summary>A sentence that needs a page of its own.</summary>
public sealed record MessageModel(string Title, string Sentence, string Back, WorkbenchWords Words);

/// <summary>What a search found.</summary>
public sealed record FindModel(string Asked, SearchResult Found, string? RegisterMissing, WorkbenchWords Words)
{
    /// <summary>Items that are spelt much like what was asked for, where none bears it.</summary>
    public IReadOnlyList<FoundItem> SpeltLike { get; init; } = [];
}

/// <summary>A marking that was typed or scanned, with every item that it can mean, the worst first.</summary>
public sealed record ReturnedItem(string Marking, IReadOnlyList<FoundItem> Items)
{
    /// <summary>Items that are spelt much like it, where none bears it.</summary>
    public IReadOnlyList<FoundItem> SpeltLike { get; init; } = [];
}

/// <summary>The returns desk.</summary>
public sealed record ReturnsModel(IReadOnlyList<ReturnedItem> Items, string List, string? Refused, WorkbenchWords Words);

/// <summary>What was verified.</summary>
public sealed record VerifyModel(IReadOnlyList<VerifiedFile> Verified, string? Refused, WorkbenchWords Words);

/// <summary>Who works here.</summary>
public sealed record WhoModel(
    Particulars Who,
    string Register,
    string? RegisterMissing,
    IReadOnlyList<string> Faults,
    WorkbenchWords Words
);
