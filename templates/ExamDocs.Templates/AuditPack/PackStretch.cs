namespace ExamDocs.Templates.AuditPack;

/// <summary>
/// A part of a pack's own pages that is printed by itself: a table of thousands of rows printed in one go would take hundreds of megabytes.
/// </summary>
/// <param name="Gaps">The gaps on it.</param>
/// <param name="Items">The items on it.</param>
/// <param name="Documents">The documents on it.</param>
public sealed record PackStretch(IReadOnlyList<PackGap> Gaps, IReadOnlyList<PackItem> Items, IReadOnlyList<PackDocument> Documents)
{
    /// <summary>Rows of tables, inclusive; about ten pages.</summary>
    public const int MostRows = 200;

    public bool IsFirst { get; init; }

    public bool IsLast { get; init; }

    /// <summary>Whether the table of items begins on it.</summary>
    public bool BeginsItems { get; init; }

    /// <summary>Whether the table of documents begins on it.</summary>
    public bool BeginsDocuments { get; init; }

    /// <summary>All rows in as few stretches as hold them; one at least.</summary>
    public static IReadOnlyList<PackStretch> Of(
        IReadOnlyList<PackGap> gaps,
        IReadOnlyList<PackItem> items,
        IReadOnlyList<PackDocument> documents
    )
    {
        var stretches = new List<PackStretch>();
        for (var (gap, item, document) = (0, 0, 0); stretches.Count == 0 || !stretches[^1].IsLast; )
        {
            var someGaps = gaps.Skip(gap).Take(MostRows).ToList();
            var someItems = items.Skip(item).Take(MostRows - someGaps.Count).ToList();
            var someDocuments = documents.Skip(document).Take(MostRows - someGaps.Count - someItems.Count).ToList();
            var (beginsItems, beginsDocuments) = (item == 0 && someItems.Count > 0, document == 0 && someDocuments.Count > 0);
            (gap, item, document) = (gap + someGaps.Count, item + someItems.Count, document + someDocuments.Count);
            stretches.Add(
                new(someGaps, someItems, someDocuments)
                {
                    IsFirst = stretches.Count == 0,
                    IsLast = gap == gaps.Count && item == items.Count && document == documents.Count,
                    BeginsItems = beginsItems,
                    BeginsDocuments = beginsDocuments,
                }
            );
        }
        return stretches;
    }
}
