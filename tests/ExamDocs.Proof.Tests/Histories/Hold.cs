using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Histories;

/// <summary>A withdrawal that a record knows of.</summary>
/// <param name="Row">The row that was withdrawn.</param>
/// <param name="Day">The day of it.</param>
/// <param name="Codes">Its W codes.</param>
/// <param name="Never">Only a release for an error ends it.</param>
/// <param name="IsTyped">It is an earlier examination that the record itself holds.</param>
internal sealed record Hold(Row Row, DateOnly Day, IReadOnlySet<string> Codes, bool Never, bool IsTyped = false)
{
    /// <summary>It was withdrawn, or recorded as destroyed, on account of other records alone.</summary>
    public bool IsDerived => !Row.Destroyed && Codes.IsSubsetOf(["W10", "W11"]);

    public bool IsVersionOf(Sheet sheet) => !IsTyped && Row.Sheet.IsVersionOf(sheet);

    /// <summary>That of a row which was withdrawn.</summary>
    public static Hold Of(Row row) => new(row, row.Day, WCodes(row), IsNever(row));

    /// <summary>It says what was found, and not only that it was withdrawn before.</summary>
    public static bool IsOwn(string code) => code is not ("W10" or "W11");

    private static bool IsNever(Row row) =>
        row.Said!.Never
        && (
            row.Destroyed
            || !(row.Said.Codes.Contains("W10") || row.Said.Codes.Contains("W11"))
            || row.Said.Codes.Contains("W5")
            || (row.Kit.Examination is { } e && FoundRules.RestsOnWhatIsNeverReleased(e, row.Kit.Kind))
        );

    /// <summary>That it is known to be destroyed is said of the row that tells of it alone.</summary>
    private static HashSet<string> WCodes(Row row) =>
        [
            .. row.Said!.Codes.Where(code =>
                code[0] == 'W' && (code != "W11" || row.Destroyed || row.Said.Codes.IsSubsetOf(["U0", "U3", "W10", "W11"]))
            ),
        ];
}
