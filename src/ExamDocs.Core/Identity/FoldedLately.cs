namespace ExamDocs.Core.Identity;

/// <summary>
/// Remembers how short texts were folded lately: whoever compares many items folds the same few texts again and again.
/// </summary>
/// <param name="fold">Gives the same for the same text, always.</param>
internal sealed class FoldedLately<T>(Func<string, T> fold)
{
    /// <summary>The most texts that a thread remembers; then it begins anew.</summary>
    private const int Most = 4096;

    private const int Longest = 64;

    private readonly ThreadLocal<Dictionary<string, T>> _known = new(() => new(StringComparer.Ordinal));

    public T Of(string text)
    {
        if (text.Length > Longest)
            return fold(text);
        var known = _known.Value!;
        if (known.TryGetValue(text, out var folded))
            return folded;
        if (known.Count >= Most)
            known.Clear();
        return known[text] = fold(text);
    }
}
