namespace ExamDocs.Intake.Workbook.Shape;

internal enum ColumnKind
{
    Text,

    /// <summary>Text copied from a marking or a document, in which a leading zero counts.</summary>
    Identity,
    Date,
    Number,

    /// <summary>yes or no.</summary>
    Flag,

    /// <summary>Texts separated by semicolons.</summary>
    List,

    /// <summary>One more number at the end of a list.</summary>
    NumberInList,
}

/// <summary>What a column offers to choose from that is no fixed list of words; anything else may be typed too.</summary>
internal enum ColumnOffer
{
    None,

    /// <summary>Ids of the people sheet.</summary>
    People,

    /// <summary>Ids of the items.</summary>
    Items,

    /// <summary>Criteria of the workbook's categories.</summary>
    Criteria,

    Regimes,

    /// <summary>Names of firms and places of earlier visits.</summary>
    Firms,

    /// <summary>Their addresses.</summary>
    Addresses,
}

/// <summary>Which part of a row a column belongs to.</summary>
internal enum ColumnGroup
{
    Item,
    Examination,
    Criterion,
    CriterionNote,

    /// <summary>What was seen for a criterion at the visit before: shown, never read.</summary>
    LastTime,
    Conclusion,
}

/// <summary>One column of a sheet: what stands above it, and where its value goes.</summary>
/// <param name="Heading">In lower case, as matched.</param>
/// <param name="Path">Member path below the row's object, for example safeWorkingLoad/value; for a criterion, its id.</param>
/// <param name="Help">What to type, in plain words.</param>
internal sealed record Column(string Heading, string Path, ColumnKind Kind, string Help)
{
    /// <summary>The only words allowed; empty where any text is.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    public ColumnGroup Group { get; init; }

    public ColumnOffer Offers { get; init; }

    /// <summary>Every row of the sheet needs it, so that a sheet without it is not one that was meant.</summary>
    public bool IsNeeded { get; init; }

    /// <summary>Most rows fill it in: it is written before the columns that few rows need, which are folded away.</summary>
    public bool IsUsual { get; init; }

    /// <summary>No item comes out fit without it: its heading bears a star, which counts for nothing when it is read.</summary>
    public bool IsStarred { get; init; }

    /// <summary>It names something: an item, a person, a maker or a model.</summary>
    public bool Names { get; init; }

    /// <summary>An answer, a conclusion, an identity, a date or one of a few words: what an outcome depends on.</summary>
    public bool Decides =>
        Names
        || Words.Count > 0
        || Kind is ColumnKind.Identity or ColumnKind.Date
        || Group is ColumnGroup.Criterion or ColumnGroup.CriterionNote or ColumnGroup.Conclusion;

    /// <summary>Width in characters; longer text wraps.</summary>
    public int Width { get; init; } = 14;

    public static Column Text(string heading, string path, string help, int width = 18) =>
        new(heading, path, ColumnKind.Text, help) { Width = width };

    /// <summary>A name that the record itself gives: of an item, a person, a criterion.</summary>
    public static Column Id(string heading, string path, string help) =>
        new(heading, path, ColumnKind.Text, help) { Width = 16, Names = true };

    public static Column Identity(string heading, string path, string help) => new(heading, path, ColumnKind.Identity, help) { Width = 16 };

    public static Column Date(string heading, string path, string help) =>
        new(heading, path, ColumnKind.Date, help + " Year-month-day, for example 2026-05-11.") { Width = 13 };

    /// <summary>A date of which only the year, or year and month, may be known.</summary>
    public static Column PartialDate(string heading, string path, string help) =>
        new(heading, path, ColumnKind.Date, help + " As exactly as it is known: 2024, 2024-02 or 2024-02-29.") { Width = 13 };

    public static Column Number(string heading, string path, string help) => new(heading, path, ColumnKind.Number, help) { Width = 11 };

    public static Column Flag(string heading, string path, string help) =>
        new(heading, path, ColumnKind.Flag, help) { Words = ["yes", "no"], Width = 10 };

    public static Column Word(string heading, string path, IReadOnlyList<string> words, string help) =>
        new(heading, path, ColumnKind.Text, help) { Words = words, Width = 16 };

    public static Column List(string heading, string path, string help) =>
        new(heading, path, ColumnKind.List, help + " Several are separated by semicolons.") { Width = 22 };
}
