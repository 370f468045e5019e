namespace ExamDocs.Intake.OwnList.Words;

/// <summary>What a column of a list holds.</summary>
public enum ListField
{
    Id,
    Category,
    Description,
    Maker,
    Model,
    MakerAndModel,
    PartNumber,
    Serial,
    OwnersMark,
    Manufactured,
    Purchased,
    FirstUsed,
    SafeWorkingLoad,
    MarkedStrength,
    Standards,
    LastExamined,
    ObsoleteOn,
    FittedTo,

    /// <summary>A status or an earlier result, in words.</summary>
    State,

    /// <summary>Anything in it but "no" says that the item is out of use.</summary>
    OutOfUse,

    /// <summary>"No" in it says that the item is out of use.</summary>
    InUse,

    /// <summary>Kept in the description, under its heading.</summary>
    Remark,

    /// <summary>Kept out of the record, and named.</summary>
    LeaveOut,
}

/// <summary>The fields' names in a map.</summary>
internal static class ListFields
{
    private static readonly (string Name, ListField Field)[] Rows =
    [
        ("id", ListField.Id),
        ("category", ListField.Category),
        ("description", ListField.Description),
        ("maker", ListField.Maker),
        ("model", ListField.Model),
        ("maker-and-model", ListField.MakerAndModel),
        ("part-number", ListField.PartNumber),
        ("serial", ListField.Serial),
        ("owners-mark", ListField.OwnersMark),
        ("manufactured", ListField.Manufactured),
        ("purchased", ListField.Purchased),
        ("first-used", ListField.FirstUsed),
        ("safe-working-load", ListField.SafeWorkingLoad),
        ("marked-strength", ListField.MarkedStrength),
        ("standards", ListField.Standards),
        ("last-examined", ListField.LastExamined),
        ("obsolete-on", ListField.ObsoleteOn),
        ("fitted-to", ListField.FittedTo),
        ("state", ListField.State),
        ("out-of-use", ListField.OutOfUse),
        ("in-use", ListField.InUse),
        ("remark", ListField.Remark),
        ("leave-out", ListField.LeaveOut),
    ];

    public static IReadOnlyList<string> Names { get; } = [.. Rows.Select(r => r.Name)];

    public static string NameOf(ListField field) => Array.Find(Rows, r => r.Field == field).Name;

    /// <exception cref="ArgumentException">There is no such field; the map's schema has ruled that out.</exception>
    public static ListField Named(string name) =>
        Array.Find(Rows, r => string.Equals(r.Name, name, StringComparison.Ordinal)) is { Name: not null } row
            ? row.Field
            : throw new ArgumentException($"no field is called {name}", nameof(name));

    public static bool IsDate(ListField field) =>
        field is ListField.Manufactured or ListField.Purchased or ListField.FirstUsed or ListField.LastExamined or ListField.ObsoleteOn;

    /// <summary>Whether it may say that an item is out of use.</summary>
    public static bool IsAboutUse(ListField field) => field is ListField.State or ListField.OutOfUse or ListField.InUse;

    /// <summary>Whether several columns of a table may hold it.</summary>
    public static bool MayRepeat(ListField field) => IsAboutUse(field) || field is ListField.Remark or ListField.LeaveOut;
}
