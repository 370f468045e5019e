using System.CommandLine;
using System.CommandLine.Parsing;
using ExamDocs.Core.Findings;

namespace ExamDocs.Cli;

/// <summary>What is wrong with how the program was called, a sentence each, with the command or option that was meant.</summary>
internal static class CommandLineErrors
{
    public static IReadOnlyList<string> In(ParseResult parsed)
    {
        if (UnknownCommand(parsed) is { } unknown)
            return [unknown];
        var misspelt = UnknownOptions(parsed).Select(o => $"There is no option '{o}'.{Meant(o, Options(parsed))}").ToList();
        return misspelt.Count > 0 ? misspelt
            : Unnamed(parsed).ToList() is { Count: > 0 } unnamed ? unnamed
            : [.. parsed.Errors.Select(e => e.Message)];
    }

    private static IEnumerable<string> Unnamed(ParseResult parsed) =>
        from option in parsed.CommandResult.Children.OfType<OptionResult>()
        where option.Tokens.Any(t => t.Value.Length == 0)
        let type = option.Option.ValueType
        where type == typeof(FileInfo) || type == typeof(DirectoryInfo)
        select $"{option.Option.Name} is empty: name a {(type == typeof(FileInfo) ? "file" : "folder")}.";

    /// <summary>Where a command is expected, only the first unknown word is reported; the words after it belong to it.</summary>
    private static string? UnknownCommand(ParseResult parsed)
    {
        var command = parsed.CommandResult.Command;
        return command.Subcommands.Count > 0 && parsed.UnmatchedTokens is [var word, ..] && !word.StartsWith('-')
            ? $"There is no command '{word}'.{Meant(word, command.Subcommands.Select(c => c.Name))}"
            : null;
    }

    private static string Meant(string typed, IEnumerable<string> allowed) =>
        SpellingSuggestion.AllOf(typed, allowed) is { Count: > 0 } near
            ? $" Did you mean {string.Join(" or ", near.Select(n => $"'{n}'"))}?"
            : "";

    /// <summary>Those of the command, and those of the commands above it that hold for it too.</summary>
    private static IEnumerable<string> Options(ParseResult parsed)
    {
        List<Option> options = [.. parsed.CommandResult.Command.Options];
        for (var above = parsed.CommandResult.Parent; above is CommandResult { Command: var command }; above = above.Parent)
            options.AddRange(command.Options.Where(o => o.Recursive));
        return options.SelectMany(o => o.Aliases.Prepend(o.Name)).Where(n => n.StartsWith("--", StringComparison.Ordinal));
    }

    /// <summary>The parser takes a misspelt option for an input. A file whose name starts with a dash can be written as ./-name.</summary>
    private static IEnumerable<string> UnknownOptions(ParseResult parsed) =>
        parsed
            .CommandResult.Children.OfType<ArgumentResult>()
            .SelectMany(a => a.Tokens)
            .Select(t => t.Value)
            .Concat(parsed.UnmatchedTokens)
            .Where(v => v.StartsWith('-') && v.Length > 1)
            .Select(v => v.Split('=')[0])
            .Distinct(StringComparer.Ordinal);
}
