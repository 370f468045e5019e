using System.Collections.Concurrent;

namespace ExamDocs.Core.Identity;

/// <summary>
/// Remembers how short texts were folded lately: whoever compares many items folds the same few texts again and again.
/// </summary>
/// <param name="fold">Gives the same for the same text, always.</param>
internal sealed class FoldedLately<T>(Func<string, T> fold)
{
    /// <summary>About the most texts that are remembered; then it begins anew.</summary>
    private const int Most = 10_000;

    private const int Longest = 64;

    private readonly ConcurrentDictionary<string, T> _known = new(StringComparer.Ordinal);
    private int _added;

    public T Of(string text)
    {
        if (text.Length > Longest)
            return fold(text);
        if (_known.TryGetValue(text, out var folded))
            return folded;
        // Asking the dictionary how many it has would lock it.
        if (Interlocked.Increment(ref _added) > Most)
        {
            _known.Clear();
            Volatile.Write(ref _added, 0);
        }
        return _known[text] = fold(text);
    }
}
