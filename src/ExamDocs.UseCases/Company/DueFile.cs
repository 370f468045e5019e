using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Company;

/// <summary>A list of what falls due as other programs read it.</summary>
public sealed record DueFile(
    LocalDate From,
    LocalDate To,
    LocalDate AsOf,
    IReadOnlyList<DueFile.Line> Due,
    IReadOnlyList<DueFile.Line> Apart
)
{
    public string Format { get; } = "examdocs-due/1";

    public static DueFile Of(DueList list)
    {
        ArgumentNullException.ThrowIfNull(list);
        return new(list.From, list.To, list.AsOf, [.. list.Due.Select(Line.Of)], [.. list.Apart.Select(Line.Of)]);
    }

    public sealed record Line(
        string Id,
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
                item.Why
            );
    }
}
