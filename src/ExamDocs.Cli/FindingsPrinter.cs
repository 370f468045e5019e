using System.Globalization;
using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Reading;
using Spectre.Console;

namespace ExamDocs.Cli;

/// <summary>Prints what is to be told of findings to standard error, and outcomes to standard output.</summary>
internal sealed class FindingsPrinter
{
    /// <summary>Most lines of findings that are printed unless all are asked for.</summary>
    private const int MostLines = 40;

    private readonly bool _quiet;
    private readonly FindingText _text;
    private readonly List<(CheckedInput Input, IReadOnlyList<FindingGroup> Shown, IReadOnlyList<FindingGroup> Left)> _inputs;

    private FindingsPrinter(IReadOnlyList<CheckedInput> inputs, bool quiet, bool all)
    {
        (_quiet, _text) = (quiet, new FindingText(Console.IsErrorRedirected ? int.MaxValue : AnsiConsole.Profile.Width, all));
        var told = inputs.Select(i => Told(i, acrossValues: false)).ToList();
        if (!all && told.SelectMany(groups => groups).Sum(_text.LinesOf) > MostLines)
            told = [.. inputs.Select(i => Told(i, acrossValues: true))];
        var shown = all ? null : Gravest(told);
        _inputs =
        [
            .. inputs.Zip(told, (input, groups) =>
                (
                    input,
                    (IReadOnlyList<FindingGroup>)[.. groups.Where(g => shown?.Contains(g) is not false)],
                    (IReadOnlyList<FindingGroup>)[.. groups.Where(g => shown?.Contains(g) is false)]
                )
            ),
        ];
    }

    /// <param name="inputs">In input order.</param>
    /// <param name="quiet">Errors alone, and no outcomes.</param>
    /// <param name="all">Every finding at each of its places, however many lines that takes.</param>
    public static void Print(IReadOnlyList<CheckedInput> inputs, bool quiet, bool all = false) =>
        new FindingsPrinter(inputs, quiet, all).Print();

    private void Print()
    {
        foreach (var (input, shown, left) in _inputs)
        {
            if (input.Unreadable is { } why)
                Console.Error.WriteLine(Screen.Say($"{input.File}: unreadable: {why}"));
            foreach (var line in _text.Of(FindingGroups.Sections(shown, input.Sources)))
                Console.Error.WriteLine(line);
            if (left.Count > 0)
                Console.Error.WriteLine(More(left));
            if (input.IsRead && !_quiet)
                OutcomesPrinter.Print(input);
        }
    }

    private IReadOnlyList<FindingGroup> Told(CheckedInput input, bool acrossValues) =>
        [.. input.Told(acrossValues).Where(g => !_quiet || g.First.Severity is Severity.Error)];

    /// <summary>The gravest findings of all inputs, as many as there is room for, and at least one.</summary>
    private HashSet<FindingGroup> Gravest(IReadOnlyList<IReadOnlyList<FindingGroup>> told)
    {
        HashSet<FindingGroup> shown = new(ReferenceEqualityComparer.Instance);
        HashSet<(int, SourcePlace?, string?)> headed = [];
        var lines = 0;
        foreach (
            var (input, group) in told.SelectMany((groups, n) => groups.Select(g => (Input: n, Group: g)))
                .OrderByDescending(g => g.Group.First.Severity)
        )
        {
            var place = group.Places.Select(p => p with { At = "" }).Distinct().ToList() is [var only] ? only : null;
            var headings =
                (headed.Contains((input, place, null)) ? 0 : 1)
                + (group.Item is null || headed.Contains((input, place, group.Item)) ? 0 : 1);
            lines += headings + _text.LinesOf(group);
            if (lines > MostLines && shown.Count > 0)
                break;
            shown.Add(group);
            headed.UnionWith([(input, place, null), (input, place, group.Item)]);
        }
        return shown;
    }

    private static string More(IReadOnlyList<FindingGroup> left)
    {
        Message more = (left.Count, left.Count(g => g.First.Severity is Severity.Error)) switch
        {
            (1, 0) => $"1 more finding",
            (1, _) => $"1 more finding, an error",
            (var all, 0) => $"{all} more findings",
            (var all, 1) => $"{all} more findings, 1 of them an error",
            (var all, var errors) => $"{all} more findings, {errors} of them errors",
        };
        return Screen.Say($"{more}: 'examdocs check --all' lists them all, and '--annotate FILE.xlsx' marks each at its cell.");
    }
}
