using System.Text;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>
/// What the pages of a file say outside of their margins, held against the texts of a page: which of them are missing, and
/// what is printed besides.
/// </summary>
internal sealed class PrintedBody
{
    private readonly BodyText _body;
    private readonly RightToLeftWords _rightToLeft;
    private readonly IReadOnlyList<string> _heads;

    /// <param name="pages">The letters of each page.</param>
    /// <param name="heads">Of tables, as they are compared.</param>
    public PrintedBody(IReadOnlyList<IReadOnlyList<PrintedLetter>> pages, IReadOnlyList<string> heads)
    {
        _body = new BodyText(pages.Select(page => page.Where(l => !l.IsMargin)));
        (_rightToLeft, _heads) = (new RightToLeftWords(_body, pages), heads);
    }

    /// <inheritdoc cref="BodyText.TextsAt"/>
    public IReadOnlyList<int> TextsAt(PrintedLetter letter) => _body.TextsAt(letter);

    /// <inheritdoc cref="TextMatching.Missing"/>
    public IReadOnlyList<int> Missing(IReadOnlyList<string> texts) => new TextMatching(_body, _rightToLeft, _heads).Missing(texts);

    /// <summary>
    /// What no text took, each stretch in one. Letters from right to left are taken by no text: of them as many are left out
    /// as the texts have.
    /// </summary>
    /// <param name="texts">For which <see cref="Missing"/> was asked.</param>
    public IReadOnlyList<string> Leftovers(IEnumerable<string> texts)
    {
        for (var page = 1; page < _body.Pages; page++)
        {
            if (_body.HeadOn(page, _heads) is { } head && !_body.IsTaken(_body.Start(page), head.Length))
                _body.Take(_body.Start(page), head.Length);
        }
        var leftward = texts
            .Where(FoldedText.RunsLeft)
            .SelectMany(FoldedText.Of)
            .CountBy(letter => letter)
            .ToDictionary(c => c.Key, c => c.Value);
        var (left, last) = (new List<StringBuilder>(), -2);
        for (var at = 0; at < _body.Length; at++)
        {
            if (_body.IsTaken(at) || TakeOne(leftward, _body[at]))
                continue;
            if (last != at - 1)
                left.Add(new StringBuilder());
            left[^1].Append(_body[at]);
            last = at;
        }
        return [.. left.Select(l => l.ToString())];
    }

    /// <summary>
    /// Whether the file draws exactly these texts, one after the other; the head of a table that runs on may stand on top of each further
    /// page.
    /// </summary>
    /// <param name="texts">In the order of the page.</param>
    public bool Says(IEnumerable<string> texts)
    {
        var wanted = string.Concat(texts.Select(FoldedText.Of)).AsSpan();
        for (var page = 0; page < _body.Pages; page++)
        {
            var said = _body.Between(_body.Start(page), _body.End(page));
            if (!wanted.StartsWith(said, StringComparison.Ordinal) && page > 0 && _body.HeadOn(page, _heads) is { } head)
                said = said[head.Length..];
            if (!wanted.StartsWith(said, StringComparison.Ordinal))
                return false;
            wanted = wanted[said.Length..];
        }
        return wanted.IsEmpty;
    }

    private static bool TakeOne(Dictionary<char, int> letters, char letter)
    {
        if (letters.GetValueOrDefault(letter) == 0)
            return false;
        letters[letter]--;
        return true;
    }
}
