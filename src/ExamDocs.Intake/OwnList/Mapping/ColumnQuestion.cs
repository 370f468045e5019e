using ExamDocs.Intake.OwnList.Words;

namespace ExamDocs.Intake.OwnList.Mapping;

/// <summary>Asks what a column holds: what it seems to, what else it could, or nothing that has a place.</summary>
internal static class ColumnQuestion
{
    public static ListQuestion Of(ColumnMap column)
    {
        ListField[] fields = [column.Proposed, .. Alternatives(column.Proposed), ListField.Remark, ListField.LeaveOut];
        var choices = fields.Distinct().ToList();
        return new ListQuestion(
            $"What is the column '{column.Heading}'? It holds, for example: {string.Join("; ", column.Samples)}",
            [.. choices.Select(FieldWords.Of)],
            0
        )
        {
            Key = $"column {column.Heading}",
            Settle = (m, choice) => m.SettleColumn(column.Heading, choices[choice]),
        };
    }

    private static ListField[] Alternatives(ListField proposed) =>
        proposed switch
        {
            ListField.Category or ListField.Model => [ListField.Category, ListField.Model, ListField.Description],
            ListField.SafeWorkingLoad or ListField.MarkedStrength => [ListField.SafeWorkingLoad, ListField.MarkedStrength],
            ListField.Id => [ListField.Serial, ListField.OwnersMark, ListField.PartNumber],
            ListField.FirstUsed => [ListField.InUse, ListField.Purchased],
            _ when ListFields.IsDate(proposed) => [ListField.Manufactured, ListField.FirstUsed, ListField.LastExamined],
            _ => [ListField.State, ListField.OutOfUse, ListField.InUse, ListField.Serial, ListField.Description],
        };
}
