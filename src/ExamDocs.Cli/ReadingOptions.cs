using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.Cli;

/// <summary>From how far quarantine and hold labels are to be read: h = l / Z.</summary>
internal static class ReadingOptions
{
    private static readonly Option<decimal?> ReadFrom = new("--read-from")
    {
        Description = "From how far quarantine and hold labels are to be read, metres. Default: 1.5.",
        HelpName = "L",
        CustomParser = Parse,
    };

    private static readonly Option<decimal?> Factor = new("--sign-factor")
    {
        Description = "Z in h = l / Z, which gives the height of the prohibition sign; less where the light is poor. Default: 40.",
        HelpName = "Z",
        CustomParser = Parse,
    };

    public static void AddTo(Command command)
    {
        command.Add(ReadFrom);
        command.Add(Factor);
        command.Validators.Add(Check);
    }

    public static decimal? Metres(ParseResult parsed) => parsed.GetValue(ReadFrom);

    public static decimal? SignFactor(ParseResult parsed) => parsed.GetValue(Factor);

    private static void Check(CommandResult command)
    {
        // The option's own parser reports what is no number; reading the value would throw.
        if (
            TryTyped(command, ReadFrom, out var metres)
            && TryTyped(command, Factor, out var factor)
            && ReadPrintStyle.ObjectionToReading(metres, factor) is { } objection
        )
            command.AddError(objection);
    }

    /// <returns>False where what was typed is no number.</returns>
    private static bool TryTyped(CommandResult command, Option<decimal?> option, out decimal? number)
    {
        number = command.GetResult(option) is { Tokens: [var token, ..] } ? Number(token.Value) : null;
        return number is not null || command.GetResult(option) is not { Tokens.Count: > 0 };
    }

    private static decimal? Parse(ArgumentResult argument)
    {
        if (Number(argument.Tokens[0].Value) is { } number)
            return number;
        argument.AddError("--read-from and --sign-factor take a number, for example 2.5");
        return null;
    }

    private static decimal? Number(string text) =>
        decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : null;
}
