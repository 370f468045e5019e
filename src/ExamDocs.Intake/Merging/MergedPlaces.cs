using System.Globalization;
using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Merging;

/// <summary>Which place of which input each place of a merged record is.</summary>
internal sealed class MergedPlaces(IReadOnlyList<SourceInput> inputs, IReadOnlyDictionary<string, MergedRows> rows)
{
    /// <summary>The pointer, in the merged record, of a place of one input.</summary>
    public string Rebased(int input, string pointer)
    {
        var steps = pointer.Split('/', 4);
        if (
            steps.Length > 2
            && rows.TryGetValue(steps[1], out var list)
            && int.TryParse(steps[2], NumberStyles.None, CultureInfo.InvariantCulture, out var index)
            && list.PlaceOf(input, index) is { } place
        )
            return string.Create(CultureInfo.InvariantCulture, $"/{steps[1]}/{place}{(steps.Length > 3 ? "/" + steps[3] : "")}");
        return input == 0 ? pointer : Outside(input) + pointer;
    }

    /// <summary>The finding at its place in the merged record, with the places that it names.</summary>
    public Finding Rebased(int input, Finding finding) =>
        finding with
        {
            Path = Rebased(input, finding.Path),
            LostAt = finding.LostAt is { } lost ? Rebased(input, lost) : null,
            PossibleCause = finding.PossibleCause is { } cause ? cause with { Path = Rebased(input, cause.Path) } : null,
        };

    /// <summary>Where everything in the merged record was typed.</summary>
    public SourceMap Map()
    {
        Dictionary<string, (SourceMap, string)> places = new(StringComparer.Ordinal);
        foreach (var (list, merged) in rows)
        {
            for (var place = 0; place < merged.Kept.Count; place++)
                places[string.Create(CultureInfo.InvariantCulture, $"/{list}/{place}")] = (
                    merged.Kept[place].Read.Sources,
                    merged.Kept[place].Pointer
                );
        }
        foreach (var (pointer, input) in MergedVisit.Givers(inputs))
            places[pointer] = (inputs[input].Read.Sources, pointer);
        for (var input = 1; input < inputs.Count; input++)
            places[Outside(input)] = (inputs[input].Read.Sources, "");
        return SourceMap.ForMerged(inputs[0].Read.Sources, places);
    }

    /// <summary>What belongs to no row of the record stays apart, and so reaches every item.</summary>
    private static string Outside(int input) => string.Create(CultureInfo.InvariantCulture, $"/input {input + 1}");
}
