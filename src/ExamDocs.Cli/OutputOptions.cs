using System.CommandLine;
using System.CommandLine.Parsing;
using ExamDocs.UseCases.Outputs;

namespace ExamDocs.Cli;

/// <summary>What the commands that write a named file have in common: nothing is overwritten unless that is asked for.</summary>
internal static class OutputOptions
{
    public static readonly Option<bool> Replace = new("--replace")
    {
        Description = "Write over a file that is there already; never over an input, an issued document or a register.",
    };

    /// <summary>The guard of a run: every other file that its command line names is one that it reads.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="outputs">The options that name what is written.</param>
    public static OutputGuard Guard(ParseResult parsed, params Option[] outputs) =>
        new()
        {
            Replace = parsed.GetValue(Replace),
            Inputs = [.. Named(parsed.CommandResult, outputs)],
            RegisterPath = CommonOptions.RegisterPath(parsed),
        };

    private static IEnumerable<string> Named(CommandResult command, Option[] outputs) =>
        command
            .Children.Where(c => c is ArgumentResult || (c is OptionResult option && !outputs.Contains(option.Option)))
            .SelectMany(c => c.Tokens)
            .Select(t => t.Value)
            .Where(v => v.Length > 0);
}
