namespace ExamDocs.Documents.ReadingBack;

/// <summary>
/// Finds each text of a page among the letters printed, so that each takes letters of its own. A text always fills whole
/// runs of letters, and nearly always stands in its order: those are taken first, so that 150 is never found in the end of
/// one figure and the beginning of the next. What is left is then looked for wherever it stands, since what lies above
/// other things is drawn after them.
/// </summary>
/// <param name="body">The letters printed.</param>
/// <param name="rightToLeft">Finds what runs from right to left.</param>
/// <param name="heads">Of tables, as they are compared: one that runs on has its head again on top of each further page.</param>
internal sealed class TextMatching(BodyText body, RightToLeftWords rightToLeft, IReadOnlyList<string> heads)
{
    /// <summary>Letters. A shorter text stands on a page more than once, and would lead astray.</summary>
    private const int LongEnoughToFindTheWay = 12;

    /// <summary>Letters: how far a short text is looked for.</summary>
    private const int ShortWay = 300;

    /// <summary>Texts that are looked at to see whether one is missing where the next ones stand.</summary>
    private const int Ahead = 8;

    /// <summary>Where the search for a text begins the next time: what it took before stays taken.</summary>
    private readonly Dictionary<string, int> _searched = new(StringComparer.Ordinal);

    /// <param name="texts">In the order of the page.</param>
    /// <returns>Those that are not there, by their place in the list.</returns>
    public IReadOnlyList<int> Missing(IReadOnlyList<string> texts)
    {
        var folded = texts.Select(FoldedText.Of).ToArray();
        // Longer texts first: a shorter one stands within them.
        List<int> left = [.. TakeInOrder(texts, folded).OrderByDescending(i => folded[i].Length)];
        left = [.. left.Where(i => FoldedText.RunsLeft(texts[i]) || !TakeRuns(i, folded[i]))];
        return [.. left.Where(i => !TakeAnywhere(i, texts[i]))];
    }

    /// <returns>The texts that do not follow each other in the file as they do on the page.</returns>
    private List<int> TakeInOrder(IReadOnlyList<string> texts, string[] folded)
    {
        var left = new List<int>();
        var at = 0;
        for (var i = 0; i < texts.Count; i++)
        {
            if (folded[i].Length == 0)
                continue;
            if (!body.IsOfWholeRuns(at, folded[i]))
                at = PastHead(at);
            if (FoldedText.RunsLeft(texts[i]))
                left.Add(i);
            else if (body.IsOfWholeRuns(at, folded[i]))
                at = body.Take(at, folded[i].Length, i);
            else if (Further(folded, i, at) is { } further)
                at = body.Take(further, folded[i].Length, i);
            else
                left.Add(i);
        }
        return left;
    }

    /// <summary>
    /// Where a text stands further on; null where one of those after it stands nearer. Then it is itself what is missing, and
    /// the same words further on are another's.
    /// </summary>
    private int? Further(string[] texts, int index, int from)
    {
        if (body.FindRuns(texts[index], from) is not { } found || (texts[index].Length < LongEnoughToFindTheWay && found - from > ShortWay))
            return null;
        for (var next = index + 1; next <= index + Ahead && next < texts.Length; next++)
        {
            if (texts[next].Length > 0 && body.FindRuns(texts[next], from, found) is { } nearer && nearer < found)
                return null;
        }
        return found;
    }

    private int PastHead(int at)
    {
        if (body.PageFrom(at) is not { } page || body.HeadOn(page, heads) is not { } head || body.IsTaken(at, head.Length))
            return at;
        body.Take(at, head.Length);
        return at + head.Length;
    }

    private bool TakeRuns(int text, string folded)
    {
        if (body.FindRuns(folded, 0) is not { } at)
            return false;
        body.Take(at, folded.Length, text);
        return true;
    }

    /// <summary>Whole, wherever it stands; or parted between two of its words by a page's end.</summary>
    private bool TakeAnywhere(int index, string text) =>
        FoldedText.RunsLeft(text) ? rightToLeft.AreIn(text) : TakeWhole(index, FoldedText.Of(text)) || TakeParted(index, text);

    private bool TakeWhole(int index, string text)
    {
        if (text.Length == 0)
            return true;
        var at = body.Find(text, _searched.GetValueOrDefault(text), body.Length);
        _searched[text] = at + text.Length ?? body.Length;
        if (at is { } found)
            body.Take(found, text.Length, index);
        return at is not null;
    }

    private bool TakeParted(int index, string text)
    {
        var words = text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
            .Select(FoldedText.Of)
            .Where(w => w.Length > 0)
            .ToArray();
        for (var page = 0; page < body.Pages - 1; page++)
        {
            if (TakeParted(index, words, page))
                return true;
        }
        return false;
    }

    /// <summary>As many words as this page has of it in one, the rest on the next, and so on.</summary>
    private bool TakeParted(int index, string[] words, int page)
    {
        var parts = new List<(int At, int Length)>();
        for (var done = 0; done < words.Length; page++)
        {
            if (page == body.Pages || Longest(words, done, page) is not { } part)
                return false;
            parts.Add((part.At, part.Length));
            done += part.Words;
        }
        foreach (var (at, length) in parts)
            body.Take(at, length, index);
        return true;
    }

    private (int At, int Length, int Words)? Longest(string[] words, int from, int page)
    {
        for (var to = words.Length; to > from; to--)
        {
            var text = string.Concat(words[from..to]);
            if (body.Find(text, body.Start(page), body.End(page)) is { } at)
                return (at, text.Length, to - from);
        }
        return null;
    }
}
