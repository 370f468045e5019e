using ExamDocs.Intake.OwnList.Words;

namespace ExamDocs.Intake.OwnList.Mapping;

/// <summary>What a map leaves open, a sentence each.</summary>
public static class ListToSettle
{
    /// <summary>Before these are settled no workbook is written.</summary>
    public static IReadOnlyList<string> Necessary(ListMapping mapping)
    {
        ArgumentNullException.ThrowIfNull(mapping);
        List<string> open =
        [
            .. mapping
                .Map.Columns.Where(c => c.IsNecessary)
                .Select(c =>
                    $"columns, '{c.Heading}': it seems to be {FieldWords.Of(c.Proposed)}; write "
                    + $"\"{ListFields.NameOf(c.Proposed)}\" or another word under \"to\""
                ),
        ];
        if (mapping.Map.Dates is null && mapping.AmbiguousDates.Count > 0)
            open.Add(
                $"dates: {string.Join("; ", Samples.Of(mapping.AmbiguousDates))} can be read in two ways; write "
                    + "\"day-month-year\" or \"month-day-year\""
            );
        return open;
    }

    /// <summary>What was taken as it seems, or kept on the safe side.</summary>
    public static IReadOnlyList<string> Other(ListMapping mapping)
    {
        ArgumentNullException.ThrowIfNull(mapping);
        var unknown = mapping.Map.Words.Where(w => w.Means is null).Select(w => $"'{w.Samples[0]}'").ToList();
        return
        [
            .. mapping
                .Map.Columns.Where(c => c is { To: null, IsNecessary: false })
                .Select(c => $"column '{c.Heading}': taken as {FieldWords.Of(c.Effective)}, which is not sure"),
            .. unknown.Count == 0
                ? []
                : new[] { $"words about use that are not known; their items come in withdrawn: {string.Join(", ", unknown)}" },
        ];
    }
}
