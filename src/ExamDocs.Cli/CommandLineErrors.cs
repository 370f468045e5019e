using System.CommandLine;
using System.CommandLine.Parsing;

namespace ExamDocs.Cli;

/// <summary>What is wrong with how the program was called, a sentence each.</summary>
internal static class CommandLineErrors
{
    public static IReadOnlyList<string> In(ParseResult parsed)
    {
        var misspelt = UnknownOptions(parsed).Select(o => $"There is no option '{o}'.").ToList();
        return misspelt.Count > 0 ? misspelt : [.. parsed.Errors.Select(e => e.Message)];
    }

    /// <summary>The parser takes a misspelt option for one more input; a file whose name starts so can be written ./-name.</summary>
    private static IEnumerable<string> UnknownOptions(ParseResult parsed) =>
        parsed
            .CommandResult.Children.OfType<ArgumentResult>()
            .SelectMany(a => a.Tokens)
            .Select(t => t.Value)
            .Concat(parsed.UnmatchedTokens)
            .Where(v => v.StartsWith('-') && v.Length > 1)
            .Distinct(StringComparer.Ordinal);
}
