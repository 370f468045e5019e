using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Proof.Tests.Histories;

/// <summary>The programme's word on an item in the form that is compared.</summary>
internal static class FromProgramme
{
    /// <summary>Errors that the second evaluator reckons with itself; with any other it may know less than the programme.</summary>
    private static readonly HashSet<string> Known =
    [
        "CON001",
        "CON003",
        "CON007",
        "CON009",
        "CON015",
        "CON016",
        "CON018",
        "PAR001",
        "PAR007",
        "PAR008",
        "PAR014",
        "PAR018",
        "IDN001",
        "IDN003",
        "IDN011",
        "IDN013",
        "REN005",
    ];

    /// <param name="item">What the programme determined.</param>
    /// <param name="at">The place of its row in the record.</param>
    public static Said Said(DeterminedItem item, int at)
    {
        var errors = item.Findings.Where(f => f.Severity == Severity.Error).ToList();
        return new Said(
            item.Item.Id ?? "",
            item.Outcome.Word(),
            Day(item.Until),
            Day(item.NextExaminationBy),
            item.Reasons.Select(reason => reason.Code).ToHashSet(),
            errors.Exists(f => !Known.Contains(f.Code) && !IsOfRelease(f.Code) && !IsOfPlace(f, at))
        )
        {
            Asked = errors.Exists(f => f.Code is "IDN011" or "IDN013"),
            Words = string.Join("; ", errors.Select(f => $"{f.Code} {f.Path} {f.Message}")),
        };
    }

    /// <summary>A release that ends nothing: the second evaluator is unsure of it itself.</summary>
    private static bool IsOfRelease(string code) => code is "CON013" or "CON014" or "CON040" or "DAT015";

    private static bool IsOfPlace(Finding finding, int at) =>
        finding.Code == "CON002" && finding.Path == FormattableString.Invariant($"/items/{at}/fittedTo");

    private static DateOnly? Day(LocalDate? day) => day is { } d ? new DateOnly(d.Year, d.Month, d.Day) : null;
}
