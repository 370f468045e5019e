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
            yield return section.Sheet is { } sheet ? $"{section.File}, sheet {sheet}" : section.File;
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
        var more = group.OfOtherValues is 0 ? "" : FormattableString.Invariant($", and {group.OfOtherValues} like it");
        var what = $"{finding.Severity.Word()}{(place.Length == 0 ? "" : $" {place}")}: {Stopped(finding.Message + more)}";
        return Wrapped("    ", what).Concat(Wrapped("      ", $"{finding.Hint} [{finding.Code}]".TrimStart()));
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
