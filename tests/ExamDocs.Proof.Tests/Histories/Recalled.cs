namespace ExamDocs.Proof.Tests.Histories;

/// <summary>Decides runs of records one after the other, and remembers them.</summary>
public interface IHistoryRunner : IDisposable
{
    /// <summary>What is said of every item of every record of a run, in their order.</summary>
    IReadOnlyList<IReadOnlyList<Said>> Run(Run run);
}

/// <summary>Records that are handed in together.</summary>
/// <param name="Records">Their texts, each of one visit.</param>
/// <param name="LookedAtOn">The day on which they are decided.</param>
/// <param name="Labels">For each record the beginning of the numbers of the labels put on what is withdrawn; null where none are
/// printed.</param>
public sealed record Run(IReadOnlyList<string> Records, DateOnly LookedAtOn, IReadOnlyList<string>? Labels = null);

/// <summary>The second evaluator with a memory: written from the rules in words, it shares no code with the programme.</summary>
public sealed class Recalled : IHistoryRunner
{
    private readonly List<Sheet> _known = [];

    private int _count;
    private int _runs;

    public IReadOnlyList<IReadOnlyList<Said>> Run(Run run)
    {
        _runs++;
        var sheets = run.Records.Select((json, at) => new Sheet(json, run.LookedAtOn, _runs, _count++, run.Labels?[at])).ToList();
        _known.RemoveAll(old => sheets.Exists(sheet => sheet.Json == old.Json));
        foreach (var sheet in sheets)
        {
            // Each is taken at its own word first: two that doubt each other only because of each other are not in doubt.
            foreach (var (row, answer) in sheet.Rows.Zip(new Deciding([], sheet).All()))
            {
                row.Said = answer.Withdrawn ? answer : answer with { Outcome = "fit", Codes = new HashSet<string>() };
            }
        }

        for (var round = 0; round < 20; round++)
        {
            var said = sheets.Select(sheet => new Deciding([.. _known, .. sheets.Where(other => other != sheet)], sheet).All()).ToList();
            var isStill = sheets.Zip(said).All(pair => pair.First.Rows.Zip(pair.Second).All(row => IsAlike(row.First.Said, row.Second)));
            foreach (var (row, answer) in sheets.Zip(said).SelectMany(pair => pair.First.Rows.Zip(pair.Second)))
            {
                row.Said = answer;
            }

            if (isStill)
            {
                break;
            }
        }

        foreach (var row in sheets.SelectMany(sheet => sheet.Rows).Where(row => row.Said!.Withdrawn))
        {
            row.Said = row.Said! with { Label = row.Sheet.LabelOf(row) };
        }

        _known.AddRange(sheets);
        return [.. sheets.Select(sheet => sheet.Rows.Select(row => row.Said!).ToList())];
    }

    public void Dispose() => _known.Clear();

    private static bool IsAlike(Said? was, Said now) =>
        was is not null
        && was.Outcome == now.Outcome
        && was.Until == now.Until
        && was.Next == now.Next
        && was.Codes.SetEquals(now.Codes)
        && was.Asked == now.Asked
        && was.Never == now.Never;
}
