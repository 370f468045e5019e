namespace ExamDocs.Documents.ReadingBack;

/// <summary>One way in which a printed file does not say what its page says.</summary>
/// <param name="Words">What is wrong, a few words with the text in quotes.</param>
/// <param name="Item">The id, as printed, of the item whose part of the page it is; null where it is not an item's.</param>
public sealed record PrintFault(string Words, string? Item)
{
    public override string ToString() => Item is null ? Words : $"{Item}: {Words}";
}
