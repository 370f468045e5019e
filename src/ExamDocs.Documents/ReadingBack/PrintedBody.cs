using System.Text;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>The text of all pages in one, from which what was found is struck off, so that it counts once.</summary>
internal sealed class PrintedBody
{
    private readonly string _text;
    private readonly bool[] _found;
    private readonly int[] _by;
    private readonly int[] _pageEnds;
    private readonly HashSet<int> _runEnds;
    private readonly Dictionary<PrintedLetter, int> _places;
    private readonly Lazy<string> _reversed;
    private readonly Dictionary<string, int> _searched = new(StringComparer.Ordinal);

    public PrintedBody(IReadOnlyList<IReadOnlyList<PrintedLetter>> pages)
    {
        var (text, ends, runs) = (new StringBuilder(), new List<int>(), new HashSet<int> { 0 });
        _places = new Dictionary<PrintedLetter, int>(ReferenceEqualityComparer.Instance);
        foreach (var page in pages)
        {
            var run = -1;
            foreach (var letter in page.Where(l => !l.IsMargin))
            {
                if (letter.Run != run)
                    runs.Add(text.Length);
                run = letter.Run;
                _places[letter] = text.Length;
                text.Append(FoldedText.Of(letter.Text));
            }
            runs.Add(text.Length);
            ends.Add(text.Length);
        }
        (_text, _pageEnds, _runEnds) = (text.ToString(), [.. ends], runs);
        (_found, _by) = (new bool[_text.Length], [.. Enumerable.Repeat(-1, _text.Length)]);
        _reversed = new Lazy<string>(() => string.Concat(pages.SelectMany(p => p).Reverse().Select(l => FoldedText.Of(l.Text))));
    }

    /// <summary>
    /// Which of the texts struck off took a letter, or those on either side of it where none did: what is cut may not be
    /// found as a text.
    /// </summary>
    public IReadOnlyList<int> TextsAt(PrintedLetter letter)
    {
        if (!_places.TryGetValue(letter, out var at))
            return [];
        if (at < _by.Length && _by[at] >= 0)
            return [_by[at]];
        var before = Array.FindLastIndex(_by, Math.Min(at, _by.Length - 1), by => by >= 0);
        var after = at < _by.Length ? Array.FindIndex(_by, at, by => by >= 0) : -1;
        return before >= 0 && after >= 0 ? [_by[before], _by[after]] : [];
    }

    /// <summary>
    /// Strikes texts off, so that each takes letters of its own. A text always fills whole runs of letters, and nearly always
    /// stands in its order: those are struck off first, so that 150 is never found in the end of one figure and the
    /// beginning of the next. What is left is then looked for wherever it stands, since what lies above other things is
    /// drawn after them.
    /// </summary>
    /// <param name="texts">In the order of the page.</param>
    /// <param name="heads">Of tables: one that runs on has its head again on top of each further page.</param>
    /// <returns>Those that are not there, by their place in the list.</returns>
    public IReadOnlyList<int> StrikeAll(IReadOnlyList<string> texts, IReadOnlyList<string> heads)
    {
        var folded = texts.Select(FoldedText.Of).ToArray();
        var left = new List<int>();
        var at = 0;
        for (var i = 0; i < texts.Count; i++)
        {
            if (folded[i].Length == 0)
                continue;
            if (!IsOfWholeRuns(at, folded[i]))
                at = PastHead(at, heads);
            if (FoldedText.RunsLeft(texts[i]))
                left.Add(i);
            else if (IsOfWholeRuns(at, folded[i]))
                at = TakeFor(i, at, folded[i].Length);
            else if (Further(folded, i, at) is { } further)
                at = TakeFor(i, further, folded[i].Length);
            else
                left.Add(i);
        }
        left = [.. left.OrderByDescending(i => folded[i].Length)];
        left = [.. left.Where(i => FoldedText.RunsLeft(texts[i]) || !StrikeRuns(i, folded[i]))];
        return [.. left.Where(i => !Strike(i, texts[i]))];
    }

    /// <summary>Letters. A shorter text stands on a page more than once, and would lead astray.</summary>
    private const int LongEnoughToFindTheWay = 12;

    /// <summary>Letters: how far a short text is looked for.</summary>
    private const int ShortWay = 300;

    /// <summary>Texts that are looked at to see whether one is missing where the next ones stand.</summary>
    private const int Ahead = 8;

    /// <summary>
    /// Where a text stands further on; null where one of those after it stands nearer. Then it is itself what is missing, and
    /// the same words further on are another's.
    /// </summary>
    private int? Further(string[] texts, int index, int from)
    {
        if (FindRuns(texts[index], from) is not { } found || (texts[index].Length < LongEnoughToFindTheWay && found - from > ShortWay))
            return null;
        for (var next = index + 1; next <= index + Ahead && next < texts.Length; next++)
        {
            if (texts[next].Length > 0 && FindRuns(texts[next], from, found) is { } nearer && nearer < found)
                return null;
        }
        return found;
    }

    private int PastHead(int at, IReadOnlyList<string> heads)
    {
        var page = Array.IndexOf(_pageEnds, at) + 1;
        if (page == 0 || page == _pageEnds.Length || HeadOn(page, heads) is not { } head || _found.AsSpan(at, head.Length).Contains(true))
            return at;
        Take(at, head.Length);
        return at + head.Length;
    }

    private int TakeFor(int text, int at, int length)
    {
        Take(at, length);
        _by.AsSpan(at, length).Fill(text);
        return at + length;
    }

    private bool IsOfWholeRuns(int at, string text) =>
        at + text.Length <= _text.Length
        && _runEnds.Contains(at)
        && _runEnds.Contains(at + text.Length)
        && string.CompareOrdinal(_text, at, text, 0, text.Length) == 0
        && !_found.AsSpan(at, text.Length).Contains(true);

    private bool StrikeRuns(int text, string folded)
    {
        if (FindRuns(folded, 0) is not { } at)
            return false;
        TakeFor(text, at, folded.Length);
        return true;
    }

    private int? FindRuns(string text, int from, int to = int.MaxValue)
    {
        for (
            var at = from;
            at < Math.Min(to, _text.Length)
                && (
                    at = _text.IndexOf(
                        text,
                        at,
                        Math.Min(_text.Length, to == int.MaxValue ? to : to + text.Length) - at,
                        StringComparison.Ordinal
                    )
                ) >= 0;
            at++
        )
        {
            if (IsOfWholeRuns(at, text))
                return at;
        }
        return null;
    }

    /// <summary>
    /// Strikes a text off: whole, wherever it stands; or parted between two of its words by a page's end. Longer texts have
    /// to be struck off first: a shorter one stands within them.
    /// </summary>
    private bool Strike(int index, string text) =>
        FoldedText.RunsLeft(text) ? IsFoundAmongWords(text) : StrikeWhole(index, FoldedText.Of(text)) || StrikeParted(index, text);

    /// <summary>
    /// What was not struck off, each stretch in one. Letters from right to left are never struck off: of them as many are
    /// taken away as the texts have.
    /// </summary>
    public IReadOnlyList<string> Leftovers(IEnumerable<string> texts, IReadOnlyList<string> heads)
    {
        for (var page = 1; page < _pageEnds.Length; page++)
        {
            if (HeadOn(page, heads) is { } head && !_found.AsSpan(Start(page), head.Length).Contains(true))
                Take(Start(page), head.Length);
        }
        var leftward = texts
            .Where(FoldedText.RunsLeft)
            .SelectMany(FoldedText.Of)
            .CountBy(letter => letter)
            .ToDictionary(c => c.Key, c => c.Value);
        var left = new List<StringBuilder>();
        var last = -2;
        for (var at = 0; at < _text.Length; at++)
        {
            if (_found[at] || TakeOne(leftward, _text[at]))
                continue;
            if (last != at - 1)
                left.Add(new StringBuilder());
            left[^1].Append(_text[at]);
            last = at;
        }
        return [.. left.Select(l => l.ToString())];
    }

    /// <summary>
    /// Whether the file draws exactly these texts, one after the other; the head of a table that runs on may stand on top of each further
    /// page.
    /// </summary>
    /// <param name="texts">In the order of the page.</param>
    /// <param name="heads">Of tables, as they are compared.</param>
    public bool Says(IEnumerable<string> texts, IReadOnlyList<string> heads)
    {
        var wanted = string.Concat(texts.Select(FoldedText.Of)).AsSpan();
        for (var page = 0; page < _pageEnds.Length; page++)
        {
            var said = _text.AsSpan(Start(page).._pageEnds[page]);
            if (!wanted.StartsWith(said, StringComparison.Ordinal) && page > 0 && HeadOn(page, heads) is { } head)
                said = said[head.Length..];
            if (!wanted.StartsWith(said, StringComparison.Ordinal))
                return false;
            wanted = wanted[said.Length..];
        }
        return wanted.IsEmpty;
    }

    private string? HeadOn(int page, IReadOnlyList<string> heads) =>
        heads.FirstOrDefault(h =>
            h.Length > 0 && Start(page) + h.Length <= _pageEnds[page] && string.CompareOrdinal(_text, Start(page), h, 0, h.Length) == 0
        );

    private static bool TakeOne(Dictionary<char, int> letters, char letter)
    {
        if (letters.GetValueOrDefault(letter) == 0)
            return false;
        letters[letter]--;
        return true;
    }

    private bool StrikeWhole(int index, string text)
    {
        if (text.Length == 0)
            return true;
        // What was found taken for the same text before stays taken.
        var at = Find(text, _searched.GetValueOrDefault(text), _text.Length);
        _searched[text] = at + text.Length ?? _text.Length;
        if (at is { } found)
            TakeFor(index, found, text.Length);
        return at is not null;
    }

    private bool StrikeParted(int index, string text)
    {
        var words = text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
            .Select(FoldedText.Of)
            .Where(w => w.Length > 0)
            .ToArray();
        for (var page = 0; page < _pageEnds.Length - 1; page++)
        {
            if (StrikeParted(index, words, page))
                return true;
        }
        return false;
    }

    /// <summary>As many words as this page has of it in one, the rest on the next, and so on.</summary>
    private bool StrikeParted(int index, string[] words, int page)
    {
        var parts = new List<(int At, int Length)>();
        for (var done = 0; done < words.Length; page++)
        {
            if (page == _pageEnds.Length || Longest(words, done, page) is not { } part)
                return false;
            parts.Add((part.At, part.Length));
            done += part.Words;
        }
        foreach (var (at, length) in parts)
            TakeFor(index, at, length);
        return true;
    }

    private (int At, int Length, int Words)? Longest(string[] words, int from, int page)
    {
        for (var to = words.Length; to > from; to--)
        {
            var text = string.Concat(words[from..to]);
            if (Find(text, Start(page), _pageEnds[page]) is { } at)
                return (at, text.Length, to - from);
        }
        return null;
    }

    /// <summary>
    /// Letters from right to left stand in the file in the order in which they are seen. How the words of a line are
    /// mixed cannot be undone with certainty; each word must be there whole, from either side.
    /// </summary>
    private bool IsFoundAmongWords(string text) =>
        text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
            .SelectMany(Runs)
            .All(run =>
                run.Length == 0 || _text.Contains(run, StringComparison.Ordinal) || _reversed.Value.Contains(run, StringComparison.Ordinal)
            );

    /// <summary>A word parted where its direction changes.</summary>
    private static IEnumerable<string> Runs(string word)
    {
        var run = new StringBuilder();
        bool? left = null;
        foreach (var rune in word.EnumerateRunes())
        {
            var runsLeft =
                FoldedText.IsRightToLeft(rune)
                || (left is true && Rune.GetUnicodeCategory(rune) is System.Globalization.UnicodeCategory.NonSpacingMark);
            if (left is { } before && before != runsLeft)
            {
                yield return FoldedText.Of(run.ToString());
                run.Clear();
            }
            left = runsLeft;
            run.Append(rune.ToString());
        }
        yield return FoldedText.Of(run.ToString());
    }

    private int Start(int page) => page == 0 ? 0 : _pageEnds[page - 1];

    /// <summary>Where it stands between two places and is not struck off yet; null where it does not.</summary>
    private int? Find(string text, int from, int to)
    {
        for (var at = from; at + text.Length <= to; at++)
        {
            at = _text.IndexOf(text, at, to - at, StringComparison.Ordinal);
            if (at < 0)
                return null;
            if (!_found.AsSpan(at, text.Length).Contains(true))
                return at;
        }
        return null;
    }

    private void Take(int at, int length) => _found.AsSpan(at, length).Fill(true);
}
