using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Company;

/// <summary>A list of what falls due, and the visits proposed for it, as other programs read it.</summary>
public sealed record DueFile(
    LocalDate From,
    LocalDate To,
    LocalDate AsOf,
    IReadOnlyList<DueFile.Line> Due,
    IReadOnlyList<DueFile.Line> Apart,
    IReadOnlyList<DueFile.Visit> Visits
)
{
    public string Format { get; } = "examdocs-due/1";

    public static DueFile Of(DueList list, IReadOnlyList<ProposedVisit> visits)
    {
        ArgumentNullException.ThrowIfNull(list);
        return new(
            list.From,
            list.To,
            list.AsOf,
            [.. list.Due.Select(Line.Of)],
            [.. list.Apart.Select(Line.Of)],
            [.. visits.Select(Visit.Of)]
        );
    }

    public sealed record Visit(
        LocalDate By,
        string? Employer,
        string? Premises,
        IReadOnlyList<string?> Items,
        int Minutes,
        IReadOnlyList<string> WithoutFigure
    )
    {
        internal static Visit Of(ProposedVisit visit) =>
            new(visit.By, visit.At.Employer, visit.At.Premises, [.. visit.Items.Select(i => i.Id)], visit.Minutes, visit.WithoutFigure);
    }

    public sealed record Line(
        string? Id,
        string? Serial,
        string? Category,
        string? Employer,
        string? Premises,
        LocalDate? NextExaminationBy,
        LocalDate? FallsDue,
        Standing Standing,
        string Why
    )
    {
        internal static Line Of(DueItem item) =>
            new(
                item.Id,
                item.Serial,
                item.Category,
                item.At.Employer,
                item.At.Premises,
                item.NextBy,
                item.FallsDue,
                item.Standing,
                item.Why.Text
            );
    }
}
