using System.Text.RegularExpressions;

namespace ExamDocs.Core.Findings;

/// <summary>
/// What to tell of the findings of a record: each cause once. What follows from another finding is left out, and the same
/// finding in many rows is one with its rows.
/// </summary>
public static partial class FindingGroups
{
    /// <param name="findings">Tied to their causes.</param>
    /// <param name="sources">Where they were typed.</param>
    /// <param name="acrossValues">
    /// Whether those that differ only in the value that they name are one too: so many dates typed in another way are one slip.
    /// </param>
    /// <returns>The gravest first; of equal ones in the order found.</returns>
    public static IReadOnlyList<FindingGroup> Of(IReadOnlyList<Finding> findings, SourceMap sources, bool acrossValues = false)
    {
        ArgumentNullException.ThrowIfNull(sources);
        return
        [
            .. findings
                .Where(f => f.FollowsFrom is null)
                .GroupBy(f => (f.Code, f.Severity, acrossValues ? Shape(f) : $"{f.Message}\n{f.Hint}"))
                .Select(same => new FindingGroup([.. same], [.. same.Select(f => sources.PlaceOf(f.Path)).Distinct()]))
                .OrderByDescending(g => g.First.Severity),
        ];
    }

    /// <summary>
    /// The gravest section first, and in it what is about several items or none, then the gravest item; what is found on several
    /// sheets stands under its file.
    /// </summary>
    public static IReadOnlyList<FindingSection> Sections(IReadOnlyList<FindingGroup> groups, SourceMap sources)
    {
        ArgumentNullException.ThrowIfNull(sources);
        return
        [
            .. groups
                .GroupBy(g => Where(g, sources))
                .OrderByDescending(s => s.Max(g => g.First.Severity))
                .Select(s => new FindingSection(
                    s.Key.File,
                    s.Key.Sheet,
                    [
                        .. s.GroupBy(g => g.Item, StringComparer.Ordinal)
                            .OrderBy(i => i.Key is not null)
                            .ThenByDescending(i => i.Max(g => g.First.Severity))
                            .Select(i => (i.Key, (IReadOnlyList<FindingGroup>)[.. i])),
                    ]
                )),
        ];
    }

    private static (string File, string? Sheet) Where(FindingGroup group, SourceMap sources) =>
        group.Places.Select(p => (p.File, p.Sheet)).Distinct().ToList() switch
        {
            [var only] => only,
            var several => (
                several.Select(s => s.File).Distinct(StringComparer.Ordinal).ToList() is [var file] ? file : sources.File,
                null
            ),
        };

    /// <summary>The words without the value that they quote, with the member that they are about.</summary>
    private static string Shape(Finding finding)
    {
        var member = finding.Path.Split('/').LastOrDefault(step => !step.All(char.IsAsciiDigit));
        return $"{Value().Replace(finding.Message.Text, "")}\n{member}";
    }

    [GeneratedRegex(@"(?<!\w)'[^']*'(?!\w)|[0-9]+", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Value();
}
