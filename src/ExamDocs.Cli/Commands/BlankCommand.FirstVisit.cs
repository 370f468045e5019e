using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Commands;

namespace ExamDocs.Cli.Commands;

/// <content>Check sheets for a first visit, of which nothing is known yet.</content>
internal static partial class BlankCommand
{
    private static readonly Option<(string Category, int Count)[]> Items = new("--items")
    {
        Description =
            "Check sheets for a first visit: how many items of which category, for example rope-bridge=3,connector=10. Default: one of "
            + "each --category, or of all.",
        HelpName = "ID=N,…",
        CustomParser = Counted,
    };

    /// <summary>Reads numbers by category.</summary>
    internal static (string, int)[] Counted(ArgumentResult argument)
    {
        var counted = new List<(string, int)>();
        foreach (var part in argument.Tokens[0].Value.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            if (part.Split('=', StringSplitOptions.TrimEntries) is [{ Length: > 0 } id, var number] && Count(number) is { } count)
                counted.Add((id, count));
            else
                argument.AddError($"'{part}' is no category with a number; write it like rope-bridge=3");
        }
        return [.. counted];
    }

    private static int? Count(string number) =>
        int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count > 0 ? count : null;

    private static async Task<int> PrintFirstVisitAsync(ParseResult parsed, KnownRules rules, CancellationToken cancellation)
    {
        if (CommonOptions.PrintStyle(parsed) is not { } style)
            return ExitCode.Refused;
        var file = parsed.GetRequiredValue(Out);
        var items = parsed.GetValue(Items) ?? [];
        var result = await PrintFirstVisitSheets.RunAsync(
            new FirstVisitRequest(file.ToString(), items.Length > 0 ? items : [.. (parsed.GetValue(Categories) ?? []).Select(c => (c, 1))])
            {
                Outputs = OutputOptions.Guard(parsed, Out),
                Style = style,
                Rules = rules,
            },
            cancellation
        );
        if ((result.Refused ?? result.Failure) is { } stopped)
        {
            await Console.Error.WriteLineAsync(stopped);
            return result.Refused is null ? ExitCode.Stopped : ExitCode.Refused;
        }
        if (!parsed.GetValue(CommonOptions.Quiet))
            Console.WriteLine(file.FullName);
        return ExitCode.Done;
    }
}
