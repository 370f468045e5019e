using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using ExamDocs.Documents.LabelSheets;
using ExamDocs.UseCases;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs label</c>: labels for what may not be used, on a stock.</summary>
internal static class LabelCommand
{
    private const string StockDefault = "a4-2";

    private static readonly Argument<string[]> Inputs = new("INPUT|NUMBER")
    {
        Description = "Records, or numbers of labels already issued.",
        Arity = ArgumentArity.OneOrMore,
    };

    private static readonly Option<FileInfo> Out = new("--out") { Description = "The sheet to write (.pdf). The single labels go beside it, named by their numbers.", HelpName = "FILE", Required = true };

    private static readonly Option<string> Stock = new("--stock")
    {
        Description = $"How labels lie on the sheet: {string.Join("; ", LabelStock.All.Select(s => $"{s.Name} ({s.What})"))}.",
        HelpName = "NAME",
        DefaultValueFactory = _ => StockDefault,
    };

    private static readonly Option<int> Start = new("--start") { Description = "First place used on the first sheet.", HelpName = "N", DefaultValueFactory = _ => 1 };

    private static readonly Option<(double X, double Y)> Offset = new("--offset")
    {
        Description = "How far the printer is off, millimetres to the right and down.",
        HelpName = "X,Y",
        CustomParser = ParseOffset,
    };

    static LabelCommand() => Stock.AcceptOnlyFromAmong([.. LabelStock.All.Select(s => s.Name)]);

    public static Command Create()
    {
        var command = new Command("label", "Prints labels for what may not be used onto a stock.") { Inputs, Out, Stock, Start, Offset, CommonOptions.Rules };
        command.Validators.Add(CheckStart);
        command.SetAction((parsed, cancellation) => Machinery.GuardAsync(() => RunAsync(parsed, cancellation)));
        return command;
    }

    private static async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        if (CommonOptions.KnownRules(parsed) is not { } rules)
            return ExitCode.Refused;
        var file = parsed.GetRequiredValue(Out).FullName;
        var result = await PrintLabels.RunAsync(
            new LabelRequest
            {
                InputsOrNumbers = parsed.GetRequiredValue(Inputs),
                OutFile = file,
                RegisterPath = CommonOptions.RegisterPath(parsed),
                Stock = LabelStock.Find(parsed.GetRequiredValue(Stock))!,
                Start = parsed.GetValue(Start),
                Offset = parsed.GetValue(Offset),
                Today = CommonOptions.Today(),
                Language = CommonOptions.DocumentLanguage(parsed),
                Rules = rules,
            },
            cancellation);
        FindingsPrinter.Print(result.Inputs, quiet: true);
        foreach (var sentence in result.Unprintable)
            await Console.Error.WriteLineAsync(sentence);
        if ((result.Refused ?? result.Failure) is { } stopped)
        {
            await Console.Error.WriteLineAsync(stopped);
            return result.Refused is null ? ExitCode.Machinery : ExitCode.Refused;
        }
        if (!parsed.GetValue(CommonOptions.Quiet))
        {
            foreach (var label in result.Labels)
                Console.WriteLine($"{label.Document.Number}  {string.Join(", ", label.Document.Items)}{(label.IssuedNow ? "" : "  (issued before)")}");
            Console.WriteLine(result.Labels.Count == 0 ? "nothing to label" : file);
        }
        return result.Unprintable.Count > 0 ? Math.Max(ExitCode.Findings, CheckCommand.ExitOf(result.Inputs)) : CheckCommand.ExitOf(result.Inputs);
    }

    private static void CheckStart(CommandResult command)
    {
        // Defaults are not filled in yet when a command is validated.
        var stock = LabelStock.Find(command.GetValue(Stock) ?? StockDefault);
        if (stock is not null && command.GetResult(Start) is { Implicit: false } && command.GetValue(Start) is var start
            && (start < 1 || start > stock.PerSheet))
            command.AddError(string.Create(CultureInfo.InvariantCulture, $"a sheet of {stock.Name} has places 1 to {stock.PerSheet}"));
    }

    private static (double X, double Y) ParseOffset(ArgumentResult argument)
    {
        var parts = argument.Tokens[0].Value.Split(',');
        if (parts.Length == 2 && Millimetres(parts[0]) is { } x && Millimetres(parts[1]) is { } y)
            return (x, y);
        argument.AddError("--offset takes two numbers of millimetres with a comma between, for example 1.5,-0.5");
        return default;
    }

    private static double? Millimetres(string text) =>
        double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var mm) && Math.Abs(mm) <= 100 ? mm : null;
}
