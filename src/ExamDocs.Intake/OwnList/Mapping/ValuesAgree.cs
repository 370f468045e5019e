using ExamDocs.Intake.OwnList.Words;

namespace ExamDocs.Intake.OwnList.Mapping;

/// <summary>Looks whether what stands in a column agrees with what its heading says.</summary>
internal static class ValuesAgree
{
    private const double Most = 0.6;

    private const double Half = 0.5;

    public static Seeming Checked(Seeming heading, ColumnValues column) =>
        column.IsEmpty ? heading with { Sure = Sureness.Yes }
        : ListFields.IsDate(heading.Field) ? Date(heading, column)
        : heading.Field switch
        {
            ListField.Category when column.Kinds < 0.3 && MayBeModel(column.Heading) => new(ListField.Model, Sureness.Likely),
            ListField.Model when column.Kinds >= Most && column.Variety <= Half => new(ListField.Category, Sureness.Likely),
            ListField.Id when column.Variety < Half && column.Kinds >= Most => new(ListField.Category, Sureness.Likely),
            ListField.Id when column.Variety < Half && heading.Sure is Sureness.Yes => heading with { Sure = Sureness.Likely },
            ListField.Id when heading.Sure is Sureness.Likely && column is { Variety: >= 0.95, Codes: >= 0.9, CountsRows: false } =>
                heading with
                {
                    Sure = Sureness.Yes,
                },
            ListField.Id when heading.Sure is Sureness.Likely && column is { Variety: >= 0.8, Codes: >= Most } => heading,
            ListField.Id when heading.Sure is Sureness.Likely => new(ListField.Remark, Sureness.Yes),
            ListField.State => State(heading, column),
            ListField.InUse when column.Dates >= Most => new(ListField.FirstUsed, Sureness.No),
            ListField.SafeWorkingLoad or ListField.MarkedStrength when column.Codes < Half => new(ListField.Remark, Sureness.Yes),
            ListField.Standards when heading.Sure is Sureness.Likely && column.StandardNumbers < Half && column.Codes < Half => new(
                ListField.Remark,
                Sureness.Yes
            ),
            ListField.FittedTo when heading.Sure is Sureness.Likely && column.Codes < Most => new(ListField.Remark, Sureness.Yes),
            _ => heading,
        };

    private static bool MayBeModel(string heading) =>
        PlainWords.Of(heading) is "type" or "typ" or "class" or "group" or "gruppe" or "famille" or "nature" or "genre";

    private static Seeming Date(Seeming heading, ColumnValues column) =>
        column.Dates >= Most ? heading with { Sure = heading.Sure is Sureness.No ? Sureness.Likely : Sureness.Yes }
        : column.Uses >= Half ? new(ListField.State, Sureness.Yes)
        : new(ListField.Remark, Sureness.Yes);

    /// <summary>Long texts under "condition" are remarks; short codes are not known, and are asked about.</summary>
    private static Seeming State(Seeming heading, ColumnValues column) =>
        column.Uses < Half && (column.Length > 20 || (column.Distinct > 20 && column.Variety > Half))
            ? new(ListField.Remark, Sureness.Yes)
            : heading with
            {
                Sure = column.Uses >= Half || heading.Sure is Sureness.Yes ? Sureness.Yes : Sureness.Likely,
            };
}
