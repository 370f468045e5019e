using ExamDocs.Intake.OwnList.Words;
using ExamDocs.Intake.Vocabulary;

namespace ExamDocs.Intake.OwnList.Mapping;

/// <summary>How a list is to be read: which column is what, and which words mean what. What is null is not settled.</summary>
public sealed record ListMap
{
    public const string FormatName = "examdocs-map/1";

    /// <summary>The order in which dates are typed that could be read in two ways.</summary>
    public DateOrder? Dates { get; init; }

    public IReadOnlyList<ColumnMap> Columns { get; init; } = [];

    /// <summary>What a column of maker and model is split after; null where that is not settled, empty where it is not split.</summary>
    public IReadOnlyList<string>? Makers { get; init; }

    public IReadOnlyList<KindMap> Kinds { get; init; } = [];

    public IReadOnlyList<WordMap> Words { get; init; } = [];

    public IReadOnlyList<ColourMap> Colours { get; init; } = [];
}

/// <summary>What one column is, under whichever sheet its heading stands.</summary>
/// <param name="Heading">As typed, with single blanks.</param>
/// <param name="To">What it holds; null where that is not settled.</param>
public sealed record ColumnMap(string Heading, ListField? To)
{
    /// <summary>What it seems to hold, where that is not settled.</summary>
    public ListField Proposed { get; init; } = ListField.Remark;

    public Sureness Sure { get; init; }

    public IReadOnlyList<string> Samples { get; init; } = [];

    /// <summary>Nothing goes into a workbook before this is settled: an item could get lost, or come in as in use.</summary>
    public bool IsNecessary =>
        To is null && Proposed is ListField.Id or ListField.Category || (To is null && ListFields.IsAboutUse(Proposed));

    /// <summary>What counts where nobody has settled it: the proposal where it is likely, else a remark.</summary>
    public ListField Effective => To ?? (Sure is Sureness.No ? ListField.Remark : Proposed);
}

/// <summary>Which category a word of the list means.</summary>
/// <param name="Word">In lower case, without numbers.</param>
/// <param name="Category">A category's id; null for an unknown kind, which stays unknown.</param>
public sealed record KindMap(string Word, string? Category)
{
    public string? Proposed { get; init; }

    public Sureness Sure { get; init; }

    /// <summary>Somebody has said so, also where that was that the kind is unknown.</summary>
    public bool IsSettled { get; init; }

    /// <summary>How many rows have it.</summary>
    public int Rows { get; init; }

    public IReadOnlyList<string> Samples { get; init; } = [];
}

/// <summary>What a word of the list says of an item's use.</summary>
/// <param name="Word">In lower case.</param>
/// <param name="Means">Null where that is not settled: the item then comes in withdrawn.</param>
public sealed record WordMap(string Word, UseMeaning? Means)
{
    public int Rows { get; init; }

    public IReadOnlyList<string> Samples { get; init; } = [];
}

/// <summary>What a colour says of the rows that it marks.</summary>
/// <param name="Colour">As the workbook names it.</param>
/// <param name="Means">Withdrawn or remark; null where that is not settled: the items then come in withdrawn.</param>
public sealed record ColourMap(string Colour, UseMeaning? Means)
{
    /// <summary>Row numbers with their sheets.</summary>
    public IReadOnlyList<string> Rows { get; init; } = [];
}
