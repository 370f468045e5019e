namespace ExamDocs.Register.Model;

/// <summary>What a number is asked for.</summary>
/// <param name="Letter">Letter of the kind, A to Z.</param>
/// <param name="Year">Year of issue, 1900 to 9999 inclusive.</param>
/// <param name="Kind">Word of the kind, for example report.</param>
/// <param name="JobKey">Names the same input, rules and template.</param>
/// <param name="Items">Ids of the items it is about.</param>
/// <param name="Folder">Where the file goes, made where it is missing; null where its bytes are kept in the register alone.</param>
public sealed record DocumentRequest(char Letter, int Year, string Kind, string JobKey, IReadOnlyList<string> Items, string? Folder)
{
    /// <summary>For example en; null where not known.</summary>
    public string? Language { get; init; }

    /// <summary>The visit that it is made from, as the register numbered it; null for none.</summary>
    public int? Visit { get; init; }

    /// <summary>The last visit that the run knows of; null where only those up to its own.</summary>
    public int? KnownUpTo { get; init; }

    /// <summary>Number of the document that it is a copy of; null for what is no copy.</summary>
    public string? CopyOf { get; init; }

    /// <summary>Documents that are no longer current once it is out.</summary>
    public IReadOnlyList<Replacement> Replaces { get; init; } = [];
}

/// <summary>A document that another takes the place of.</summary>
/// <param name="Number">Number of the one that is replaced.</param>
/// <param name="Reason">Why, in words.</param>
public sealed record Replacement(string Number, string Reason);

/// <summary>A number that was taken and whose document is not out yet. Only the register makes one.</summary>
public sealed class PendingDocument
{
    internal PendingDocument(string number, string kind, string jobKey, IReadOnlyList<string> items, string folder) =>
        (Number, Kind, JobKey, Items, Folder) = (number, kind, jobKey, items, folder);

    /// <summary>The last visit that the run knew of which took the number; null where that is not known.</summary>
    internal int? KnownUpTo { get; init; }

    public string Number { get; }

    public string Kind { get; }

    public string JobKey { get; }

    /// <summary>Ids of the items it is about, in the order given.</summary>
    public IReadOnlyList<string> Items { get; }

    /// <summary>Full path of the folder the file goes to; empty where its bytes are kept in the register alone.</summary>
    public string Folder { get; }

    public string FileName => $"{Number}.pdf";
}
