using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Histories;

/// <summary>What is found out about a row of the record that is decided, as far as it has come.</summary>
internal sealed class Judged
{
    public required HashSet<string> Codes { get; init; }

    public List<DateOnly> Open { get; } = [];

    public List<IReadOnlyList<Row>> BadParts { get; } = [];

    public bool Never { get; set; }

    public bool Asked { get; set; }

    public bool IsHeldByVersion { get; set; }

    public bool Unsure { get; set; }

    public bool IsDone { get; set; }

    public DateOnly? Until { get; set; }

    public DateOnly? Next { get; set; }

    public bool Withdrawn => IsHeldByVersion || Codes.Any(code => code[0] == 'W');

    public bool Undetermined => Codes.Any(code => code[0] == 'U');

    public void Conclude(Row row, List<PartState> parts)
    {
        Codes.UnionWith(IsHeldByVersion && !Codes.Any(code => code[0] == 'W') ? ["W10"] : []);
        Unsure |= parts.Exists(part => part.IsUnsure);
        if (Withdrawn || Undetermined)
        {
            return;
        }

        var d1 = row
            .Kit.Examination!.Value.List("defects")
            .Where(defect => defect.Text("danger") == "later")
            .Select(defect => defect.Day("becomesDangerOn")?.AddDays(-1))
            .Min();
        var d2 = row.Kit.End < row.Kit.OwnNext || row.Kit.OwnNext is null ? row.Kit.End : null;
        var d3 = parts.Select(part => part.Until).Min();
        Codes.UnionWith([.. d1 is null ? [] : new[] { "D1" }, .. d2 is null ? [] : new[] { "D2" }, .. d3 is null ? [] : new[] { "D3" }]);
        Until = Days.Earliest([d1, d2, d3]);
        Next = parts.Select(part => part.Next).Append(row.Kit.OwnNext).Min();
    }

    public Said ToSaid(Row row)
    {
        var outcome =
            Withdrawn ? "withdraw"
            : Undetermined ? "undetermined"
            : Until is null ? "fit"
            : "fit-until";
        return new Said(row.Kit.Id, outcome, Until, Next, Codes, Unsure)
        {
            Never = Never || Codes.Contains("W11"),
            Asked = Asked,
            BadParts = BadParts,
        };
    }
}

/// <summary>How a part stands that something is judged with.</summary>
internal sealed record PartState(IReadOnlyList<Row> Rows, bool IsBad, bool IsUnsettled, DateOnly? Until, DateOnly? Next, bool IsUnsure);
