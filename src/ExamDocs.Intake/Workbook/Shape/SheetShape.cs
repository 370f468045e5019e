using ExamDocs.Core.Criteria;

namespace ExamDocs.Intake.Workbook.Shape;

/// <summary>What a sheet's rows are.</summary>
internal enum SheetRole
{
    /// <summary>Not read.</summary>
    Guide,

    /// <summary>One row per particular: its name, its value.</summary>
    Visit,

    /// <summary>One row per item, with its examination.</summary>
    Items,

    /// <summary>One row per entry of a list within an item.</summary>
    ItemDetail,

    EarlierExaminations,
    EarlierObservations,

    /// <summary>One row per entry of a list within an examination.</summary>
    ExaminationDetail,

    Photos,

    /// <summary>One row per entry of a list of the record.</summary>
    RecordList,
}

/// <summary>A sheet with its columns; the order of roles is the order in which sheets are read.</summary>
/// <param name="Path">The list that rows go into, for example limits or diameters; empty where the role says it.</param>
internal sealed record SheetShape(string Name, SheetRole Role, string Path, IReadOnlyList<Column> Columns)
{
    /// <summary>The category that all items of the sheet have; null where a column says it.</summary>
    public Category? Category { get; init; }

    /// <summary>Names that the sheet had in workbooks of earlier versions.</summary>
    public IReadOnlyList<string> OtherNames { get; init; } = [];

    public string About { get; init; } = "";
}
