using ExamDocs.Core.Findings;

namespace ExamDocs.Cli;

/// <summary>The lines of findings: the place, what is wrong, what to type, the code last. Nothing rests on colour.</summary>
/// <param name="width">Characters of a line; longer ones are continued on the next.</param>
/// <param name="allPlaces">Whether every row is named, however many there are.</param>
internal sealed class FindingText(int width, bool allPlaces)
{
    private const int Narrowest = 40;

    public int LinesOf(FindingGroup group) => Lines(group).Count();

    public IEnumerable<string> Of(IReadOnlyList<FindingSection> sections)
    {
        foreach (var section in sections)
        {
            yield return section.Sheet is { } sheet ? Screen.Say($"{section.File}, sheet {sheet}") : section.File;
            foreach (var (item, findings) in section.Items)
            {
                if (item is not null)
                    yield return $"  {item}";
                foreach (var line in findings.SelectMany(Lines))
                    yield return line;
            }
        }
    }

    private IEnumerable<string> Lines(FindingGroup group)
    {
        var (finding, place) = (group.First, PlaceWords.Of(group, allPlaces));
        var said = group.OfOtherValues is 0 ? finding.Message : $"{finding.Message}, and {group.OfOtherValues} like it";
        var what = place.Equals(Message.None)
            ? (Message)$"{finding.Severity.Said()}: {said}"
            : $"{finding.Severity.Said()} {place}: {said}";
        return Wrapped("    ", Stopped(Screen.Say(what)))
            .Concat(Wrapped("      ", $"{Screen.Say(finding.Hint)} [{finding.Code}]".TrimStart()));
    }

    private static string Stopped(string sentence) => sentence.Length > 0 && sentence[^1] is '.' or '?' or '!' ? sentence : $"{sentence}.";

    private IEnumerable<string> Wrapped(string indent, string text)
    {
        var room = Math.Max(Narrowest, width) - indent.Length;
        text = string.Join(' ', text.Split(['\r', '\n', '\t'], StringSplitOptions.RemoveEmptyEntries));
        while (text.Length > room)
        {
            var end = text.LastIndexOf(' ', room) is > 0 and var blank ? blank : room;
            yield return indent + text[..end];
            text = text[end..].TrimStart();
        }
        yield return indent + text;
    }
}
