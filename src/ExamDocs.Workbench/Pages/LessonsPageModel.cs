namespace ExamDocs.Workbench.Pages;

/// <summary>What the records teach: whose kit there is to choose from.</summary>
public sealed record LessonsPageModel(
    IReadOnlyList<string> Employers,
    string? Chosen,
    string? RegisterMissing,
    string? Refused,
    WorkbenchWords Words
);
