using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using ExamDocs.Documents.LabelSheets;
using ExamDocs.UseCases.Commands;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs label</c>: labels on a stock.</summary>
internal static class LabelCommand
{
    private static readonly Argument<string[]> Inputs = new("INPUT|NUMBER")
    {
        Description = "Records, or numbers of labels already issued.",
        Arity = ArgumentArity.OneOrMore,
    };

    private static readonly Option<FileInfo> Out = new("--out")
    {
        Description = "The sheet to write (.pdf). The single labels go beside it, named by their numbers.",
        HelpName = "FILE",
        Required = true,
    };

    private static readonly Option<LabelStock?> Stock = new("--stock")
    {
        Description =
            "What is printed on, or a .json file of your own that says so: "
            + $"{string.Join("; ", LabelStock.All.Select(s => $"{s.Name} ({s.What})"))}. "
            + $"Default: {string.Join(", ", LabelFormat.All.Select(f => $"{f.UsualStock} for {f.Type.Kind}"))}.",
        HelpName = "NAME|FILE",
        CustomParser = ParseStock,
    };

    private static readonly Option<string?> Only = new("--only")
    {
        Description =
            $"Labels of this kind: {string.Join(", ", LabelFormat.All.Select(f => f.Type.Kind))}. Default: those that the "
            + "stock is for, else quarantine-label.",
        HelpName = "KIND",
    };

    private static readonly Option<int> Start = new("--start")
    {
        Description = "First place used on the first sheet.",
        HelpName = "N",
        DefaultValueFactory = _ => 1,
    };

    private static readonly Option<(double X, double Y)> Offset = new("--offset")
    {
        Description = "How far the printer is off, millimetres to the right and down.",
        HelpName = "X,Y",
        CustomParser = ParseOffset,
    };

    private static readonly Option<bool> CropMarks = new("--crop-marks")
    {
        Description = "Fine lines in the margins that show where to cut.",
    };

    private static readonly Option<bool> Black = new("--black")
    {
        Description = "Solid black and white alone, for thermal printers; the prohibition sign is then black too.",
    };

    static LabelCommand() => Only.AcceptOnlyFromAmong([.. LabelFormat.All.Select(f => f.Type.Kind)]);

    public static Command Create()
    {
        var command = new Command("label", "Prints labels onto a stock: for what may not be used, or for what is to be examined next.")
        {
            Inputs,
            Out,
            Stock,
            Only,
            Start,
            Offset,
            CropMarks,
            Black,
            CommonOptions.Rules,
        };
        ReadingOptions.AddTo(command);
        SigningOptions.AddTo(command);
        command.SetAction((parsed, cancellation) => RunGuard.RunAsync(() => RunAsync(parsed, cancellation)));
        return command;
    }

    private static async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        if (CommonOptions.KnownRules(parsed) is not { } rules || !SigningOptions.TrySigner(parsed, out var signer))
            return ExitCode.Refused;
        var file = parsed.GetRequiredValue(Out).FullName;
        if (CommonOptions.RegisterToWrite(parsed, Path.GetDirectoryName(file)) is not { } register)
            return ExitCode.Refused;
        var wasThere = register.Exists;
        var result = await PrintLabels.RunAsync(
            new LabelRequest
            {
                InputsOrNumbers = parsed.GetRequiredValue(Inputs),
                OutFile = file,
                RegisterPath = register.Place,
                Stock = parsed.GetValue(Stock),
                Kind = parsed.GetValue(Only),
                Placing = new Placing(
                    parsed.GetValue(Start),
                    parsed.GetValue(Offset).X,
                    parsed.GetValue(Offset).Y,
                    parsed.GetValue(CropMarks)
                ),
                BlackOnly = parsed.GetValue(Black),
                Reading = ReadingOptions.Of(parsed),
                Today = CommonOptions.Today(),
                Language = CommonOptions.DocumentLanguage(parsed),
                Rules = rules,
                Signer = signer,
            },
            cancellation
        );
        CommonOptions.SayWhereMade(parsed, register, wasThere);
        FindingsPrinter.Print(result.Inputs, quiet: true);
        foreach (var sentence in result.Unprintable.Concat(parsed.GetValue(CommonOptions.Quiet) ? [] : result.Remarks))
            await Console.Error.WriteLineAsync(sentence);
        if ((result.Refused ?? result.Failure) is { } stopped)
        {
            await Console.Error.WriteLineAsync(stopped);
            return result.Refused is null ? ExitCode.Stopped : ExitCode.Refused;
        }
        if (!parsed.GetValue(CommonOptions.Quiet))
        {
            foreach (var label in result.Labels)
                Console.WriteLine(
                    $"{label.Document.Number}  {string.Join(", ", label.Document.Items)}{(label.IssuedNow ? "" : "  (issued before)")}"
                );
            Console.WriteLine(result.Labels.Count == 0 ? "nothing to label" : file);
        }
        return result.Unprintable.Count > 0
            ? Math.Max(ExitCode.Findings, CheckCommand.ExitOf(result.Inputs))
            : CheckCommand.ExitOf(result.Inputs);
    }

    private static LabelStock? ParseStock(ArgumentResult argument)
    {
        var named = argument.Tokens[0].Value;
        if (LabelStock.Find(named) is { } stock)
            return stock;
        if (!named.EndsWith(".json", StringComparison.OrdinalIgnoreCase))
        {
            argument.AddError(
                $"there is no stock '{named}'; there are {string.Join(", ", LabelStock.All.Select(s => s.Name))}, or your own "
                    + "in a .json file"
            );
            return null;
        }
        var (read, faults) = ReadStock(named);
        foreach (var fault in faults)
            argument.AddError($"{named}: {fault}");
        return read;
    }

    private static (LabelStock? Stock, IReadOnlyList<string> Faults) ReadStock(string file)
    {
        try
        {
            return StockFile.Read(file);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return (null, [e is FileNotFoundException or DirectoryNotFoundException ? "there is no such file" : e.Message]);
        }
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
        double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var mm)
        && Math.Abs(mm) <= 100
            ? mm
            : null;
}
