using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using ExamDocs.Templates.Label;

namespace ExamDocs.Cli.Commands;

/// <summary>From how far quarantine and hold labels are to be read: h = l / Z.</summary>
internal static class ReadingOptions
{
    private static readonly Option<decimal?> Metres = new("--read-from")
    {
        Description = "From how far quarantine and hold labels are to be read, metres. Default: 1.5.",
        HelpName = "L",
        CustomParser = Parse,
    };

    private static readonly Option<decimal?> SignFactor = new("--sign-factor")
    {
        Description = "Z in h = l / Z, which gives the height of the prohibition sign; less where the light is poor. Default: 40.",
        HelpName = "Z",
        CustomParser = Parse,
    };

    public static void AddTo(Command command)
    {
        command.Add(Metres);
        command.Add(SignFactor);
        command.Validators.Add(Check);
    }

    public static ReadingDistance Of(ParseResult parsed) =>
        new(parsed.GetValue(Metres) ?? ReadingDistance.Default.Metres, parsed.GetValue(SignFactor) ?? ReadingDistance.Default.SignFactor);

    private static void Check(CommandResult command)
    {
        // What is no number is said by its own parser; asking for its value would throw.
        if (
            Typed(command, Metres, ReadingDistance.Default.Metres) is { } metres
            && Typed(command, SignFactor, ReadingDistance.Default.SignFactor) is { } factor
            && ReadingDistance.Objection(metres, factor) is { } objection
        )
            command.AddError(objection);
    }

    /// <summary>Null where what was typed is no number.</summary>
    private static decimal? Typed(CommandResult command, Option<decimal?> option, decimal otherwise) =>
        command.GetResult(option) is { Tokens: [var token, ..] } ? Number(token.Value) : otherwise;

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
