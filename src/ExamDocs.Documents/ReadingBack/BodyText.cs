using System.Text;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>
/// The letters of all pages in one row, folded as they are compared, and which of them a text has taken: each letter counts
/// for one text.
/// </summary>
internal sealed class BodyText
{
    private readonly string _text;
    private readonly bool[] _taken;

    /// <summary>The text that took a letter, by its place in the list of texts; -1 for none, and for the head of a table.</summary>
    private readonly int[] _by;
    private readonly int[] _pageEnds;
    private readonly HashSet<int> _runEnds;
    private readonly Dictionary<PrintedLetter, int> _places;

    /// <param name="pages">The letters of each page, those of the margins left out.</param>
    public BodyText(IEnumerable<IEnumerable<PrintedLetter>> pages)
    {
        var (text, ends, runs) = (new StringBuilder(), new List<int>(), new HashSet<int> { 0 });
        _places = new Dictionary<PrintedLetter, int>(ReferenceEqualityComparer.Instance);
        foreach (var page in pages)
        {
            var run = -1;
            foreach (var letter in page)
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
        (_taken, _by) = (new bool[_text.Length], [.. Enumerable.Repeat(-1, _text.Length)]);
    }

    public int Length => _text.Length;

    public char this[int at] => _text[at];

    public int Pages => _pageEnds.Length;

    public int Start(int page) => page == 0 ? 0 : _pageEnds[page - 1];

    public int End(int page) => _pageEnds[page];

    /// <summary>The page that begins at this place; null where none does, or only the first.</summary>
    public int? PageFrom(int at) => Array.IndexOf(_pageEnds, at) + 1 is > 0 and var page && page < _pageEnds.Length ? page : null;

    public ReadOnlySpan<char> Between(int from, int to) => _text.AsSpan(from..to);

    public bool Contains(string text) => _text.Contains(text, StringComparison.Ordinal);

    public bool IsTaken(int at, int length = 1) => _taken.AsSpan(at, length).Contains(true);

    /// <summary>Takes letters that no text of the page has for itself.</summary>
    public void Take(int at, int length) => _taken.AsSpan(at, length).Fill(true);

    /// <returns>Where the letters taken end.</returns>
    public int Take(int at, int length, int text)
    {
        Take(at, length);
        _by.AsSpan(at, length).Fill(text);
        return at + length;
    }

    /// <summary>
    /// Which of the texts took a letter, or those on either side of it where none did: what is cut may not be found as a text.
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

    /// <summary>Whether a text stands here whole, begins and ends with a run of letters, and none of it is taken yet.</summary>
    public bool IsOfWholeRuns(int at, string text) =>
        at + text.Length <= _text.Length
        && _runEnds.Contains(at)
        && _runEnds.Contains(at + text.Length)
        && string.CompareOrdinal(_text, at, text, 0, text.Length) == 0
        && !IsTaken(at, text.Length);

    /// <summary>The first place at which <see cref="IsOfWholeRuns"/> holds; null where there is none.</summary>
    /// <param name="text">As it is compared.</param>
    /// <param name="from">First place looked at.</param>
    /// <param name="before">The text begins before this place.</param>
    public int? FindRuns(string text, int from, int before = int.MaxValue)
    {
        var last = Math.Min(before, _text.Length);
        var end = before == int.MaxValue ? _text.Length : Math.Min(_text.Length, before + text.Length);
        for (var at = from; at < last; at++)
        {
            at = _text.IndexOf(text, at, end - at, StringComparison.Ordinal);
            if (at < 0)
                return null;
            if (IsOfWholeRuns(at, text))
                return at;
        }
        return null;
    }

    /// <summary>Where a text stands between two places and is not taken yet, runs or not; null where it does not.</summary>
    public int? Find(string text, int from, int to)
    {
        for (var at = from; at + text.Length <= to; at++)
        {
            at = _text.IndexOf(text, at, to - at, StringComparison.Ordinal);
            if (at < 0)
                return null;
            if (!IsTaken(at, text.Length))
                return at;
        }
        return null;
    }

    /// <summary>The head of a table that stands on top of a page; null where none does.</summary>
    /// <param name="page">Counted from 0.</param>
    /// <param name="heads">Of the tables, as they are compared.</param>
    public string? HeadOn(int page, IReadOnlyList<string> heads) =>
        heads.FirstOrDefault(h =>
            h.Length > 0 && Start(page) + h.Length <= End(page) && string.CompareOrdinal(_text, Start(page), h, 0, h.Length) == 0
        );
}
