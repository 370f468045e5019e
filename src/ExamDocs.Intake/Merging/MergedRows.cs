using System.Globalization;
using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Merging;

/// <summary>The rows of one list over all inputs: which are kept, and where each has gone.</summary>
internal sealed class MergedRows
{
    private readonly List<SourceRow> _kept = [];
    private readonly Dictionary<(int Input, int Index), int> _places = [];
    private readonly List<(SourceRow Row, int Place)> _absorbed = [];
    private readonly Dictionary<string, List<(int Place, HashSet<int> Inputs)>> _byText = new(StringComparer.Ordinal);

    /// <summary>In input order.</summary>
    public IReadOnlyList<SourceRow> Kept => _kept;

    /// <summary>The place, in the merged list, of a row of an input; null where that input has no such row.</summary>
    public int? PlaceOf(int input, int index) => _places.TryGetValue((input, index), out var place) ? place : null;

    /// <summary>
    /// Keeps a row, unless an earlier input has one that says the same; each row of an earlier input stands for one of a
    /// later, so that what is there twice in one input stays there twice.
    /// </summary>
    public void Add(SourceRow row)
    {
        var same =
            row.IsFlawed ? []
            : _byText.TryGetValue(row.Text, out var known) ? known
            : _byText[row.Text] = [];
        var free = same.FindIndex(s => !s.Inputs.Contains(row.Input));
        if (free >= 0)
        {
            same[free].Inputs.Add(row.Input);
            _places[(row.Input, row.Index)] = same[free].Place;
            _absorbed.Add((row, same[free].Place));
            return;
        }

        _places[(row.Input, row.Index)] = _kept.Count;
        if (!row.IsFlawed)
            same.Add((_kept.Count, [row.Input]));
        _kept.Add(row);
    }

    /// <summary>One note for each input that says again what an earlier one says.</summary>
    public IEnumerable<Finding> TakenOnce() =>
        _absorbed
            .GroupBy(a => a.Row.Input)
            .Select(again =>
            {
                var (row, place) = again.First();
                var first = _kept[place];
                return MergeFindings.TakenOnce.At(
                    Pointer(place),
                    again.Count() == 1
                        ? (Message)$"the same row is at {row.Located()}"
                        : $"{again.Count()} rows of {row.List} are in {row.Read.Sources.File} too, the first at {row.Located()}",
                    item: first.Item
                );
            });

    /// <param name="key">What a row is about; null for a row that can contradict none.</param>
    public IEnumerable<Finding> Disagreements(Func<SourceRow, string?> key) =>
        _kept
            .Select((row, place) => (Row: row, Place: place, Key: key(row)))
            .Where(r => r.Key is not null)
            .GroupBy(r => r.Key!, StringComparer.Ordinal)
            .SelectMany(about =>
                about
                    .Skip(1)
                    .Where(r => r.Row.Input != about.First().Row.Input)
                    .SelectMany(later => Between(about.First().Row, later.Row, later.Place))
            );

    private IEnumerable<Finding> Between(SourceRow first, SourceRow later, int place)
    {
        var values = first
            .Leaves()
            .GroupBy(l => l.Name, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);
        var differing = later
            .Leaves()
            .Where(l => values.TryGetValue(l.Name, out var other) && !string.Equals(other.Value, l.Value, StringComparison.Ordinal))
            .ToList();
        if (differing.Count == 0)
            return
            [
                MergeFindings.Disagreement.At(
                    Pointer(place),
                    $"the row at {first.Located()} is about the same item or person, but the two do not say the same",
                    item: later.Item
                ),
            ];
        return differing.Select(leaf =>
            MergeFindings.Disagreement.At(
                Pointer(place) + leaf.Path,
                $"it is '{leaf.Value}' here, but '{values[leaf.Name].Value}' at {first.Located(values[leaf.Name].Path)}",
                item: later.Item
            )
        );
    }

    private string Pointer(int place) => string.Create(CultureInfo.InvariantCulture, $"/{_kept[place].List}/{place}");
}
